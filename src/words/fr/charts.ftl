# Les courbes, les cordes à l’échelle, et ce qui se pose sur le dessin.

## Courbes

no-strings = Pas encore de cordes
no-figure = Aucune corde n’a encore cette valeur
breaks = casse
string = corde
compared = pour comparer
range = tolérance
metals-to = { $words }, métaux jusqu’à { $percent }

## La légende

no-make-up = sans composition
weighed = pesée
weighed-of = { $material }, pesée
wound-of = { $material }, filée

## Cordes à l’échelle

no-lengths = Aucune corde n’a encore de longueur
to-scale = Longueurs à l’échelle

## Images

nothing-to-draw = Il n’y a encore rien à dessiner. Donnez d’abord leurs longueurs aux cordes.
no-picture = Ce navigateur n’a pas fait l’image. Enregistrez-la plutôt en SVG.

## Ce qui se pose sur le dessin

over-nothing = Rien
over-measures = Cotes
over-bend = Courbure
measures = Cotes d’ensemble, la corde la plus longue et la plus courte, la table et son angle, la console près de la corde { $string }.
measures-gaps = { $measures } Espacement d’équerre aux cordes, graves et aigus : { $gaps }.
bend-even = Des traits plus longs signalent une courbe plus serrée, chaque pointe comparée à ses voisines. Aucune corde ne ressort.
bend-kinks = Des traits plus longs signalent une courbe plus serrée, chaque pointe comparée à ses voisines. D’après les voisines : { $kinks }.
looks-short = la corde { $string } paraît trop courte de { $by }
looks-long = la corde { $string } paraît trop longue de { $by }

## Les charges de la console

loads-forces = Forces sur le cadre
loads-moment = Moment de flexion
loads-shear = Cisaillement
loads-axial = Force le long de la console
loads-twist = Couple
loads-use = Part de la contrainte admissible
about-forces = Poussée de la colonne et force de l’épaule sur la console, et la ligne suivant laquelle toutes les cordes tirent ensemble.
about-moment = Moment de flexion dans la console, dessiné du côté tendu.
about-shear = Cisaillement dans la console. Sous la ligne médiane, la partie côté colonne tire le reste vers les cordes.
about-axial = Force le long de la console : traction au-dessus de la ligne médiane, compression au-dessous.
about-twist = Couple dans la console, dû aux cordes à son côté.
about-use = Part de la contrainte admissible à chaque coupe de la console.
area-pushes = La surface vaut si la colonne ne fait que pousser, le trait tireté si aucun assemblage ne cède.
area-joints = La surface vaut si les assemblages cèdent deux fois plus que ne le disent leurs mesures, le trait tireté si aucun ne cède.
forces-pushes = Dessiné pour une colonne qui ne fait que pousser.
forces-joints = Dessiné pour des assemblages qui cèdent deux fois plus que ne le disent leurs mesures.
then-at-most = { $about } Au plus { $value } alors.
limit = limite
arrow-pillar = Colonne
arrow-shoulder = Épaule
arrow-all = Toutes les cordes { $force }
