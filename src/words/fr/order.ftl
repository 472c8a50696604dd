# La commande : sur la page, sur papier, et ce qu’elle dit de ses lignes.

## La page

panel = Commande
nothing = Il n’y a encore rien à commander : indiquez d’abord de quoi sont faites les cordes.
print = Imprimer
print-hint = La liste de commande sur papier
csv = Enregistrer en CSV
csv-hint = Toute la liste de commande, pour un tableur
csv-of = Enregistrer en CSV : commande, { $supplier }
table-of = Commande : { $supplier }
outside-hint = Ce que le stock n’a pas est commandé d’après sa nature : conditionnement et prix ne sont pas connus.
fill-in = Références, longueurs des paquets et prix s’indiquent sous « Stock ».
open-stock = Ouvrir le stock
put-codes = Reprendre références et prix dans ce projet
new-codes = La liste de stock « { $list } » a des références ou des prix que ce projet ne contient pas encore : ce que le projet contient passe d’abord, et un lien ou un fichier n’en emporte pas d’autres.
codes-kept = Le projet contient maintenant les références et les prix de { $count ->
    [one] { $count } article
   *[other] { $count } articles
}.
supplier-outside = Absent du stock
supplier-none = Aucun fournisseur indiqué
of-every-line = Pour chaque ligne : { $said }
head-make-up = Composition
head-code = Référence
head-strings = Cordes : coupe, mm
head-sold-as = Vendu par
head-pieces = Pièces
head-metres = Total, m
head-packs = Paquets
head-price = Prix
pieces-with-spares = { $pieces } + { $spares } de rechange
unknown = { $count ->
    [one] Corde
   *[other] Cordes
} { $strings } : { $why }.

## Réserve et remarques

settings = Cordes de rechange et remarques
spares = Cordes de rechange
spares-none = Aucune
spares-item = Une de chaque article, longue comme sa plus longue corde
spares-string = Une pour chaque corde
spares-percent = Une part des cordes de chaque article, arrondie au-dessus
remarks = Remarques pour le fournisseur
