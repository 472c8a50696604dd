# Les jours où une harpe neuve se stabilise : fiche d’accord, plan, relevés, cordes pesées à l’oreille.

title = Mise en accord
hint = Monter la harpe par tours d’accord, et voir quand elle tiendra.
sheet = Fiche d’accord

## La fiche d’accord

running = { $name } — fiche d’accord
head-pitch = hauteur
head-cents = cents
head-raised = haussée à
head-stretch = allong.
head-pin = tours de
head-turns = cheville
head-round = tour
keys = Tonalités, avec ce que règlent leviers ou pédales
keys-some = Un astérisque : certaines cordes n’atteignent pas leur note.
sheet-cents = Cents : écart de la corde au tempérament égal pour le même la3, tel qu’un accordeur simple le montre.
sheet-raised = Accordez leviers ouverts, pédales en haut et fourchettes ouvertes. Haussée à : ce qu’un levier ou une fourchette fait alors de la corde ; avec deux fourchettes, un et deux demi-tons.
sheet-turns = Allongement et tours de cheville vont de la corde lâche à sa hauteur. Ce que la corde et son nœud fluent s’y ajoute.
sheet-rounds = Montez par tours d’accord : le premier jusqu’à une quarte sous la hauteur, le deuxième jusqu’à un demi-ton dessous, les autres à la hauteur. Notez l’écart de chaque corde quand vous y revenez.

## Le plan

plan = Monter la harpe à sa hauteur
order = Ordre
begin = Premiers tours
begin-two = Quarte, puis demi-ton dessous
begin-one = Demi-ton dessous
begin-none = Aucun, tout de suite à la hauteur
round = Tour
round-below = Tour { $number }, à { $semitones } { $semitones ->
    [1] demi-ton
   *[other] demi-tons
} au-dessous
round-at-pitch = Tour { $number }, à la hauteur
string = Corde
tune-to = Accorder à
sharp = Plus haut, cents
pin = Tourner la cheville
left = Écart après le tour, cents
stretch = Allongement
cut-to = Couper à
mind = Attention
pin-turns = { $turns } tours
pin-degrees = { $degrees }°
range = { $least } à { $most }
table = Les cordes du tour, dans l’ordre
rounds-needed = { $count } tours amènent chaque corde à { $cents } cents près, avant que les cordes elles-mêmes ne fluent.
rounds-not-enough = Après { $count } tours, certaines cordes ont encore plus de { $cents } cents d’écart : le cadre cède trop pour en calculer plus.
rounds-without = Sans accorder aucune corde plus haut, il faudrait { $count } tours.
not-foretold = De combien les cordes baissent pendant que les autres montent n’est pas calculé : il faut un cadre avec toutes ses mesures et une table dont la rigidité est connue. Refaites des tours jusqu’à ce que les cordes tiennent.
left-out = Laissées de côté, car quelque chose y est inconnu : { $strings }.
load-no-more = Dans cet ordre, le cadre ne porte jamais plus qu’avec toutes les cordes à leur hauteur : { $whole } % de sa charge admissible.
load-more = Avec une partie des cordes à leur hauteur, cet ordre charge le cadre jusqu’à { $highest } % de sa charge admissible, contre { $whole } % avec toutes. Les premiers tours sous la hauteur gardent cette charge plus basse.
easier = Cet ordre ménage mieux le cadre : { $order }.
reach-limited = À sa limite : elle reste en dessous, le tour suivant y remédie.
reach-no-room = À son taux de charge le plus haut : ne jamais l’accorder plus haut.
reach-no-strength = Charge de rupture inconnue : ne jamais l’accorder plus haut.
many-turns = La tirer d’abord à la main.
how = « Plus haut » dit de combien une corde est accordée au-dessus de la fin du tour, pour qu’elle y redescende pendant que les autres suivent. Aucune corde n’est accordée au-delà de la moitié de ce qui reste jusqu’à la rupture, au-delà de son taux de charge le plus haut, ni plus de 50 cents au-dessus de sa hauteur.
how-far = L’écart après le tour est estimé, du plus rigide au plus souple que le cadre et les cordes puissent être. Avec des cordes de boyau ou de plastique, attendez un jour après chacun des premiers tours à la hauteur. Usage courant, sans source.

