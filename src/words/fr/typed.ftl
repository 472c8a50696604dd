# Ce qui est saisi : ce que cela devrait être, et pourquoi cela ne peut servir.

## Tout nombre

missing = { $what } : manque (écrivez par exemple { $example })
unreadable = { $what } : un nombre avec ou sans unité, reçu « { $got } » (écrivez par exemple { $example })
out-of-range = { $what } : de { $least } à { $most }, reçu « { $got } »
out-of-range-meant = { $what } : de { $least } à { $most }, reçu « { $got } » (vouliez-vous dire { $meant } ?)
either = { $first } ou { $second }
note-number = une note commence par une lettre de A à G, reçu « { $got } » (pour une hauteur, écrivez { $got } Hz)

## Ce que c’est

vibrating-length = longueur vibrante
vibrating-length-like = 612 ; 61,2 cm ou 24 1/8 in
bare-end = âme nue en bout
bare-end-like = 12 ou 1/2 in
gauge = diamètre
gauge-like = 0.81, 32 thou ou .032{ "\"" }
pitch = hauteur
pitch-like = la3 ou 443,2 Hz
mass-per-metre = masse par mètre
mass-per-metre-like = 6.75 ou 6.75 g/m
load = charge
load-like = 480, 48 kgf ou 108 lbf
packing = couverture en pour cent
density = densité
modulus = module
strength = résistance
length-of-pack = longueur d’un paquet

## Composition

make-up-long = une composition doit avoir au plus { $most } caractères (écrivez matériau et diamètre, comme nylon 0,81)
make-up-brackets = les crochets doivent se fermer, au plus un autour d’un matériau et un autour d’une mesure, reçu « { $got } »
make-up-core = une âme doit être ronde et n’a pas de couverture, reçu « { $got } » (mettez les couches après un +)
make-up-no-layer = une couche doit suivre chaque + (écrivez par exemple acier 0,45 + bronze 0,25)
make-up-layers = une âme porte au plus trois couches, il y en a { $got } (laissez les autres)
make-up-packing = la couverture doit être de 0 à 1000 pour cent, reçu « { $got } » (écrivez par exemple soie 0,10 à 90 %)
make-up-bare = l’âme nue doit dire à quel bout, reçu « { $got } » (écrivez par exemple nu 12 table 15 sillet)
make-up-not-weighed = seule une corde pesée a « { $got } » après une virgule (commencez par pesée 6,75 g/m)
make-up-twice = « { $got } » ne doit figurer qu’une fois
wound-without-parts = une corde filée doit avoir son âme et son filage, reçu « { $got } » (écrivez par exemple acier 0,40 + bronze 0,25, ou pesez-la)
material-unknown = un matériau doit être connu ici, reçu « { $got } » (écrivez-en un connu, ou ajoutez-le sous « Matériaux »)

## Réglages de la harpe

shares-crossed = le taux de charge le plus bas doit être sous le plus haut, reçu { $low } % et { $high } % (changez l’un des deux)
stiffness-crossed = la raideur au pincement la plus basse doit être sous la plus haute, reçu { $low } et { $high } N/mm (pris dans l’autre sens)
layer-of-neck-thin = la couche { $number } de la console doit être plus épaisse que 0 mm (la console est prise d’une pièce)
plywood-unusable = { $part } : le contreplaqué ne peut servir : { $why }
wood-unknown = { $part } : le bois doit être connu ici, reçu « { $got } » (choisissez-en un de la liste)
the-neck = console
a-layer-of-neck = une couche de la console
the-pillar = colonne
the-board = table
the-rib = filet de table
the-sides = éclisses
the-back = fond
the-bars = barres
pins-too-far = le décalage des chevilles doit être au plus les { $most } mm du sillet à la cheville, reçu { $got } mm (pris à { $most } mm)
zones-twice = deux zones de l’espacement ne doivent pas avoir le même numéro (la première vaut)
no-zone = l’espacement doit avoir au moins une zone, il n’y en a pas (pris à { $usual } mm)
no-gap = l’espacement doit avoir au moins un espace, il n’y en a pas (pris à { $usual } mm)
curve-unusable = { $why } ; d’ici là les longueurs saisies valent

## Valeurs des matériaux

density-like = 1140 ou 1.14 g/cm³
density-deviation = tolérance de la densité
diameter-deviation = tolérance du diamètre
diameter-deviation-like = 0.01 mm ou 2 %
strength-like = 310 ou 45 ksi
expansion = dilatation
loss-factor = facteur de perte
rise = hausse avec la contrainte
row-diameter = diamètre d’une ligne

## Les mots de la ligne d’une composition

word-weighed = pesée
word-core = âme
word-gauge = diamètre
word-breaks = casse
word-bare = nu
word-board = table
word-pin = sillet
word-at = à
