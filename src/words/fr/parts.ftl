# Les pièces de la harpe pour la scie : le nom de chacune, et ce qu’il y a à en dire.

## Ce que chacune est

neck = console
pillar = colonne
capital = joue du chapiteau
base = socle
front-foot = pied avant
rear-foot = pied arrière
soundboard = table
strip = baguette extérieure
string-rib = filet de table
cross-bar = barre en travers
long-bar = barre en long
side = éclisse
back = fond
front-liner = contre-éclisse de la table
back-liner = contre-éclisse du fond
side-brace = traverse d’éclisse
back-brace = traverse du fond
foot-block = tasseau du bas
knee-block = talon

## Pourquoi il n’y en a pas

no-neck = sans console il n’y a pas de pièces (donnez une longueur à trois cordes au moins)
no-box = la caisse n’a pas encore de mesures (donnez sa profondeur, ses éclisses et son fond dans le dessin, sous Bois)
too-flat = la table est trop couchée pour une harpe qui tient sur le bas de sa caisse (dressez-la davantage)
crossed = les faces d’une pièce se croisent : { $part } (voyez les mesures de la colonne, de la table et de la caisse)

## Ce qu’il y a à en dire

tuning-pin = cheville
bridge-pin = pointe de sillet
strings-at-neck = Les cordes passent à { $gap } mm de la face de la console. Éloignez-les de son milieu, ou amincissez-la.
string-at-pin = La corde { $string } passe à { $gap } mm de la { $pin } de la corde { $other }. Écartez les chevilles ou les pointes, ou prenez-en de plus fines.
levers-close = Les leviers des cordes { $one } et { $other } laissent { $gap } mm entre eux, pour 11 mm de large. Prenez des leviers plus étroits, ou un plus grand écart.
pin-at-edge = Corde { $string }, { $pin } : { $off } mm du bord de la console ; { $asked } mm sont sains pour ce diamètre. Le bois peut fendre à cet endroit.
hole-on-brace = L’ouïe { $hole } tombe sur la traverse { $brace } du fond. Raccourcissez-la, ou écartez les traverses.
hole-narrowed = L’ouïe { $hole } est taillée à { $to } mm de large et non à { $from } mm, car les contre-éclisses n’en laissent pas plus.
back-lower = Le fond monte de { $to } mm en bas et non de { $from } mm : sur une caisse si étroite, il serait trop raide à ses bords.
hand-too-wide = Les ouïes font { $length } mm sur { $width } mm. Une grande main à plat demande { $hand-long } mm sur { $hand-wide } mm.
out-of-reach = { $count ->
    [one] Le nœud de la corde { $first } est
   *[other] { $count } nœuds, des cordes { $first } à { $last }, sont
} jusqu’à { $far } mm de l’ouïe la plus proche ; on atteint { $reach } mm. Faites des ouïes plus nombreuses ou plus grandes.
in-foot-block = { $count ->
    [one] La corde { $first } entre dans le tasseau du bas, ou passe si près que son nœud n’a pas de place.
   *[other] Les cordes { $first } à { $last } entrent dans le tasseau du bas, ou passent si près que leurs nœuds n’ont pas de place.
} Raccourcissez le tasseau, ou faites commencer les cordes plus haut. La résistance de la table est calculée comme si le filet de table y continuait.
in-knee-block = { $count ->
    [one] La corde { $first } entre dans le talon, ou passe si près que son nœud n’a pas de place.
   *[other] Les cordes { $first } à { $last } entrent dans le talon, ou passent si près que leurs nœuds n’ont pas de place.
} Faites le talon moins haut ou le tenon qu’il reçoit plus court, ou faites monter la table plus haut. La résistance de la table est calculée comme si le filet de table y continuait.
board-thin = À la corde { $string }, la table a { $at-string } mm d’épaisseur ; au-delà, elle s’amincit jusqu’à { $at-end } mm à son extrémité. Donnez-lui plus d’épaisseur à cette corde, ou amincissez-la moins.
face-across = en travers de la harpe
face-high = dans le plan des cordes
face-too-large = { $joint } : la face collée est donnée pour { $given } mm { $way }, mais les pièces ne se touchent que sur { $drawn } mm. Sous Charges, l’assemblage est jugé avec la plus grande face. Saisissez { $drawn } mm, ou agrandissez la pièce.
neck-beside = La console dépasse de { $by } mm le côté de la caisse. Une table large de { $wanted } mm en haut la porterait en entier.
rib-narrowed = Le filet de table passe de { $from } mm à { $to } mm vers l’aigu, car les contre-éclisses n’en laissent pas plus. La résistance de la table est calculée avec la pleine largeur.
bar-at-rib = La paire { $pair } des barres en long rencontre le filet de table. Éloignez-la, ou prenez un filet plus étroit.
neck-in-box = La console entre de { $deep } mm dans une autre pièce : { $part }. Recoupez-la à cet endroit, ou changez la forme de l’épaule.
no-shoulder-tenon = Le tenon de la console ne trouve pas de place dans le talon et n’est pas dessiné.
no-shoulder-fastener = Toutes les fixations de l’épaule ne tiennent pas dans le talon ; celles qui en sortiraient ne sont pas dessinées.
no-neck-fastener = Toutes les fixations de l’épaule ne restent pas dans la console, qui s’y détourne ; celles qui en sortiraient, ou presque, ne sont pas dessinées.
no-head-tenon = Le tenon du haut de la colonne traverserait la console, ou presque, et n’est pas dessiné.
no-foot-tenon = Le pied de la colonne ne laisse pas de place à son tenon, qui n’est pas dessiné.
to-front = vers l’avant
to-player = vers le musicien
aside = de côté
tips = La harpe bascule { $way } quand on la penche de { $angle }°. Prolongez le socle de ce côté, ou placez le poids plus bas.
falls = La harpe ne tient pas debout : elle tombe { $way }. Prolongez le socle de ce côté.
not-judged = Non examiné : les cordes qui vibrent, le jeu des chevilles, le serrage et le collage des pièces. Métal, cordes, colle et vernis ne sont pas pesés. Mesurez avant de scier, et ajustez chaque pièce sur sa voisine.
neck-grain = Non jugé : le fil qui sort de la console. Ses planches sont droites, et sa ligne s’en écarte jusqu’à { $angle }° ; l’estimation sous Charges prend un fil qui suit la console. Là où il sort, la console est bien plus faible qu’indiqué : à 11° il reste à peine plus de la moitié de sa résistance en flexion (Wood Handbook, tableau 5-12, de mémoire), et moins au-delà. Collez-la en couches dont le fil se croise, ou prenez du contreplaqué ; l’un et l’autre portent moins qu’un bois dont le fil suit la console : faites-la donc plus épaisse.
neck-layers-turn = Non jugé : ce que la courbe de sa ligne fait aux couches de la console. L’estimation sous Charges compte leurs angles depuis cette ligne ; les couches sont droites, et la ligne s’en écarte jusqu’à { $angle }°. Là, elles portent moins qu’indiqué.
held = Estimation : les cordes tirent la caisse vers le haut avec une force allant jusqu’à { $pull }. La colle sous le tasseau du bas travaille à { $glue } % de l’admissible ; le socle, qui fléchit entre colonne et tasseau du bas, à { $base } %. Ni les vis ni la colle sur bois de bout ne sont comptées. Non jugé : comment cette force passe du tasseau dans la table et les éclisses.
held-unjudged = Estimation : les cordes tirent la caisse vers le haut avec une force allant jusqu’à { $pull }. Non jugé : si la colle et le socle y résistent, car la résistance du bois du socle et du tasseau du bas n’est pas connue.
base-opens = Estimation : la colle sous le tasseau du bas, qui tient la caisse sur le socle, travaille à { $share } % de l’admissible. Allongez le tasseau le long du socle.
base-bends = Estimation : le socle, qui fléchit entre colonne et tasseau du bas, travaille à { $share } % de l’admissible. Faites-le plus épais.
block-longer = Le tasseau du bas a { $to } mm le long du socle et non { $from } mm, pour que ce qui est collé sous la table finisse au-dessus du socle.
bolts-close = Des boulons de l’épaule sont à { $gap } mm l’un de l’autre, alors qu’écrous et rondelles demandent { $asked } mm. Écartez-les, ou prenez-en de plus fins.
bent-not-judged = Non jugé : si le fond peut être cintré à ce point sans rompre, et ce que son arc apporte à la résistance de la caisse, qui est calculée avec un fond plat.

