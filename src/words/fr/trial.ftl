# Essais d’un matériau : ce qui est relevé, et ce que cela donne.

## Pesée

weighing = D’après une pesée
weighing-advice = Pesez un long morceau de corde nue et mesurez son diamètre à plusieurs endroits. Le diamètre compte double, c’est donc lui qui décide de la qualité de la valeur. Écrivez la masse avec g/m si c’est elle que vous connaissez ; la longueur n’est alors pas nécessaire.
length = Longueur
mass-g = Masse, g
diameter = Diamètre
length-error = ± longueur, mm
mass-error = ± masse, g
diameter-error = ± diamètre, mm
of-length = longueur
of-mass = masse
of-mass-like = 12.3 g, ou 1.23 g/m
of-mass-per-metre = masse par mètre
of-error = erreur d’un relevé
of-mass-error = erreur de la masse
density-off = { $density } ± { $off } kg/m³ (± { $percent } %)
weighed-source = pesée : { $mass }, { $size }
weighed-length-source = pesée : { $mass } pour { $length }, { $size }

## Rupture

breaking = D’après un essai de rupture
breaking-advice = Écrivez la charge à laquelle chaque corde a cassé, séparées par des points-virgules. La plus faible compte. Une corde qui casse fouette et blesse : portez des lunettes de protection, tenez le visage hors du plan de la corde, tenez-vous de côté, éloignez les autres, et laissez la charge tomber de peu sur quelque chose de mou.
loads = Charges à la rupture
of-load-at-break = charge à la rupture
of-number-of-loads = nombre de charges
one-string = { $least } MPa, sur une seule corde : cassez-en plusieurs, car les cordes diffèrent
several-strings = la plus basse { $least } MPa sur { $count } cordes (moyenne { $mean }, écart type { $deviation } MPa)
breaking-source = essai de rupture : la plus faible de { $count } { $count ->
    [one] corde
   *[other] cordes
}, { $load } à { $size }

## Allongement

stretching = D’après un essai d’allongement
stretching-advice = Suspendez une charge à un long morceau, ajoutez une charge connue, et relevez de combien s’allonge une longueur mesurée. Relevez après quelques minutes pour le module sur quelques minutes, après quelques semaines pour celui sur quelques semaines. Restez bien au-dessous de la charge de rupture. La corde peut casser malgré tout : portez des lunettes de protection, tenez le visage hors de son plan, tenez-vous de côté, et laissez la charge tomber de peu sur quelque chose de mou.
load-added = Charge ajoutée
grows-by = S’allonge de
measured-length = Longueur mesurée
of-lengthening = allongement
stretching-source = essai d’allongement : { $load } de plus, { $stretch } sur { $length }, { $size }
