# What differs between two designs: the names of things compared, and their words.

## Columns and totals

note = note
make-up = make-up
length = length
gauge = gauge
tension = tension
stiffness = pluck stiffness
share = load share
strings = strings
total-tension = total tension
highest-share = highest load share
stiffness-range = pluck stiffness, lowest to highest
kinds-to-buy = different strings to buy
findings = findings
price = price of the strings
without = { $sum }, without { $count } strings
range = { $low } to { $high } { $unit }

## Settings

title = title
maker = maker
client = client
serial = serial number
date = date
open-tuning = open tuning
remarks = remarks
temperament = temperament
mechanism = levers or discs
own-mechanism = levers or discs of single strings
measured = how spacing is measured
spacing = string spacing, mm
drives = where the shape starts from
drives-lengths = lengths
drives-curve = harmonic curve
nodes = nodes of the harmonic curve
neck-wood = wood of the neck
sections = sections of the neck, %, mm
section = { $at }: { $thickness } by { $depth }
neck-layers = layers of the neck, mm, degrees
plates = metal beside the neck
one-side = one side
own-woods = own woods
softwood = softwood
hardwood = hardwood
by-class = by class
pillar-wood = wood of the pillar
board-wood = wood of the soundboard
rib-wood = wood of the string rib
joints = joints
soundbox = soundbox
open-back = open back
bars = bars of the soundboard
part-sizes = sizes for the saw
service = where the harp is kept
family = strings to choose from
wound-from = note from which strings are wound
wants = target for the strings
wanted-curve = target curve
zones = gauges by zone
kinds = kinds of string
spares = spares
materials = figures of materials
codes = order codes

## Words of settings

brass = brass
aluminium = aluminium
dowels = dowels
bolts = bolts
screws = screws
at-gap = { $width } at gap { $number }
at-note = { $value } at note { $key }
spares-none = none
spares-item = one of each stock item
spares-string = one for each string
percent = { $percent } %
spares-from = { $spares }, from string { $first }
spares-between = { $spares }, from string { $first } to { $last }
