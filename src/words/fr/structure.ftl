# Ce qui ne fait ni section, ni panneau, ni stratifié, ni cadre.

## Sections et colonnes

section-side = { $side } : plus de 0 mm, reçu { $got } mm (mesurez de nouveau)
section-radius = le rayon moyen doit dépasser la moitié de la hauteur ({ $half } mm), reçu { $got } mm (prenez une courbe plus large)
strut-number = colonne, { $what } : au-dessus de 0, reçu { $got } (donnez sa mesure)

## Contreplaqué et stratifiés

panel-plies = un panneau doit avoir de 1 à { $most } plis, reçu { $got } (comptez-les au chant)
panel-even = un contreplaqué de bouleau doit avoir un nombre impair de plis, 3 ou plus, reçu { $got } (comptez-les au chant)
panel-ply = le pli { $number } doit avoir une épaisseur au-dessus de 0 et aucune valeur négative (corrigez-le)
panel-limp = au moins un pli doit avoir un module au-dessus de 0 (donnez-en un)
laminate-layers = un stratifié doit avoir de 1 à { $most } couches, reçu { $got } (comptez-les)
laminate-layer = la couche { $number } doit avoir une épaisseur au-dessus de 0 et un bois dont les modules sont connus

## Cadres

frame-number = chaque place et chaque force doit être un nombre, un n’en est pas un : { $what } (donnez-le de nouveau)
frame-no-pulls = la console doit porter au moins une corde, il n’y en a aucune (donnez une corde et sa tension)
frame-axis = la ligne de la console doit avoir deux points distincts ou plus, reçu { $got } (tracez-la de nouveau)
frame-pillar = le pied de la colonne doit être éloigné de son sommet, écart { $gap } mm (déplacez le pied)
frame-aligned = la colonne ne doit pas viser l’épaule, sa ligne passe à { $gap } mm (déplacez le pied ou l’épaule)

## Ce que nomme une phrase

breadth = largeur
depth = hauteur
area = aire
length = longueur
modulus = module
second-moment = moment quadratique
distance-to-edge = distance au bord
in-line = ligne de la console
in-supports = appuis
in-strings = cordes
in-frame = cadre
