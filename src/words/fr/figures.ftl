# Ce qui est montré et dit de chaque valeur.

## Les valeurs : tête de colonne, sens, nom complet

frequency-word = Hauteur
frequency-meaning = La fréquence de la note dans cet accord.
frequency = Hauteur en hertz
length-word = Longueur
length-meaning = Longueur vibrante, de la table d’harmonie (ou du filet de table) à la pointe de sillet.
length = Longueur vibrante
gauge-word = Diamètre
gauge-meaning = Diamètre d’une corde nue, diamètre total d’une corde filée.
gauge = Diamètre
core-word = Âme
core-meaning = Diamètre de ce qui porte la tension : l’âme d’une corde filée.
core = Âme
linear-density-word = Masse
linear-density-meaning = Masse par mètre.
linear-density = Masse par mètre
tension-word = Tension
tension-meaning = La tension qui amène le premier partiel de la corde raide à sa hauteur.
tension = Tension
stress-word = Contrainte
stress-meaning = Tension divisée par la section de l’âme.
stress = Contrainte
breaking-load-word = Charge de rupture
breaking-load-meaning = La plus basse charge qui rompt l’âme. Une estimation d’après la résistance de son matériau.
breaking-load = Charge de rupture
load-share-word = Taux de charge
load-share-meaning = Tension divisée par la charge de rupture.
load-share = Taux de charge
semitones-to-break-word = Marge
semitones-to-break-meaning = De combien la hauteur pourrait monter avant que la corde ne rompe.
semitones-to-break = Marge avant rupture
pluck-stiffness-word = Raideur
pluck-stiffness-meaning = Raideur au pincement, la mesure du toucher : la force que rencontre le doigt par millimètre ou par pouce.
pluck-stiffness = Raideur au pincement
inharmonicity-word = Inharm. B
inharmonicity-meaning = Coefficient d’inharmonicité, âme nue en bout comprise.
inharmonicity = Inharmonicité
partial-8-word = Partiel 8
partial-8-meaning = De combien le huitième partiel dépasse huit fois le premier.
partial-8 = Partiel 8
impedance-word = Impédance
impedance-meaning = Impédance caractéristique : la racine de la tension fois la masse par mètre.
impedance = Impédance
damping-word = Amortis.
damping-meaning = Facteur de perte en flexion au partiel choisi sous « Instrument » : plus il est bas, plus la corde sonne longtemps. L’air et la table prennent aussi leur part.
damping = Amortissement
stretch-word = Allongement
stretch-meaning = De combien la corde s’allonge entre l’état détendu et sa hauteur, une fois stabilisée.
stretch = Allongement
pin-turns-word = Tours
pin-turns-meaning = Tours de cheville qui reprennent l’allongement.
pin-turns = Tours de cheville
cents-per-pin-degree-word = Cents par degré
cents-per-pin-degree-meaning = De combien un degré de cheville change la hauteur.
cents-per-pin-degree = Cents par degré de cheville
cents-per-kelvin-word = Température
cents-per-kelvin-meaning = De combien la hauteur change quand l’air est plus chaud d’un degré Celsius. Sous zéro, elle baisse.
cents-per-kelvin = Cents par kelvin
lever-word = Levier
lever-meaning = De la pointe de sillet au point où le levier touche, pour un demi-ton.
lever = Levier
disc-natural-word = Fourchette bécarre
disc-natural-meaning = De la pointe de sillet à la fourchette bécarre, pour le premier demi-ton : du bémol au bécarre.
disc-natural = Fourchette bécarre
disc-sharp-word = Fourchette dièse
disc-sharp-meaning = De la pointe de sillet à la fourchette dièse, pour le second demi-ton : du bécarre au dièse, la fourchette bécarre appuyant aussi.
disc-sharp = Fourchette dièse
lift-word = Levée
lift-meaning = La part de la tension qui soulève la table, d’équerre avec elle.
lift = Levée sur la table
along-board-word = En long
along-board-meaning = La part de la tension le long de la table, vers son extrémité aiguë.
along-board = Force le long de la table
cut-length-word = Coupe
cut-length-meaning = La longueur à couper : longueur vibrante, nœud, tours sur la cheville et un bout pour tirer.
cut-length = Longueur de coupe
pluck-force-word = Force du doigt
pluck-force-meaning = La force du doigt qui écarte la corde autant que le projet l’indique.
pluck-force = Force de pincement
glide-word = Montée
glide-meaning = De combien un tel pincement commence trop haut, avant que la corde ne revienne à sa hauteur.
glide = Montée au pincement
nominal-error-word = Erreur nominale
nominal-error-meaning = De combien le premier demi-ton est trop haut quand le levier ou la fourchette est placé comme pour une corde seulement raccourcie.
nominal-error = Erreur à la place nominale

## Groupes

group-pull = Tension et toucher
group-tone = Timbre
group-tuning = Accord et demi-tons
group-ordering = Mesures et commande
group-more = Divers

## Les mots à côté d’une bande

least-tension = au moins { $low }
working-share = lâche sous { $low }, usuel jusqu’à { $high }
working-semitones = usuel à partir de { $low }
feel = visée { $low } à { $high }
sharpest-partial = limite { $high } là où cela s’entend

## Units beside a figure

unit-cents = cents
unit-cents-degree = cents/°
unit-cents-celsius = cents/°C
unit-semitones = demi-t.
unit-turns = tours
