# La vue où l’on choisit cordes et longueurs.

## The view

panel = Choisir les cordes
side = Visée, limites et longueurs
group-family = Cordes au choix
group-points = Visée
group-weights = Ce qui compte
group-limits = Limites
group-zones = Diamètres par zone
group-kinds = Sortes de cordes
group-reshape = Meilleures longueurs

## The search

search = Recherche
stock-in-use = D’après la liste de stock utilisée : { $list }, { $count ->
    [one] { $count } article
   *[other] { $count } articles
}.
stock-unnamed = une liste sans nom
all-strings = Toutes les cordes
selected = Celles sélectionnées dans le tableau
may-change = Peut changer
may-change-now = Peut changer : { $strings }.
from-both = La liste et les cordes de la harpe
from-stock = La liste seule
choose-from = Choisir dans
find-set = Chercher le meilleur jeu
find-set-hint = Le meilleur jeu pour toutes les cordes ensemble
find-fronts = Régularité ou nombre de diamètres
find-fronts-hint = Le meilleur jeu pour chaque nombre plus petit de diamètres
find-by-price = Régularité ou prix
find-by-price-hint = Le meilleur jeu pour chaque prix plus bas
keep = Garder telle quelle : { $strings }
keep-hint = Les cordes sélectionnées dans le tableau restent telles quelles
kept = { $strings } : gardé tel quel
kept-list = Cordes qui restent telles quelles
let-change = Laisser changer
let-strings-change = Laisser changer { $strings }
busy = La recherche est en cours
cancel = Annuler
cancel-hint = Arrêter sans rien changer
searching = Recherche en cours.
searching-so-far = Recherche depuis { $seconds } s.
searching-round = Tour { $round }. Recherche depuis { $seconds } s.
no-lengths = Pas de telles longueurs
no-set = Pas de tel jeu
set-with = Le jeu avec { $what }
taken = { $count ->
    [one] { $count } corde changée
   *[other] { $count } cordes changées
}. Annuler ramène ce qui était là.
ghost = Plein : les cordes maintenant. Gris : la proposition.

## The alternatives

alternatives = Autres jeux
front-up = Écart moyen à la visée, %
front-across-price = Prix, { $currency }
front-across = Cordes et fils différents
front-hint = Jeux au choix ; les flèches vont de l’un à l’autre
front-said = Jeu { $number } sur { $count } : { $what }.

## The wanted curve

wish-title = Visée : { $what }, { $unit }, du grave à l’aigu
legend-wanted = visée
legend-now = maintenant
legend-proposed = proposé
legend-reach = ce que le stock peut donner dans les limites
point-at = Point { $number } sur { $count } : { $value } { $unit } à { $note }
point-hint = Tirez-le, ou déplacez-le avec les flèches (Maj : dix fois plus) ; Suppr l’enlève
wants-stiffness = Raideur au pincement (toucher)
wants-tension = Tension
wants = Visée pour
origin = Poser la courbe
origin-choose = Choisir une courbe de départ
origin-now = Comme les cordes maintenant
origin-usual = Comme au début : le toucher de la harpe
origin-constant = Une seule valeur partout
origin-straight = Droite d’un bout à l’autre
origin-sample = Comme l’exemple { $name }
origin-version = Comme la version { $name }
no-curve = Aucune courbe à reprendre : là-bas, aucune corde n’a note, longueur et composition.
no-room = Il n’y a plus de place pour un point.
points-table = Points de la courbe visée
head-point = Point
head-note = Note
add-point = Ajouter un point
add-point-hint = Dans le plus grand vide entre deux points
points-hint = Entre deux points, la courbe change par pourcentages égaux ; au-delà des bouts, elle reste plate.
remove = Enlever
remove-point = Enlever le point { $number }
note-of-point = Note du point { $number }
value-of-point = Valeur du point { $number }

## What matters

weight-none = Ne compte pas
weight-little = Compte un peu
weight-some = Compte
weight-much = Compte beaucoup

## Limits, zones, kinds

wound-from = Le filage commence au plus tard à
wound-from-hint = Une note comme mi2. Laissée vide, la recherche propose où commence le filage.
note-wrong = Une note a un nom et le numéro de son octave : do3, fa#4, sib1.
gauge-wrong = Un diamètre est un nombre de millimètres, ou de pouces comme 0.032 in.
zone-from = De la note
zone-to = À la note
zone-thinnest = Le plus fin
zone-thickest = Le plus gros
zone-cell = Zone { $number } : { $head }
zone-remove = Enlever la zone { $number }
zones-table = Zones de diamètres
zone-add = Ajouter une zone
zones-hint = Une note vide va jusqu’au bout de l’étendue, un diamètre vide n’est pas une limite. Diamètres en millimètres, ou avec in pour des pouces.
kind-cell = { $kind } : { $head }
kind-lowest = note la plus grave
kind-highest = note la plus aiguë
head-lowest = Note la plus grave
head-highest = Note la plus aiguë
kind-up = Monter
kind-up-hint = Rapprocher { $kind } de l’aigu
kind-out-hint = Ne pas utiliser { $kind }
kinds-table = Sortes de cordes de l’aigu au grave
kinds-all = Laisser de nouveau la famille décider
kinds-free = La famille dit quelles sortes du stock peuvent servir, dans leur ordre usuel : cordes nues en haut, filées en bas.
kinds-own = Fixer l’ordre et l’étendue de chaque sorte
kinds-hint = De l’aigu au grave, une sorte ne vient qu’après celles placées au-dessus dans la liste.
kind-choose = Choisir une sorte
kind-add = Ajouter une sorte

## What is proposed

would-change = { $count ->
    [one] { $count } corde changerait.
   *[other] { $count } cordes changeraient.
}
breaks-limits = Le jeu le plus proche dépasse des limites :
before-after = Avant et après
head-now = Maintenant
head-proposed = Proposé
head-take = Prendre
head-string = Corde
head-tension = Tension, { $unit }
head-feel = Toucher, { $unit }
head-share = Taux de charge, %
close = Fermer
take-all = Tout prendre
take-anyway = Prendre quand même
take-all-hint = Chaque corde listée, en une étape
take-some = Prendre les lignes cochées
leave-it = Abandonner
leave-it-hint = Ne rien changer
rows-table = Cordes qui changeraient
take-string = Prendre la corde { $string }
keep-string = Garder la corde { $string } telle quelle, et chercher de nouveau
keep-one = Garder

## Other lengths

way-wanted = Près de la visée, mêmes diamètres
way-both = Près de la visée, d’autres diamètres aussi
way-scale = Toutes par un seul facteur
way-longest = Toutes, jusqu’à une longueur maximale
way-stretch = Par un facteur à chaque bout
way-fair = Lisser, les bouts gardés
smooth-little = Un peu
smooth-well = Bien
smooth-fully = Aussi lisse que possible
smooth = Lisser
room-move-usual = 8 % de sa longueur
room-shortest-usual = selon la console
room-any = libre
other-lengths = Autres longueurs
find-lengths = Proposer des longueurs
find-lengths-hint = Montré sur les courbes avant tout changement
lengths-hint = Pour les cordes qui peuvent changer, selon la recherche. Les longueurs vont par pas d’un demi-millimètre ou d’un 64e de pouce.
room-move = Une pointe bouge au plus de
room-shortest = Corde la plus courte
room-longest = Corde la plus longue
room-kink = Pointe hors de la courbe de ses voisines
factor = Facteur
factor-top = Facteur à la corde la plus aiguë
factor-bottom = Facteur à la corde la plus grave
