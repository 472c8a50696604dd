# La page dans son ensemble : en-tête, vues et menus, et ce qu’elle annonce.

## L’en-tête

undo-hint = Annuler (Ctrl+Z)
undo = Annuler
redo-hint = Rétablir (Ctrl+Y)
redo = Rétablir
skip = Aller à la vue
title = Nom de l’instrument
acts = Menus du projet
instrument = Instrument
share = Imprimer et partager
help = Aide
new = Nouveau
restring-hint = D’après ses mesures, saisies ou collées
restring = Recorder une harpe
open-hint = Ouvrir un fichier de projet ou un tableau ; vous pouvez aussi le glisser sur la page
open = Ouvrir un fichier
shelf = Projets de ce navigateur
save-hint = Enregistrer le projet dans un fichier (Ctrl+S)
save = Enregistrer dans un fichier
designs = Projets
setup-hint = Hauteur, client, limites, surlongueurs
setup = Hauteur, unités, limites
materials-hint = Valeurs des matériaux, vos propres matériaux, pesées et essais de rupture
materials = Matériaux
stock-hint = Les cordes et fils que vous pouvez acheter : diamètres, références, prix
stock = Stock
card = Fiche de cordage
report-hint = Pour votre dossier, à imprimer : cordes, courbes, dessin, charges, constats, sources
report = Rapport de projet
templates-hint = Gabarits grandeur nature : DXF, SVG, PDF, et la table de perçage
templates = Gabarits
table-hint = Enregistrer le tableau de toutes les valeurs en CSV, pour un tableur
table = Tableau des valeurs
link = Lien vers ce projet
light = Couleurs claires
dark = Couleurs sombres
numbers = Les chiffres expliqués
about = À propos
shortcuts = Raccourcis
colours-forgotten = Ce navigateur ne retient pas les couleurs : { $why }.
language-not-kept = Ce navigateur ne retient pas la langue : { $why }.

## Les vues

chart = Tableau des cordes
chart-hint = Chaque corde : saisissez, et voyez ce qui en découle
drawing = Dessin
drawing-hint = La harpe à l’échelle : forme, bois, charges, fichiers pour l’imprimante et la découpe
parts = Pièces
parts-hint = La harpe entière pièce par pièce, pour la scie
choose = Choisir les cordes
choose-hint = Le meilleur jeu de cordes d’un stock, et de meilleures longueurs
order = Commande
order-hint = Ce qu’il faut commander, et ce que cela coûte
versions = Versions
versions-hint = Garder des versions du projet, et les comparer
views = Vues
strings = Cordes
chart-help = Les flèches déplacent, Entrée permet de saisir, Échap puis Tab quittent le tableau, F6 mène aux constats.

## Les parties et le programme

not-printed = Stringloft ne peut pas encore imprimer ceci : une partie n’est pas arrivée. Fermez ceci, puis appuyez sur Ctrl+P.
link-missed = Le lien n’a pas été ouvert : une partie de Stringloft n’est pas arrivée. Vérifiez la connexion, puis rechargez la page.
newer = Une version plus récente de Stringloft est prête. Elle s’ouvrira au prochain chargement de la page.
curves = Courbes
opening = Ouverture…
not-here = Pas encore là
close = Fermer
missed = Cette partie de Stringloft n’est pas arrivée. Vérifiez la connexion, puis réessayez. Tout le reste continue de fonctionner.
try-again = Réessayer
not-done = Cela n’a pas été fait : une partie de Stringloft n’est pas arrivée. Vérifiez la connexion, puis réessayez.

## Les annonces

dismiss = Masquer
not-kept = Non conservé : ce navigateur n’accepte rien ({ $why }). Enregistrez le projet dans un fichier avant de quitter la page.
keep-mine = Garder le mien en copie
load-it = Charger l’autre
elsewhere-changed = Ce projet a été modifié dans un autre onglet. Il est ici tel qu’il était avant ; si vous le modifiez ici, cela en fera une copie.
elsewhere-gone = Ce projet a été mis à la corbeille dans un autre onglet. Il est ici tel qu’il était.
from-link = Une copie venue d’un lien, pas encore enregistrée ici. La modifier enregistre votre propre copie.
keep-copy = Enregistrer une copie ici
a-sample = Une harpe d’exemple. Modifiez-la à votre guise, ou commencez la vôtre avec Nouveau, sous Projets : une harpe neuve, une harpe d’après ses mesures, ou un autre exemple.
handed = Remis aux téléchargements de ce navigateur sous le nom { $name }.
not-handed = ce navigateur n’a pas accepté { $name } en téléchargement (réessayez, ou ouvrez la page dans un autre navigateur)
file-too-large = { $name } pèse { $mb } Mo ; un projet ou un tableau pèse au plus 5 Mo. Choisissez un autre fichier.
file-unread = { $name } n’a pas pu être lu. Choisissez-le de nouveau, ou un autre fichier.
storage-full = son stockage est plein
storage-shut = son stockage est désactivé, ou n’accepte rien
backup-too-large = elle est plus grosse qu’une sauvegarde ne peut l’être
backup-unread = elle n’a pas pu être lue (choisissez-la de nouveau)

## Ce qui est conservé, ce qui est ouvert

refused = Cela n’a pas été pris : { $why }.
frame-not-yet = pas encore calculé
frame-later = Calculé par une partie de Stringloft qui se charge après le tableau.
columns-forgotten = Ce navigateur ne retient pas les colonnes : { $why }.
link-not-opened = Ce lien n’a pas été ouvert : { $why }.
not-opened = { $name } n’a pas été ouvert : { $why }.
opened = { $name } est ouvert.
and-more = Et { $more } de plus.
not-read = { $name } n’a pas été lu : { $errors }
columns-left-out = Colonnes laissées de côté : { $columns }.
read-strings = { $count ->
    [one] { $count } corde lue
   *[other] { $count } cordes lues
} dans { $name }.
copied = Ce projet a aussi été modifié dans un autre onglet. Les deux sont conservés : ce qui a été modifié dans cet onglet est une copie à part.
keeping = enregistrement…
not-kept-here = non conservé dans ce navigateur : { $why }
kept-at = Enregistré à { $time }
copy-of = { $name } (copie)
kept-here = Conservé dans ce navigateur.
list-clash = Ce projet a d’abord été modifié dans un autre onglet ; votre modification dans la liste n’a donc pas été prise.
design-not-opened = Ce projet n’a pas été ouvert : { $why }.
let-go = Ce navigateur ne conserve pas le projet ouvert : il sera perdu. Ouvrir l’autre quand même ?
last-not-opened = Le dernier projet ouvert n’a pas été rouvert : { $why }.
change-not-kept = Ce navigateur n’a pas conservé la dernière modification : { $why }. Enregistrez le projet dans un fichier.
declined = Rien d’autre n’a été ouvert : le projet reste tel quel.
given-back = Ce que vous saisissiez en quittant la page est revenu dans sa cellule. Entrée le prend, Échap laisse la cellule telle qu’elle était.

## Les champs

write-or-empty = Attendu : { $asked }, ou rien.
write-such = Attendu : { $asked }, par exemple { $value }.
write = Attendu : { $asked }.
back-to = De nouveau { $value }.
back-empty = De nouveau vide.
remove-row = Retirer : { $of } { $row }
remove = Retirer
no-room = Rien n’a été collé : { $lines } lignes ont été copiées, et il y a place pour { $room }.
no-number = Rien n’a été collé : « { $got } », à la ligne { $line } de ce qui a été copié, n’est pas un nombre possible ici.
