# Exemples et harpes nouvelles, tonalités, et la courbe qui mène.

## Exemples

sample-floor = Harpe à leviers, 36 cordes
sample-floor-blurb = Nylon, boyau et dix cordes filées de do6 à do1, environ 4 kN en tout.
sample-wire = Harpe à cordes métalliques, 22 cordes
sample-wire-blurb = Laiton jaune et rouge de sol5 à sol2, accordée en sol majeur pythagoricien.
sample-travel = Harpe de voyage, 26 cordes
sample-travel-blurb = Nylon léger de sol5 à do2, les basses filées sur nylon.
sample-pedal = Harpe à pédales, 47 cordes
sample-pedal-blurb = Nylon, boyau et douze cordes filées de sol♭6 à do♭−1, plus de 10 kN en tout.

## Une étendue

compass-order = la corde la plus grave ne doit pas être au-dessus de la plus aiguë, reçu { $low } et { $high }
compass-long = une étendue doit avoir au plus { $most } cordes, il y en a { $got } (réduisez-la)
compass-sign = une corde à vide doit être à deux demi-tons au plus de sa lettre

## La courbe des sillets

curve-drives-same = La courbe harmonique, avec { $nodes } points, fixe maintenant les longueurs. Elles restent comme elles étaient.
curve-drives-changed = La courbe harmonique, avec { $nodes } points, fixe maintenant les longueurs. Le plus grand changement de longueur est de { $change } mm : { $string }.
curve-new = { $told } Cordes sans longueur qui en ont maintenant une : { $count }.
lengths-drive-typed = Vous fixez de nouveau les longueurs, comme elles avaient été saisies.
lengths-drive = Vous fixez de nouveau les longueurs. Celles de la courbe harmonique sont dans le tableau, à 0,1 mm près.
lengths-drive-but = Vous fixez de nouveau les longueurs. Celles de la courbe harmonique sont dans le tableau, à 0,1 mm près ; { $count } qu’elle n’atteint pas restent comme saisies.
string-in-sentence = corde { $number }
string-with-note-in-sentence = corde { $number }, { $note }

## Tonalités

key = { $major } majeur, { $minor } mineur
flat = { $letter } bémol
sharp = { $letter } dièse
no-string-for = pas de corde pour { $letters }
up-one = haussées d’un demi-ton : { $letters }
up-two = haussées de deux demi-tons : { $letters }
some = certaines { $letter }
as-tuned = comme accordée
and = { $first } et { $last }
more = { $count } autres
every = chaque corde de { $letters }
strings = { $count ->
    [one] corde
   *[other] cordes
} { $names }
why-no-note = { $who } { $count ->
    [one] n’a pas de note
   *[other] n’ont pas de note
}
why-too-high = { $who } { $count ->
    [one] est accordée trop haut
   *[other] sont accordées trop haut
} { $by ->
    [1] d’un demi-ton
   *[other] de { $by } demi-tons
}
why-no-mechanism = { $who } { $count ->
    [one] n’a ni levier ni fourchette
   *[other] n’ont ni levier ni fourchette
}
why-out-of-reach = { $who } : il faudrait monter de { $by } demi-tons
why-not-alike = { $who } { $count ->
    [one] n’est pas accordée
   *[other] ne sont pas accordées
} comme les autres de la même lettre

## Sortes de harpes, et de quoi sont la plupart des cordes

lever-harp = Harpe à leviers
wire-strung-harp = Harpe à cordes métalliques
pedal-harp = Harpe à pédales
nylon = Nylon
gut = Boyau
fluorocarbon = Fluorocarbone
yellow-brass = Laiton jaune
phosphor-bronze = Bronze phosphoreux
harp-of = { $instrument }, { $count } cordes

## Accords à vide

tuning-c = do majeur
tuning-g = sol majeur
tuning-d = ré majeur
tuning-f = fa majeur
tuning-b-flat = si bémol majeur
tuning-e-flat = mi bémol majeur
tuning-a-flat = la bémol majeur
tuning-c-flat = do bémol majeur
