# Ce qui diffère entre deux projets : les noms de ce qui est comparé, et ses mots.

## Colonnes et totaux

note = note
make-up = composition
length = longueur
gauge = diamètre
tension = tension
stiffness = raideur au pincement
share = taux de charge
strings = cordes
total-tension = tension totale
highest-share = taux de charge le plus haut
stiffness-range = raideur au pincement, de la plus basse à la plus haute
kinds-to-buy = cordes différentes à acheter
findings = constats
price = prix des cordes
without = { $sum }, sans { $count } { $count ->
    [one] corde
   *[other] cordes
}
range = { $low } à { $high } { $unit }

## Réglages

title = titre
maker = facteur
client = client
serial = numéro de série
date = date
open-tuning = accord à vide
remarks = remarques
temperament = tempérament
mechanism = leviers ou fourchettes
own-mechanism = leviers ou fourchettes de certaines cordes
measured = façon de mesurer l’espacement
spacing = espacement, mm
drives = d’où part la forme
drives-lengths = longueurs
drives-curve = courbe harmonique
nodes = points de la courbe harmonique
neck-wood = bois de la console
sections = sections de la console, %, mm
section = { $at } : { $thickness } sur { $depth }
neck-layers = couches de la console, mm, degrés
plates = métal contre la console
one-side = d’un côté
own-woods = bois propres
softwood = résineux
hardwood = feuillu
by-class = par classe
pillar-wood = bois de la colonne
board-wood = bois de la table
rib-wood = bois du filet de table
joints = assemblages
soundbox = caisse
open-back = fond ouvert
bars = barres de la table
part-sizes = mesures pour la scie
service = où la harpe est gardée
family = cordes au choix
wound-from = note à partir de laquelle les cordes sont filées
wants = visée pour les cordes
wanted-curve = courbe visée
zones = diamètres par zone
kinds = sortes de cordes
spares = cordes de rechange
materials = valeurs des matériaux
codes = références

## Mots des réglages

brass = laiton
aluminium = aluminium
dowels = tourillons
bolts = boulons
screws = vis
at-gap = { $width } à l’espace { $number }
at-note = { $value } à la note { $key }
spares-none = aucune
spares-item = une de chaque article
spares-string = une pour chaque corde
percent = { $percent } %
spares-from = { $spares }, à partir de la corde { $first }
spares-between = { $spares }, de la corde { $first } à { $last }
