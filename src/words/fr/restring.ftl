# La harpe de quelqu’un : ce qui a été mesuré, et des cordes d’un autre matériau.

## La liste des longueurs

too-large = une liste de longueurs doit avoir au plus { $most } Mo (collez moins de lignes)
empty = la liste est vide (écrivez une longueur par ligne, de la corde la plus aiguë vers le grave)
count = de { $highest } à { $lowest } il y a { $wanted } cordes, mais la liste a { $got } lignes (changez une note, ou ajoutez les lignes manquantes)
no-string = il n’y a pas de corde dedans (écrivez une ligne pour chacune : sa note et sa longueur)
too-many = une liste de longueurs doit avoir au plus { $most } cordes (collez moins de lignes)

## Ce qui manque

note-missing = la note manque (écrivez-la comme la3)
length-missing = la longueur vibrante n’a pas été mesurée (mesurez de la table à la pointe de sillet)
material-missing = on ne sait de quoi est faite la corde (regardez, ou pesez un morceau)
gauge-missing = le diamètre n’a pas été mesuré (mesurez à plusieurs endroits)

## Un autre matériau

same-tension = même tension
same-force = même force de pincement
same-mass = même masse
material-unknown = le matériau « { $name } » n’est pas connu (choisissez-en un autre)
stock-lacks = le stock n’a pas de corde nue de ce matériau pour cette note : { $material }
nearest-thicker = le diamètre le plus proche est de { $percent } % plus fort que voulu
nearest-thinner = le diamètre le plus proche est de { $percent } % plus faible que voulu
not-there = cette corde n’existe pas
not-plain = seules les cordes nues peuvent être remplacées, et celle-ci ne l’est pas
not-known = on ne sait de quoi est faite la corde
no-tension = sa tension ne peut être calculée (donnez longueur, note, matériau et diamètre)
no-gauge = aucun diamètre de ce matériau ne convient
total = Tension totale : { $before } avant, { $after } après.
total-change = Tension totale : { $before } avant, { $after } après ({ $change } %).
totals-lack = Les totaux omettent { $count } cordes.
share-of = { $string } à { $share } % de sa charge de rupture
tightest = La plus chargée avant : { $before }. Après : { $after }.
margin-of = { $margin } demi-tons ({ $string })
margin = Marge la plus basse des cordes changées : { $before } avant, { $after } après.