## Les relevés

log = Relevés
log-hint = Notez l’écart de chaque corde, encore et encore. Les relevés restent dans ce navigateur avec le projet, et dans sa sauvegarde.
kind = Ce qui a été fait
heard = Entendue
tuned = Accordée, laissée à
cents = Écart, cents
celsius = Température, °C
note = Noter
take-back = Retirer la dernière ligne
log-empty = Rien n’est encore noté.
bad-cents = Écrivez les cents comme un nombre de −2400 à 2400.
bad-celsius = Écrivez la température comme un nombre de −40 à 60, ou laissez vide.
noted = Noté : { $string }, { $cents } cents.
taken-back = La dernière ligne est retirée.
nothing-taken = Il n’y a pas de ligne à retirer.
log-full = Le carnet est plein.
not-kept = Ce navigateur ne garde pas les relevés : { $why }.
log-table = Ce que les relevés disent de chaque corde
readings = Lignes
last = Dernier, cents
rate = Cents par jour à présent
holds = Tient à 5 cents pendant une semaine
holds-already = maintenant
holds-from = dès le { $day }
holds-surely = dès le { $day }, au plus tard le { $latest }
holds-open = dès le { $day } ; au plus tard : imprévisible
holds-not = encore imprévisible
no-tuning = notez d’abord un accord
no-reading = notez un relevé après l’accord
off-by = { $value } ± { $error }
slipped = { $string } a baissé de { $cents } cents d’un coup avant { $when } : voyez si son nœud ou sa cheville glisse.
falls-faster = { $string } baisse de { $cents } cents quand le temps décuple, ses voisines de { $beside } : son nœud ou sa cheville glisse peut-être peu à peu.
rises = { $string } monte de { $cents } cents quand le temps décuple : vérifiez les relevés, l’humidité, et si la cheville a été heurtée.
scatters = Les relevés de { $string } se dispersent de { $cents } cents, ceux de ses voisines de { $beside } : la corde est peut-être fausse.
law = La loi : les cordes fluent avec le logarithme du temps depuis l’accord, compté à partir d’une minute ; chaque reprise d’accord recommence avec ce qu’elle a ajouté. De mémoire, sans source. Le ± vaut 95 fois sur 100. Rien n’est prévu au-delà de dix fois le temps relevé, et une corde n’est comparée qu’à trois voisines au moins de son matériau.

## À l’oreille

ear = Peser une corde à l’oreille
ear-hint = Suspendez un poids à une corde de longueur connue et notez ce qu’elle sonne. Une charge donne sa masse par mètre ; une seconde, bien différente, écarte la raideur et donne peut-être le module d’une corde nue.
ear-length = Longueur vibrante
ear-load = Charge suspendue
ear-pitch = Sonne, Hz
ear-second-load = Seconde charge
ear-second-pitch = Sonne alors, Hz
ear-diameter = Diamètre d’une corde nue
of-pitch = hauteur en hertz
ear-nothing = Ces relevés ne donnent pas de corde : charges et hauteurs doivent différer, et la plus grande charge doit sonner plus haut.
weighs = { $value } ± { $error } g/m.
modulus-is = Module { $value } ± { $error } GPa.
modulus-not = Sa raideur est moindre que le doute des relevés : pas de module.
ear-errors = Suppose des erreurs de 0,5 mm sur la longueur, 0,5 % sur la charge, 0,5 cent sur la hauteur et 0,01 mm sur le diamètre. Un poids qui tombe ou une corde qui casse blesse : portez des lunettes de protection, suspendez bas au-dessus d’une surface molle, éloignez pieds et visage.
partials = Partiels à partir du premier, Hz
partials-of = Comparer avec la corde
partials-say = Inharmonicité { $b } ± { $error } millionièmes, premier partiel { $first } Hz.
chart-says = Le tableau donne { $b } ± { $error } millionièmes, selon toutes les tolérances sauf celle du module.
chart-agrees = Cela concorde.
chart-softer = La corde est plus raide que dans le tableau : son module ou son diamètre est peut-être autre.
chart-stiffer = La corde est moins raide que dans le tableau : son module ou son diamètre est peut-être autre.
few-partials = Écrivez au moins { $count } partiels, avec un tiret pour un partiel qui n’a pas été entendu.
