# Le tableau des cordes et ce qui l’accompagne : outils, colonnes, constats, résumé.

## Ce que l’on peut faire des cordes

tools = Cordes sélectionnées
insert = Insérer
insert-hint = Insérer une corde au-dessus du curseur (touche Inser)
duplicate = Dupliquer
duplicate-hint = Répéter les cordes sélectionnées au-dessous
delete = Supprimer
delete-hint = Supprimer les cordes sélectionnées (Ctrl+Suppr)
up = Haut
up-hint = Monter les cordes sélectionnées (Ctrl+Maj+Haut)
down = Bas
down-hint = Descendre les cordes sélectionnées (Ctrl+Maj+Bas)
add-treble = + aigu
add-treble-hint = Ajouter une corde une note au-dessus de la corde 1
add-bass = + grave
add-bass-hint = Ajouter une corde une note au-dessous de la dernière
fill-down = Remplir
fill-down-hint = Copier la première ligne de la sélection dans les autres (Ctrl+D)
make-up = Composition
make-up-hint = Matériau, diamètre et filage des cordes sélectionnées (Ctrl+Entrée)
exchange = Autre matériau
exchange-hint = Remplacer les cordes sélectionnées par d’autres d’un autre matériau : boyau, nylon, fluorocarbone
details = Détails
details-hint = Toutes les valeurs de la corde, ses partiels et ses leviers (Alt+Entrée)
explain = Comment c’est calculé
at-most-strings = Un projet a au plus { $most } cordes. Supprimez-en d’abord quelques-unes.
computed = Cette colonne est calculée. Modifiez la note, la longueur, la corde ou le diamètre.
not-copied = Le navigateur n’a pas mis ces cellules dans le presse-papiers. Copiez-les de nouveau.
too-much = Le presse-papiers contient { $mb } Mo de texte, bien plus qu’un tableau des cordes. Ne copiez que les cellules utiles.
no-text = Le presse-papiers ne contient aucun texte à coller.
not-pasted = Rien n’a été collé : { $why }.
too-many-rows = Rien n’a été collé : le bloc a { $count } lignes, et un projet a au plus { $most } cordes.
all-computed = Ces colonnes sont calculées : rien ne peut y être collé.
wound-kept = Le diamètre d’une corde filée découle de son filage ; il est donc resté tel quel sur ces cordes.
cell = Cellule

## Les colonnes

chart = Tableau des cordes
empty = Pas encore de cordes. Collez ici notes et longueurs d’un tableur, ou choisissez Nouveau sous Projets.
number-hint = Comptée depuis l’aigu : la corde 1 est la plus aiguë.
number = N°
octave-hint = L’octave des harpistes : comptée depuis l’aigu, chacune du mi descendant au fa.
octave = Oct.
note-meaning = La note avec le numéro de son octave : le do du milieu est do3. Une fréquence peut en tenir lieu, par exemple 443,2 Hz.
note = Note
string-meaning = De quoi elle est faite : un matériau, ou une âme et ce qui est filé dessus.
string = Corde
gauge-meaning = Diamètre ; pour une corde filée, le diamètre total, qui découle de sa composition.
gauge = Diamètre
code-meaning = La référence du fournisseur, pour la fiche et la commande. Elle est vidée quand la corde change.
code = Référence
typed-as = Saisi : { $typed }
place = Corde { $number }
place-noted = Corde { $number }, { $note }
columns-window = Colonnes du tableau
column-sets = Jeux de colonnes
columns-hint = Numéro et note sont toujours visibles. Cochez une colonne pour la voir ; montez-la pour la placer plus à gauche. Votre choix est gardé dans ce navigateur sous Mes colonnes.
farther-left = Vers la gauche
farther-right = Vers la droite
my-columns = Mes colonnes
choose-columns = Choisir les colonnes…
border = Séparation entre la vue et les courbes
border-hint = Faites-la glisser, ou utilisez les flèches. Début et Fin replient un côté, Entrée ramène les deux.
with-curves = Avec les courbes
without-curves = Sans les courbes
curves-alone = Courbes seules
beside = Ce qui est montré côte à côte
set-working = Travail
set-feel = Toucher
set-tone = Timbre
set-tuning = Accord et leviers
set-workshop = Atelier
set-all = Toutes les colonnes

## Les constats

no-findings = Aucun constat sur les cordes
findings-count = { $count ->
    [one] { $count } constat
   *[other] { $count } constats
}
findings = Constats
missing-hint = Ce qui n’est pas encore mesuré ou saisi
missing = Ce qui manque
strings-say = Cordes { $first } à { $last } : { $sentence }
all-say = { $count ->
    [one] Corde
   *[other] Cordes
} { $strings } : { $sentence }
range = { $first } à { $last }

## Le résumé

without-tension = Le total omet { $count ->
    [one] { $count } corde sans tension.
   *[other] { $count } cordes sans tension.
}
for-client = pour { $client }
tolerances = De combien les cordes peuvent s’écarter : le cas courant, non le pire.
temperature-left-out = La température est laissée de côté : la dérive de ces cordes n’est pas connue.
temperature-left-out-for = { $count ->
    [one] La température est laissée de côté pour { $count } corde : sa dérive n’est pas connue.
   *[other] La température est laissée de côté pour { $count } cordes : leur dérive n’est pas connue.
}

## Une composition à l’essai

overall = Diamètre total
core = Âme
mass = Masse par mètre
breaking-load = Charge de rupture
tension-at-pitch = Tension une fois accordée
load-share = Taux de charge
stiffness = Raideur au pincement
frame = Cadre
opens-loads = { $frame } Ouvre les charges.
summary = Résumé
strings = Cordes
compass = Étendue
total = Tension totale
tightest = La plus chargée
