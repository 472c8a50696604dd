# La fenêtre des listes de stock : ce que l’on peut acheter.

## Les listes

list-gone = cette liste de stock n’est plus dans ce navigateur
unnamed = Liste sans nom
unreadable = Illisible : { $why }
in-use-not-opened = La liste de stock utilisée n’a pas été ouverte : { $why }. Ouvrez Stock pour en choisir une autre.
title = Stock
left-out = Lignes laissées de côté
new-name = Nouvelle liste de stock
in-use = Liste utilisée pour choisir et commander
name = Nom
currency-usual = Monnaie des prix qui n’en indiquent pas
new-list = Nouvelle liste
new-list-hint = Une liste vide
usual = Diamètres usuels
usual-hint = Une liste de diamètres usuels pour commencer : usage courant, de mémoire
remove-list = Retirer la liste
remove-list-hint = Retirer cette liste définitivement
open-file = Ouvrir un fichier
open-file-hint = Une liste de stock de Stringloft, ou un tableau CSV
paste-table = Coller un tableau
paste-table-hint = Coller un tableau venu d’un tableur
save-csv = Enregistrer en CSV
save-csv-hint = Enregistrer la liste en CSV, pour un tableur
save-file = Enregistrer dans un fichier
save-file-hint = Enregistrer la liste dans un fichier de Stringloft
file-not-opened = { $name } n’a pas été ouvert : { $why }.
not-kept = Ce navigateur ne conserve pas la liste de stock. Elle reste utilisée jusqu’à ce que vous quittiez la page : enregistrez-la dans un fichier.
leave = Ce navigateur ne conserve pas la liste de stock : ses dernières modifications seront perdues. Continuer quand même ?
list-not-opened = La liste de stock n’a pas été ouverte : { $why }.
changed-elsewhere = Le stock a été modifié dans un autre onglet.
list-spoilt = La liste de stock n’a pas été ouverte : { $why }. Elle reste telle quelle jusqu’à ce que vous la retiriez.
now-in-use = « { $name } » est maintenant utilisée.
refused = Cela n’a pas été pris : { $why }.
refused-list = Cela n’a pas été pris : { $why }. Créez d’abord une nouvelle liste.
from-table = Stock venu d’un tableau
from-table-next = Stock venu d’un tableau { $number }
remove-asked = Retirer définitivement la liste de stock « { $name } » de ce navigateur ? Les projets gardent les références et les prix qu’ils contiennent.
list-removed = « { $name } » a été retirée.
list-not-removed = « { $name } » n’a pas été retirée : { $why }.
item-removed = { $item } a été retiré.
not-kept-because = Ce navigateur ne conserve pas la liste de stock : { $why }. Elle reste utilisée jusqu’à ce que vous quittiez la page : enregistrez-la dans un fichier.
listed-not-kept = { $name } (non conservée)

## Les articles

make-up = Composition
code = Référence
supplier = Fournisseur
pack = Paquet, mm
price = Prix
currency = Monnaie
from-note = De la note
to-note = À la note
remark = Remarque
bad-price = un prix doit être un nombre qui ne se lit que d’une façon, reçu « { $got } » (écrivez-le comme 12.50)
not-kept-yet = Pas encore pris : { $why }.
ends-crossed = la note la plus grave ne doit pas être au-dessus de la plus aiguë (changez l’une des deux)
make-up-missing = la composition manque (écrivez-la comme nylon 0,81)
material-unknown = le matériau « { $material } » n’est pas connu ici (écrivez-en un connu, ou ajoutez-le sous Matériaux)
empty = Cette liste est vide : ajoutez un article, ouvrez un fichier ou collez un tableau.
items = { $count ->
    [one] { $count } article
   *[other] { $count } articles
}
items-of = { $found } articles sur { $all }
show-only = Montrer seulement
show-only-hint = boyau, ou partie d’une référence
add-item = Ajouter un article
items-table = Articles de la liste de stock
item = Article
more-items = Montrer plus d’articles
sold-as = Vendu par
in-stock = Disponible
item-called = article { $number }
remove = Retirer
remove-item = Retirer { $item }
cell-of = { $head } : { $item }
coil = rouleau
single = à l’unité
bundle = botte
bundle-of = Cordes dans une botte : { $item }
item-sold-as = { $item } se vend par
item-had = { $item } est disponible

## Un tableau venu d’ailleurs

paste = Un tableau avec les en-têtes en première ligne, copié d’un tableur ou d’une liste de prix
read = Lire le tableau
back = Retour à la liste
range = { $low } à { $high }
no = non
yes = oui
and-more = Et { $more } de plus.
no-good-line = Aucune ligne du tableau n’est encore bonne : voyez quelle colonne est quoi.
new-list-from = Une nouvelle liste de { $count ->
    [one] { $count } article
   *[other] { $count } articles
} du tableau est maintenant utilisée.
added = Articles du tableau : { $added } nouveaux, { $updated } modifiés.
odd-taken = Rien ne peut être calculé pour { $count } d’entre eux.
left-out-told = Ces lignes ont été laissées de côté :
take-good = Prendre les bonnes lignes
add-to = Ajouter à « { $name } »
take-new = Prendre comme nouvelle liste
take-new-hint = Une liste à part, qui sert ensuite à choisir et à commander
which-column = Quelle colonne est quoi
columns-table = Colonnes du tableau
head-heading = En-tête
head-first = Première cellule
head-is = Est
head-bare = Les nombres seuls sont en
else-material = Matériau des lignes qui n’en indiquent pas
what-read = Ce qui est lu
first-lines = Premières bonnes lignes
notes = Notes
bad-lines = Lignes laissées de côté
odd-lines = Lignes étranges
good = { $count ->
    [one] { $count } bonne ligne
   *[other] { $count } bonnes lignes
}
odd = { $count ->
    [one] { $count } ligne étrange
   *[other] { $count } lignes étranges
}
bad = { $count ->
    [one] { $count } mauvaise ligne laissée de côté
   *[other] { $count } mauvaises lignes laissées de côté
}
columns-left-out = Colonnes laissées de côté : { $columns }.
unit-of = Unité de la colonne { $column }
column-is = La colonne { $column } est
column-left-out = laissée de côté
