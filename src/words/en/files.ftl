# Files, links and backups: why they cannot be read.

## A design

too-large = a design file must be at most { $most } MB, got { $got } MB (choose another file)
empty = the file is empty (choose a file that Stringloft saved)
cut-off = the design is cut off: its text ends in the middle, at line { $line } (get the whole file again)
unreadable = this design cannot be read: { $what } (mend the file or choose another)
other-kind = this JSON is not a Stringloft design (it lacks "stringloft" with the version of the design)
too-new = this design is of version { $found }, and versions 1 to { $version } can be read here (reload the page to get the newest Stringloft)
misplaced = something is missing, repeated or out of place, at line { $line }, place { $place }

## In short, as the end of a sentence

short-too-large = it is larger than a design can be
short-empty = nothing is left of it
short-cut-off = its text ends in the middle
short-unreadable = part of its text is damaged
short-other-kind = it is not a Stringloft design
short-too-new = a newer Stringloft wrote it (reload the page to get the newest)

## What a field holds

must-be = must be { $must }, got { $got }
is-missing = is missing
there-twice = a field appears twice
kind-nothing = nothing
kind-truth = true or false
kind-number = a number
kind-text = text
kind-list = a list
kind-fields = a set of fields
kind-whole = a whole number from 0 to { $most }
kind-two = a list of two
kind-list-of = a list of { $count }

## Limits

number = { $what } must be from { $least } to { $most }, got { $got }
long = { $what } must be at most { $most } characters long, got { $got } (shorten it)
many = a design must have at most { $most } { $what }, got { $got }
layers = string { $number } must have at most { $most } layers, got { $got }
same-key = two materials have the short name "{ $key }" (rename one)
nested = a version must hold no versions itself, but version { $number } does (take them out)
version-unkept = version { $number } cannot be kept: { $why }
versions-large = the versions of a design must take at most { $most } KB together, got { $got } KB (remove one)

## Fields: where

of-string = the { $field } of string { $number }
of-material = the { $field } of material { $number }
of-item = the { $field } of stock item { $number }
of-one-item = the { $field }
of-design = the { $field }
of-design-at = the { $field } (number { $number })
version-name = the name of version { $number }
version-date = the date of version { $number }

## Fields: which

title = title
maker = maker's name
client = client's name
serial = serial number
date = date
open-tuning = open tuning
remarks = remarks
order-remarks = remarks of the order
note = note
length = length
order-code = order code
material = material
diameter = diameter
bare-board = bare core at the soundboard
bare-pin = bare core at the pin
layer-material = layer's material
layer-size = layer's size
layer-width = layer's width
layer-packing = layer's cover in per cent
mass-per-metre = mass per metre
weighed-gauge = weighed gauge
breaking-load = breaking load
name = name
source = source
make-up = make-up
supplier = supplier
currency = currency
lowest-note = lowest note
highest-note = highest note
remark = remark
pack-length = pack length in mm
bundle = number of strings in a bundle
price = price
joint-size = a size of a joint
soundbox-size = a size of the soundbox
neck-layer = a layer of the neck
layer-angle = the angle of a layer
layer-wood = the wood of a layer
metal-size = a size of the metal beside the neck
bar-of-wood-size = a size of a bar of wood
wood-key = the short name of a wood
wood-name = the name of a wood
bars-size = a size of the bars
part-sizes = the sizes of the parts
wood-of-neck = the wood of the neck
wood-of-pillar = the wood of the pillar
wood-of-board = the wood of the soundboard
wood-of-rib = the wood of the string rib
wood-of-sides = the wood of the sides
wood-of-back = the wood of the back
wood-of-bars = the wood of the bars
point-place = the place of a point of a target curve
point = a point of a target curve
zone-text = a text of a zone of gauges
wound-from = the note from which strings are wound
kind-of-string-text = a text of a kind of string

## Too many of them

strings = strings
materials = materials
stock-items = stock items
versions = versions
nodes = nodes on the harmonic curve
sections = sections of the neck
neck-layers = layers of the neck
woods = own woods
zones = zones of the string spacing
gaps = gaps between strings
points = points of a target curve
gauge-zones = zones of gauges
kinds-of-string = kinds of string

## Links

no-link = this is no link to a design (what follows the # must begin with "{ $form }.")
link-too-new = this link was made by a newer Stringloft (reload the page to get the newest, or ask for the design file)
link-altered = this link was cut off or altered on its way (ask for the whole link again)
link-too-large = this design is too large for a link of { $most } characters (send the design file instead)
link-two-too-large = this design and its version together are too large for a link of { $most } characters (send a link without the version, or the design file)
link-unusable = the link does not hold a design that can be used: { $why }

## Backups, as the end of a sentence

backup-too-large = it is larger than a backup can be
backup-none = it is no backup, or only part of one
backup-too-new = a newer Stringloft wrote it (reload the page to get the newest)
backup-other-kind = it is no backup of Stringloft (a single design is opened with Open a file)
backup-damaged = part of it is damaged
