# Commencer une harpe : neuve, d’après des mesures, d’après un exemple.

own = Une harpe neuve
measured = D’après des mesures, pour recorder une harpe
title = Nouvelle harpe
how = Comment commencer
empty = Commencer par un tableau vide
stays = Ce qui est ouvert reste sous Projets, si vous l’avez modifié.
sample = D’après un exemple

## Une harpe neuve

lowest = Corde la plus grave
highest = Corde la plus aiguë
winding = Le filage commence à
wrong-end = { $field } : { $why }.
wrong-count = Nombre de cordes : indiquez de { $fewest } à { $most } ({ $kind }), ou donnez les deux bouts.
no-findings = Aucun constat sur les cordes.
findings = { $count ->
    [one] { $count } constat.
   *[other] { $count } constats.
} { $first }
compass = Étendue
compass-is = { $low } à { $high }, { $count ->
    [one] { $count } corde
   *[other] { $count } cordes
}
lengths = Longueurs vibrantes
range = de { $from } à { $to } { $unit }
total = Tension totale
wound = Cordes filées
feel = Raideur au pincement (toucher)
frame = Cadre
none-wound = aucune
wound-from = { $count }, à partir de { $note } vers le grave
frame-is = console épaisse de { $neck } { $unit }, colonne { $wide } × { $deep } { $unit }, table épaisse de { $bass } à { $treble } { $unit }
numbered = { $title }, n° { $number }
wanted = La harpe
kind = Type de harpe
material = Matériau principal
count = Nombre de cordes
ends-follow = Les bouts suivent le nombre, et le nombre suit les bouts.
winding-usual = où cela convient
winding-hint = La plus aiguë des cordes filées, par exemple sol2. Laissée vide, elle est proposée.
each-has = Chaque corde a
open-to = Cordes à vide accordées en
start = Commencer
start-notes = Commencer avec les notes seules
start-notes-hint = Les notes seules ; longueurs et cordes restent vides
clear = Vider les champs
will-be = Ce qui sera fait
preview-label = Tension et toucher sur l’étendue, le grave à gauche. Les lignes au-dessus donnent leur plage.
preview-sources = Étendue, longueurs et diamètres de départ sont d’usage courant, sans source. Les mesures du cadre découlent d’une estimation qui compte le filet de table mais pas les barres ; elle ne prouve pas qu’un cadre soit sûr.

## D’après des mesures

not-started-asked = Pas commencé : répondez d’abord à la question à côté de la liste.
not-started = Pas commencé : { $why }
not-known = non connu
table-of-strings = Un tableau de n’importe où, ou une ligne par corde : note, longueur et, si elle est connue, l’ancienne corde. Les colonnes peuvent être dans n’importe quel ordre. Un point d’interrogation est une longueur qui n’a pas été mesurée.
else-material = Matériau des cordes pour lesquelles la liste n’en indique pas
without-notes = Pour une liste sans notes :
list-highest = Corde la plus aiguë de la liste
list-lowest = Corde la plus grave de la liste
list-open = Cordes à vide de la liste
throw-away = Jeter le texte
strings = { $count ->
    [one] { $count } corde.
   *[other] { $count } cordes.
}
questions = Questions
which-column = Quelle colonne est quoi
each-row = Ce que devient chaque ligne
granted = Hypothèses
head-heading = En-tête
head-first = Première cellule
head-is = Est
head-bare = Les nombres seuls sont en
head-number = N°
head-note = Note
head-length = Longueur
head-gauge = Diamètre
head-material = Matériau
head-remark = Remarque
b-flat = Si bémol
b-natural = Si naturel
column = Colonne { $number }
column-is = { $column } est
column-unit = Unité de { $column }
left-out = laissée de côté
go-there = Y aller
go-there-to = Y aller : { $gap }
missing-title = Première étape : ce qui manque à cette harpe
missing-none = Rien ne manque : chaque corde a sa note, sa longueur et sa composition.
missing-some = Rien n’a été deviné. Ce qui n’a pas été mesuré, ou ne peut être lu, est listé ici ; ce qui se calcule sans cela est déjà dans le tableau. Vous retrouvez cette liste sous Ce qui manque, à côté des constats.
choose-instead = Si la harpe reçoit de toute façon des cordes neuves, inutile de mesurer matériau et diamètre : « Choisir les cordes » les trouve d’après les notes et les longueurs seules.
and-more = Et { $more } de plus.
asks-unit = Les nombres n’ont pas d’unité. Probablement : { $looks }, et non { $said }. Lesquels ?
asks-unit-under = Les nombres sous « { $heading } » n’ont pas d’unité. Probablement : { $looks }, et non { $said }. Lesquels ?
asks-b = Les notes ont B et pas de H. Dans les listes allemandes, B est si bémol, dans les anglaises si naturel. Lequel est-ce ?
gap = Corde { $number } : { $gap }.
gap-noted = Corde { $number }, { $note } : { $gap }.
gaps = Cordes { $strings } : { $gap }.