## Leurs gabarits

title = { $harp } : { $part }
numbered = { $part } { $number }
of-side = { $part }, { $side }
of-side-numbered = { $part } { $number }, { $side }
strings-side = côté cordes
other-side = autre côté
corner = coin inférieur gauche du rectangle autour de la pièce
sizes = Finie : { $long } mm dans le fil, { $wide } mm en travers, { $thick } mm d’épaisseur.
wood-is = Bois : { $wood }. La flèche montre le fil.
wood-across = Bois : { $wood }. Le cercle marqué d’un point veut dire que le fil est d’équerre à cette face.
seen-from-outside = Vue de l’extérieur de la harpe.
seen-from-above = Vue de dessus, le bout de la colonne à gauche.
pair-mirrored = L’autre pièce de la paire est son image en miroir.
far-edge-is = En tirets : l’arête de la face arrière, là où les chants sont en biais.
planed = Plus mince vers les côtés : rabotez l’extérieur du milieu vers les bords, jusqu’à { $deep } mm aux bords. L’intérieur reste plan.
tapers = Elle s’amincit de { $thick } mm à { $thin } mm.
mechanism = levier ou fourchette
fastener = assemblage de console et caisse
drill-through = { $what } : percer à { $wide } mm de part en part, d’équerre à la face.
drill-deep = { $what } : percer à { $wide } mm, sur { $deep } mm de profondeur, d’équerre à la face.
drill-slanting = Trous des cordes : percer à { $angle }° de la face, dans le sens de la corde, la rangée de trous dans le plan des cordes.

