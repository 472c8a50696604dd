# Tableaux : ce que sont leurs colonnes, et ce qui ne peut en être lu.

## Places

in-line = ligne { $line } : { $said }
in-column = ligne { $line }, colonne « { $column } » : { $said }
of-string = corde { $number }, « { $column } » : { $said }
and-more = { $first } et { $count } autres
or = { $first } ou { $second }

## Tout tableau

too-large = un tableau doit avoir au plus { $most } Mo (choisissez un autre fichier)
open-quote = un guillemet qui ouvre une cellule doit être fermé (ajoutez le guillemet manquant)
empty = le tableau est vide (sa première ligne doit contenir les en-têtes)
cell-long = une cellule doit avoir au plus { $most } caractères, il y en a { $got } (raccourcissez-la)
cells-many = une ligne ne doit pas avoir plus de cellules qu’il n’y a d’en-têtes, { $most }, il y en a { $got } (mettez entre guillemets une cellule qui contient une virgule)
no-table = ce n’est ni un projet de Stringloft ni un tableau avec des en-têtes comme « note » et « length_mm » (choisissez un autre fichier, ou mettez des en-têtes dans sa première ligne)
strings-many = un tableau doit avoir au plus { $most } cordes
heading = « { $name } »
heading-missing = les en-têtes doivent comprendre { $names } (nommez ainsi une colonne dans la première ligne)
heading-twice = un en-tête ne doit figurer qu’une fois (renommez-en un)
layer-material = une couche a besoin de son matériau (remplissez cette cellule)
layer-diameter = une couche a besoin de son diamètre (remplissez cette cellule)
density-needed = pour un matériau inconnu la densité doit être donnée (remplissez cette cellule, ou nommez un matériau connu)
entered-with-table = saisi avec le tableau des cordes
block-large = un bloc à coller doit avoir au plus { $most } Mo (copiez moins de cellules)
block-rows = un bloc à coller doit avoir au plus { $most } lignes, il y en a { $got } (copiez moins de cellules)
raised = mécanisme de chaque corde : { $mechanism } ; de combien il la pousse de côté, un tableau ne le dit pas
raised-but = mécanisme de chaque corde : { $mechanism }, sauf { $count ->
    [one] corde
   *[other] cordes
} { $others } ; de combien il la pousse de côté, un tableau ne le dit pas

## Tableaux de stock

items-many = une liste de stock doit avoir au plus { $most } articles (partagez le tableau en deux ; cette ligne et les suivantes ont été laissées)
bad-many = un tableau avec plus de { $most } mauvaises lignes n’est pas lu plus loin (voyez quelle colonne est quoi)
material-missing = le matériau manque (remplissez cette cellule, ou dites de quoi est toute la liste)
material-unknown = le matériau « { $name } » n’est pas connu ici, rien ne peut donc être calculé pour cet article (ajoutez le matériau, ou écrivez-en un connu)
bundle-count = une botte doit dire combien de cordes elle contient, au plus { $most }, reçu « { $got } » (écrivez par exemple « bundle of 12 »)
pack-kind = un paquet doit être « coil », « single » ou « bundle », reçu « { $got } » (écrivez-en un, comme « bundle of 12 »)
price-number = un prix doit être un nombre qui se lit d’une seule façon, reçu « { $got } » (écrivez-le comme 12.50)

## Ce qu’est une colonne

whole-make-up = composition entière
material = matériau
gauge = diamètre
order-code = référence
supplier = fournisseur
coil-or-single = rouleau ou à l’unité
pack-length = longueur d’un paquet
pack-price = prix d’un paquet
currency = monnaie
in-stock = disponible
lowest-note = note la plus grave
highest-note = note la plus aiguë
remark = remarque
number = numéro
note = note
octave = octave
pitch-hz = hauteur en Hz
length = longueur
material-and-gauge = matériau et diamètre
winding-material = matériau du filage
winding-gauge = diamètre du filage

## Unités

millimetres = millimètres
centimetres = centimètres
metres = mètres
inches = pouces
thousandths = millièmes de pouce
feet = pieds
hundredths = centièmes de millimètre

## Un tableau de la main de quelqu’un

column-number = colonne { $number }
column-named = colonne « { $heading } »
taken-size = { $column } est { $field }, nombres nus en { $unit }
taken = { $column } est { $field }
left-out = { $column } est laissée
cells-cut = ce qui suit { $most } cellules dans une ligne a été laissé
no-string-in-line = la ligne { $line } ne contient pas de corde : { $words }
turned-round = la liste commençait par la corde la plus grave et a été retournée
doubles = { $count ->
    [one] { $count } note a
   *[other] { $count } notes ont
} deux cordes
plain-b-natural = B a été pris pour si : ce peut être si bémol, comme dans les listes allemandes, ou si (écrivez Bb, ou H pour si)
plain-b-left = B a été laissé : ce peut être si bémol, comme dans les listes allemandes, ou si (écrivez Bb, ou H pour si)
unit-taken = { $column } ne nomme pas d’unité ; ses nombres ont été pris pour des { $looks }
unit-left = { $column } a été laissée : elle ne nomme pas d’unité, et ses nombres ressemblent à des { $looks } plutôt qu’à des { $said } (mettez l’unité dans son en-tête)
german-h = H est si (le B des noms anglais), et B est si bémol
german-b = B est si bémol, comme dans les listes allemandes
octaves-harp = les octaves sont comptées comme chez les harpistes, depuis le haut, chacune de mi à fa
octaves-helmholtz = c′ est le do du milieu, c celui d’au-dessous
octaves-french = les octaves sont comptées avec la3 à 440 Hz
note-inferred-one = la note de 1 corde qui n’en a pas suit de ses voisines
note-inferred-some = la note de quelques cordes qui n’en ont pas suit de leurs voisines

## Accord d’après les fréquences

tuned-as = les fréquences à côté des notes sont celles du la3 à { $pitch } Hz, tempérament : { $temperament }
tuned-apart = { $frequency } à côté de { $note } est une autre hauteur, la corde garde donc { $frequency }
equal = tempérament égal
pythagorean = pythagoricien
meantone = mésotonique au quart de comma
just-on-c = intonation juste sur do
