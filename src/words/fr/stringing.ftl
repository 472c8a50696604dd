# Monter les cordes de la harpe, une à une, en grand.

title = Monter les cordes
order = Ordre
progress = Montées et accordées : { $up } sur { $count }
all-up = Les { $count } cordes sont montées et accordées. Refaites des tours d’accord jusqu’à ce qu’elles tiennent.
next-in-order = La suivante : { $string }
back = Retour
next = Suivante
tick = Montée, accordée
cut = Couper à
gauge = Diamètre
vibrating = Longueur vibrante
turns = Tours sur la cheville
turns-take-up = dont { $turns } pour l’allongement
tune = Accorder à
tune-lever = levier ouvert
tune-discs = pédale en haut, fourchettes ouvertes
code = Référence
no-code = aucune
string-c = corde de do
string-f = corde de fa
was-other = Cochée pour une autre corde : { $then }. Maintenant c’est { $now }. Cochez de nouveau quand celle-ci est montée.
before = Avant de commencer
no-strings = Il n’y a pas encore de cordes. Saisissez-les d’abord dans le tableau des cordes.
not-kept = Ce navigateur ne garde pas les coches : { $why }.