## Les vues

from-side = De côté
from-front = De face
from-above = De dessus
view = { $wide } mm de large, { $high } mm de haut

## La liste de débit sur papier

cutting-list = Liste de débit
running = Liste de débit de { $harp }
parts = Pièces
parts-to-saw = Pièces : dans le fil × en travers × épaisseur, en mm
boards-and-sheets = Planches et panneaux
counted = À prévoir en plus du bois
stands = Poids du bois, et comment la harpe tient
worth-saying = À regarder
head-part = Pièce et bois
head-finished = Finie, tenons compris
head-rough = Brute
head-wood = Bois
head-boards = Planches
head-waste = Chutes
head-what = Quoi
head-count = Combien
head-size = Mesure
part-of-wood = { $part } ({ $wood })
glued-up = { $size }, en { $strips } lames
glued-of-layers = { $size }, en { $layers } couches, chacune sciée à { $thick } mm d’épaisseur
wood-so-thick = { $wood }, { $thick } mm
board-size = { $long } × { $wide } mm
boards-at-least = { $count } de { $size } ; au moins { $least }
percent = { $number } %
degrees = { $number }°
kilograms = { $number } kg
millimetres = { $number } mm
item-strings = Cordes
item-tuning-pins = Chevilles
item-bridge-pins = Pointes de sillet
item-levers = Leviers
item-discs = Fourchettes
item-fasteners = Fixations de la console sur la caisse
mass = Poids du bois
tips-front = Se penche vers l’avant, avant de basculer, de
tips-player = Se penche vers le musicien, avant de basculer, de
tips-aside = Se penche de côté, avant de basculer, de
shoulder-high = Haut du fond au-dessus du sol, en équilibre sur le pied arrière
not-weighed = Pièces dont le bois n’a pas de densité connue
how-laid = Les morceaux sont placés les plus larges d’abord, chacun sur la première planche qui a de la place, en bandes dans la longueur ; aucune façon de les placer ne demande moins de planches que le nombre donné comme minimum. Les mesures brutes ont { $length } mm de plus en longueur, { $width } mm en largeur et, pour les planches, { $thickness } mm en épaisseur ; la scie prend { $kerf } mm.
