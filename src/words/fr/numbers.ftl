# Les nombres, expliqués : la fenêtre, ce qui entoure ses pages, et ses tableaux.

## La fenêtre

window = Les chiffres expliqués
topics = Sujets
column-in = Colonne { $heading } du tableau, en { $unit }.
column-pure = Colonne { $heading } du tableau, un nombre pur.
formula-for = { $what } :
units = Dans les formules, mettez les longueurs en m, les masses en kg, les tensions en N, les contraintes et les modules en Pa.
head-letter = Lettre
head-meaning = Désigne
head-example = Dans l’exemple
example = Exemple, calculé ici avec les réglages usuels : { $string }.
assumptions = Hypothèses
range = Domaine de validité
missing = Quand il n’y a pas de valeur
sources = Sources
checks = Comment cela a été vérifié
check = { $what }. Source : { $source }

## Avec quelle certitude on sait

standing-seen = lu dans la source
standing-second-hand = de seconde main : tel qu’un autre texte le cite
standing-computed = calculé
standing-from-memory = de mémoire : à vérifier avant de s’y fier
standing-own = saisi par vous

## Sujets qui ne sont pas une valeur

title-partials = Partiels
title-tolerance = Tolérance
title-materials = Matériaux
title-findings = Constats et limites
title-pitch = Notes et tempéraments
title-keys = Tonalités
title-loads = Charges sur le cadre
title-woods = Bois et contreplaqué
title-giving = Comment le cadre cède pendant le cordage
title-years = Au fil des années
title-choosing = Choisir les cordes
title-lengths = De meilleures longueurs

## Nombres et unités

span = { $least } à { $most } { $unit }
unit-cents = cents
unit-cents-per-degree = cents par degré
unit-cents-per-kelvin = cents par kelvin
unit-degrees = degrés
unit-millionths-per-kelvin = millionièmes par kelvin
unit-semitones = demi-tons
unit-turns = tours
unit-years = années

## Les cordes des exemples

example-nylon = la3, longue de 448 mm, nylon 0,81 mm, avec un levier
example-disc = la3, longue de 448 mm, nylon 0,81 mm, avec une fourchette
example-discs = la3, longue de 448 mm, nylon 0,81 mm, avec deux fourchettes
example-steel = la4, longue de 250 mm, corde à piano (acier) 0,30 mm
example-wound = la1, longue de 900 mm, acier 0,50 mm filé serré de bronze 0,30 mm, à nu sur 12 mm à la table et 15 mm au sillet

## Tableaux des matériaux, des bois et des tempéraments

table-of-design = Matériaux de ce projet
table-others = Les autres matériaux fournis avec le programme
table-woods = Les bois fournis avec le programme
table-temperaments = Cents par rapport au tempérament égal, A étant le même
head-material = Matériau
head-wood = Bois
head-temperament = Tempérament
head-figure = Grandeur
head-value = Valeur
head-source = Source
head-known = Certitude
fact-density = Densité
fact-density-off = Tolérance de la densité
fact-diameter-off = Tolérance du diamètre
fact-modulus = Module en vibration
fact-modulus-minutes = Module sur des minutes
fact-modulus-weeks = Module sur des semaines
fact-strength = Résistance
fact-expansion = Dilatation
fact-loss = Facteur de perte
facts-missing = Inconnu
fact-modulus-bending = Module en flexion
fact-bending = Flexion
fact-compression-along = Compression dans le fil
fact-compression-across = Compression en travers du fil
fact-shear = Cisaillement
fact-tension-across = Traction en travers du fil
strength-allowed = { $strength }, admissible sous charge durable { $allowed }
modulus-rising = { $base } + { $rise } fois la contrainte
strength-table = { $first } à { $first-at } jusqu’à { $last } à { $last-at }, { $diameters } diamètres
step-up-to = { $value } jusqu’à { $most }

## Une coupe de la console, à la main

hand-pillar = La colonne
hand-beyond = À la main : ce qui tire sur la console au-delà d’une coupe, sur la harpe d’exemple de 36 cordes
hand-force = Force
hand-at-x = x en mm
hand-at-y = y en mm
hand-to-x = X en N
hand-to-y = Y en N
hand-steps = La même coupe, pas à pas, avec une colonne qui ne fait que pousser
hand-step = Étape
hand-numbers = Nombres
hand-cut = La coupe
hand-direction = Sa direction
hand-sums = Somme des X, somme des Y
hand-along = Le long de la console
hand-across = En travers de la console
hand-bending = Flexion
hand-torque = Couple et flexion latérale
hand-torque-is = T = { $torque }, M′ = { $sideways }, des cordes seules, car la colonne pousse dans le plan médian
hand-stress = Contrainte dans le fil
hand-shear = Contrainte de cisaillement
hand-used = Part de la contrainte admissible
hand-use = { $aspect } : { $stress } sur { $limit } : { $share }
