# Une corde en entier, sa composition, son échange, et ce qui est proposé pendant la saisie.

## La corde en entier

as-the-harp = Comme la harpe
partials-count = Partiels
above = Corde précédente
above-hint = La corde au-dessus (Ctrl+Haut)
below = Corde suivante
below-hint = La corde au-dessous (Ctrl+Bas)
raised-one = Levier ou fourchette de la corde { $number }
raised = Leviers ou fourchettes des cordes { $first } à { $last }
title = { $string }, en entier
figure = Grandeur
off = Tolérance
main-cause = Cause principale, ou pourquoi elle manque
few-turns = L’allongement prend à lui seul { $turns } tours de cheville, et la longueur de coupe en compte { $wound } une fois accordée : tirez la corde à la main avant de l’enrouler, ou prévoyez plus de tours.
cause-diameter = le diamètre
cause-density = la densité
cause-length = la longueur
cause-pitch = la hauteur
cause-temperature = la température
cause-push = la poussée
cause-others = { $cause }, entre autres
off-meaning = Tolérance : celles sous Instrument et celles des matériaux, combinées (racine de la somme des carrés). Les formules et les modules peuvent s’écarter aussi.
off-without-warmth = L’effet de la température sur cette corde n’est pas connu ; il est laissé de côté.
string = Corde
code = Référence

## La composition d’une corde filée

core = Âme
bedding = Sous-couche
winding = Filage
core-alone = La charge de rupture est celle de l’âme seule : le filage ne porte rien. Ce qu’il ajoute à la raideur est laissé de côté.
inside-out = Composition, de l’intérieur vers l’extérieur
head-part = Partie
head-material = Matériau
head-size = Mesure
head-over-all = Total
head-mass = Masse
head-share = Part
covering = { $size }, couverture { $percent } %
no-bare = Filée d’un bout à l’autre : pas d’âme nue.
bare-ends = Âme nue : { $board } à la table, { $pin } au sillet.
bare-tension = La tension ne les compte pas : à la tension donnée la corde sonne { $cents } cents au-dessus de sa note ; accordée, elle a donc { $percent } % de moins.
bare-partial = Des { $cents } cents du partiel 8, { $bare } viennent des bouts nus.

## Partiels et pincement

partials = Partiels : de combien au-dessus des multiples entiers du premier
head-partial = Partiel
by-stiffness = Par raideur, cents
by-ends = Par bouts nus
together = Ensemble
by-law = Bouts nus selon la loi cubique
by-ends-exact = Par bouts nus : exact. La loi cubique vaut pour des bouts courts et donne trop pour les partiels élevés.
cents = { $cents } cents
pluck = Un pincement
of-finger = Le doigt
value = Valeur
pulls-aside = Écarte la corde de
at-share = Pince à cette part de la longueur
needs-force = Demande une force de
from-tension = dont part de la tension
from-stretching = dont part de l’allongement
glide = Montée : elle commence trop haut de

## Leviers et fourchettes

lever = Levier
disc = Fourchette
disc-natural = Fourchette bécarre
disc-sharp = Fourchette dièse
disc-to-disc = De fourchette à fourchette : { $apart } { $unit }. La fourchette dièse est placée avec la fourchette bécarre appuyant aussi.
core-stiff = L’âme est prise aussi raide qu’en vibration ; tant qu’un contact appuie, elle cède davantage, l’allongement est donc estimé par excès : la bonne place est entre la place donnée et la place nominale.
places-mm = Places et tolérances sont en millimètres depuis la pointe de sillet. La place nominale est celle d’une corde seulement raccourcie ; l’erreur est de combien le demi-ton y serait trop haut. Ce qui reste se règle sur la harpe, à la régulation.
places-inch = Places et tolérances sont en pouces depuis la pointe de sillet. La place nominale est celle d’une corde seulement raccourcie ; l’erreur est de combien le demi-ton y serait trop haut. Ce qui reste se règle sur la harpe, à la régulation.
contacts = Leviers et fourchettes
head-contact = Contact
head-place = Place
head-nominal = Nominale
head-error = Erreur à cet endroit, cents
head-two-cents = Tolérance de place pour ± 2 cents
head-five-cents = Tolérance de place pour ± 5 cents
head-pull = Tension tant qu’il appuie
head-load = Taux de charge

## L’échange

gauge = Diamètre
tension = Tension
load-share = Taux de charge
margin = Marge
stays = Reste : { $why }.
grey = En gris : les cordes en { $material }
frame-now = Cadre actuel : { $before }. Avec ces cordes : { $after }.
none-exchanged = Aucune corde ne peut être remplacée ainsi. Le tableau dit pourquoi.
exchanged = { $count ->
    [one] { $count } corde est
   *[other] { $count } cordes sont
} maintenant en { $material }. Annuler revient en arrière.
all-strings = toutes les cordes
these = cordes { $first } à { $last }, comme sélectionné
this = corde { $number }, comme sélectionné
nearest-of = le plus proche de la liste « { $list } »
any-gauge = au centième de millimètre
exchange-title = Autre matériau
strings = Cordes
new-material = Nouveau matériau
what-stays = Ce qui reste égal
gauges = Diamètres
before-after = Cordes avant et après
exact-gauge = Diamètre exact
remark = Remarque
exchange = Remplacer ces cordes
exchange-hint = Une seule étape : Annuler revient en arrière. Les courbes grises sont les cordes telles qu’elles seraient.

## Pendant la saisie d’une corde

then-gauge = puis saisissez son diamètre
offer-load = { $tension }, taux de charge { $share } %
offer-breaks = { $tension }, taux de charge { $share } %, casse
matches = { $count ->
    [one] { $count } corde correspond.
   *[other] { $count } cordes correspondent.
}
offers = Matériaux et stock

## La fenêtre de composition

unused = La composition a été modifiée. La prendre ? Annuler laisse la corde telle qu’elle était.
make-up = Composition
no-string = Il n’y a pas encore de corde. Ajoutez-en d’abord une.
make-up-of = Composition de la corde { $number }
make-up-of-several = Composition des cordes { $first } à { $last }
several-hint = Pour plusieurs cordes nues, un matériau ou un diamètre que vous ne touchez pas reste celui de chaque corde.
use-one = Prendre pour cette corde
use-several = Prendre pour ces cordes
choose-one = choisissez
material = Matériau
kind = Type
plain = Nue
wound = Filée sur une âme
weighed = Pesée (masse par mètre connue)
diameter = Diamètre, mm
bare-board = Âme nue à la table, mm
bare-pin = Âme nue au sillet, mm
add-layer = Ajouter une couche à l’extérieur
layer = Couche { $number }, comptée depuis l’âme
wire = Fil, mm
ribbon = Fil plat, mm
cover = Couverture, %
layer-hint = Fil plat : sa largeur ; laissez vide pour un fil rond. Couverture 100 % : les spires se touchent.
remove-layer = Retirer cette couche
measured = Pesée
mass = Masse par mètre, g/m
overall = Diamètre total, mm (si mesuré)
breaking = Charge de rupture, N (si connue)
windings-hint = Le filage compte pour de la masse, mais pas pour de la résistance ni de la raideur.
section = Coupe de la corde, à l’échelle : vue en bout, et coupée dans sa longueur
to-scale = À l’échelle : la barre fait { $bar } mm. À gauche, vue en bout ; à droite, coupe dans la longueur.

## La feuille pour les doigts, sous le tableau

sheet = Case
sheet-above = Corde au-dessus
sheet-below = Corde au-dessous
sheet-keep = Garder
sheet-leave = Laisser tel quel
