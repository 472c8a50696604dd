# Les gabarits en vraie grandeur, et la table de leurs points.

## Le dessin

harp = Harpe
origin = là où la corde la plus grave rejoint la table d’harmonie
from-side = Vu de côté, dans le plan des cordes. Une croix marque un centre.
drill = Percez ce que demandent vos chevilles, leviers et cordes. Essayez d’abord sur une chute.
sign-lever = Un trait en travers d’une corde : un levier.
sign-disc-natural = Un cercle sur une corde : la fourchette bécarre, pour le premier demi-ton.
sign-disc-sharp = Deux cercles sur une corde : la fourchette dièse, pour le second demi-ton.
left-out = Omises, car leur longueur ou leur place est inconnue : cordes { $strings }.
left-out-more = Omises, car leur longueur ou leur place est inconnue : cordes { $strings } et { $more } autres.
unit = Une unité est un millimètre. La croix dans un cercle est 0, 0.
origin-is = Origine : { $origin }

## Calques

outline = contour
board = table
pillar = colonne
strings = cordes
pins = chevilles et pointes
holes = trous
levers = leviers
discs-natural = fourchettes bécarre
discs-sharp = fourchettes dièse
far-edge = arête arrière
openings = ouïes
mortises = mortaises
grain = fil du bois
marks = repères
dimensions = cotes
text = texte

## La table de perçage

pin-remark = cheville { $pin } mm ; pour une cheville conique, percez au petit bout et alésez
hole-eyelet = { $along } mm le long de la table ; pour l’œillet
hole-string = { $along } mm le long de la table ; corde { $gauge } mm
hole-unknown = { $along } mm le long de la table ; le diamètre de la corde est inconnu
origin-caution = { $origin }. { $caution }

## Une feuille

scale = Imprimez à 100 %, sans ajuster à la page.
bars = Vérifiez les deux règles avant de couper.
bar = 100 mm (3,94 in)
whole = dessin entier sur une feuille ; cadre dès x { $x }, y { $y } mm
sheet = feuille { $number } sur { $count } ; cadre dès x { $x }, y { $y } mm
cut = couper
edge = bord de { $sheet } sur la ligne pointillée

## Le plan des feuilles

template = Gabarit
full-size = Vraie grandeur sur { $count } { $count ->
    [one] feuille
   *[other] feuilles
} { $paper }, { $side ->
    [landscape] paysage
   *[portrait] portrait
}, avec { $overlap } mm de recouvrement. { scale }
origin-at = Origine (x 0, y 0) : { $origin }
grey = En gris et barré : rien à dessiner, aucune feuille imprimée.
join = Assembler les feuilles
join-cut = Coupez chaque feuille sur son trait plein : à gauche, en bas, ou les deux. Une feuille sans ce trait ne se coupe pas.
join-row = Assemblez chaque rangée de gauche à droite : posez le bord coupé sur la ligne pointillée de la feuille de gauche, pour que les deux moitiés des losanges numérotés se rejoignent.
join-rows = Assemblez ensuite les rangées de bas en haut, chacune sur celle du dessous, de la même façon.
join-straight = Avant que la colle prenne, posez une règle le long d’une grande ligne qui passe la jointure : aucun décalage n’est permis.
join-name = Le nom d’une feuille, comme sur le plan, est en bas à gauche.
alone = Il n’y a qu’une feuille : rien à assembler.
before-cut = Avant de couper
check-bars = Sur chaque feuille, mesurez les deux règles avec un réglet d’acier. Chacune doit faire 100 mm ; si l’une s’écarte de plus de 0,3 mm, réglez l’imprimante à 100 % et réimprimez la feuille.
check-damp = Le papier gonfle et rétrécit avec l’humidité de l’air. Le jour du perçage, mesurez de la première à la dernière cheville sur les feuilles assemblées et comparez avec la table de perçage.
check-scrap = Essayez chaque foret et chaque cheville dans une chute du même bois. Portez des lunettes de protection.
check-load = Un gabarit dit où placer les choses, non que le bois portera les cordes : faites vérifier la charge de la console, de la colonne et de la table.
check-origin = La croix dans un cercle marque l’origine, x 0, y 0. Toutes les longueurs des feuilles partent de là.
on-sheets = Ce qu’il y a sur chaque feuille
on-sheets-continued = Ce qu’il y a sur chaque feuille, suite
one-label = { $layers } ; numéro { $label }
labels = { $layers } ; numéros { $first } à { $last }

## Pourquoi il n’y a pas de gabarit

empty = un gabarit doit avoir quelque chose à dessiner, il n’y a aucune forme (ajoutez un calque)
point = chaque point d’un gabarit doit être un nombre à moins de { $most } mm de l’origine, ici { $x } mm et { $y } mm dans le calque « { $layer } » (vérifiez les longueurs)
size = le dessin doit faire au plus { $most } mm de large et de haut, ici { $width } mm sur { $height } mm (vérifiez les longueurs)
measure = dans le calque « { $layer } », cette mesure doit dépasser 0 et faire au plus { $most } mm : { $what }, ici { $got } mm (changez-la)
radius = rayon
cross = croix
letter-height = hauteur des lettres
angle = un angle du calque « { $layer } » doit être un nombre, ici { $got } (changez-le)
short = une ligne du calque « { $layer } » doit avoir au moins deux points, ici moins (retirez la ligne)
many = un gabarit doit avoir au plus { $most-shapes } formes et { $most-points } points, ici { $shapes } et { $points } (dessinez moins de calques)
letters = un texte, un titre et une note doivent avoir au plus { $most } lettres, et il peut y avoir au plus { $most } notes, ici { $got } (raccourcissez)
overlap = les feuilles doivent se recouvrir de { $least } mm à { $most } mm, ici { $got } mm (choisissez un autre recouvrement)
too-many-sheets = un gabarit doit tenir sur { $most } feuilles au plus, ici il en faut davantage (imprimez plutôt une grande feuille, ou dessinez moins de calques)
large-sheet = une grande feuille doit faire au plus { $most } mm de large et de haut, ici { $width } mm sur { $height } mm (imprimez plutôt de petites feuilles)
