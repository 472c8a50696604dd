# What papers share, the order list on paper, and the bar above a paper on the page.

## Kinds of papers

card = Stringing card
order-list = Order list
report = Design report
chart = String chart
drawing = Drawing
comparison = Versions compared
report-within = design report
chart-within = string chart
drawing-within = drawing
comparison-within = versions compared
titled = { $kind }: { $title }

## Every page

page = page { $page } of { $pages }
continued = { $title }, continued
running-card = { $name } — design mark { $mark }
running-order = { $title } — order list
running-report = { $name } — { $kind }, design mark { $mark }

## The heading

untitled = Untitled harp
maker = maker
serial = serial number
client = made for
date = date
open-tuning = open tuning
strings = strings
pitch = pitch
mark = design mark
strings-and-spares = strings and spares
compass = { $count }, { $lowest } to { $highest }
pitch-is = A4 = { $hz } Hz, { $temperament }
equal = equal temperament
pythagorean = pure fifths (Pythagorean)
meantone = quarter-comma meantone
werckmeister = Werckmeister III
vallotti = Vallotti
young = Young II
just = just intonation on C

## Heads of columns

head-number = no.
head-string = string
head-octave = octave
head-note = note
head-make-up = make-up
head-core-first = core first, mm
head-gauge = gauge
head-vibrating = vibrating
head-cut-to = cut to
head-order = order
head-code = code

## Below a table

remarks = Remarks: { $remarks }
named = { $key }: { $name }
covered = At … %: cover.
bare = Bare: core left bare at the soundboard (board) and at the bridge pin (pin).
dash-means = A dash means: not known.

## The make-up of a string

bare-both = { $words }, bare { $board } board { $pin } pin
bare-board = { $words }, bare { $board } board
bare-pin = { $words }, bare { $pin } pin
weighed = weighed
weighed-mass = weighed, { $mass }
weighed-core = weighed, core { $core }
weighed-mass-core = weighed, { $mass }, core { $core }
packed = { $words } at { $percent } %

## The order list

no-supplier = No supplier named
outside = Also needed, not in the stock list
all-outside = Needed
sum = Sum: { $sum }.
nothing-to-order = There is nothing to order.
head-strings = strings
head-cut-lengths = no.: cut to, mm
head-sold = sold as
head-pieces = pieces
head-metres = total
head-packs = packs
head-price = price

## The bar above a paper

paper = Paper
language = Language
language-missing = The words of this language could not be fetched. Try again when there is a connection.
print-full-size = Print at 100 %, with no margins added.
code-local = The code leads to this computer alone: before you print cards for others, open Stringloft at its address on the web.
not-printed = This browser did not open its print dialog. Print from the browser's own menu instead.
as-it-is-now = the design as it is now
bar = Paper, language, printing
