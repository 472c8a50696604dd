# What is typed: what it should be, and why it cannot be used.

## Any number

missing = the { $what } is missing (write it like { $example })
unreadable = the { $what } must be a number with a unit or none, got "{ $got }" (write it like { $example })
out-of-range = the { $what } must be from { $least } to { $most }, got "{ $got }"
out-of-range-meant = the { $what } must be from { $least } to { $most }, got "{ $got }" (did you mean { $meant }?)
either = { $first } or { $second }
note-number = a note begins with a letter from A to G, got "{ $got }" (for a pitch write { $got } Hz)

## What it is

vibrating-length = vibrating length
vibrating-length-like = 612, 61.2 cm or 24 1/8 in
bare-end = bare core at an end
bare-end-like = 12 or 1/2 in
gauge = gauge
gauge-like = 0.81, 32 thou or .032{ "\"" }
pitch = pitch
pitch-like = A4 or 443.2 Hz
mass-per-metre = mass per metre
mass-per-metre-like = 6.75 or 6.75 g/m
load = load
load-like = 480, 48 kgf or 108 lbf
packing = cover in per cent
density = density
modulus = modulus
strength = strength
length-of-pack = length of a pack

## Make-ups

make-up-long = a make-up must have at most { $most } letters (write material and gauge, like nylon 0.81)
make-up-brackets = square brackets must close, at most one round a material and one round a size, got "{ $got }"
make-up-core = a core must be round and has no cover, got "{ $got }" (put layers after a +)
make-up-no-layer = a layer must follow each + (write it like steel 0.45 + bronze 0.25)
make-up-layers = at most three layers can be wound on a core, got { $got } (leave out the others)
make-up-packing = the cover must be from 0 to 1000 per cent, got "{ $got }" (write it like silk 0.10 at 90 %)
make-up-bare = bare core must say at which end, got "{ $got }" (write it like bare 12 board 15 pin)
make-up-not-weighed = only a weighed string has "{ $got }" behind a comma (begin with weighed 6.75 g/m)
make-up-twice = "{ $got }" must stand only once
wound-without-parts = a wound string must have its core and its winding, got "{ $got }" (write it like steel 0.40 + bronze 0.25, or weigh it)
material-unknown = a material must be one that is known here, got "{ $got }" (write a known one, or add it under Materials)

## Settings of the harp

shares-crossed = the lowest load share must be below the highest, got { $low } % and { $high } % (change one of them)
stiffness-crossed = the lowest pluck stiffness must be below the highest, got { $low } and { $high } N/mm (taken the other way round)
layer-of-neck-thin = layer { $number } of the neck must have a thickness above 0 mm (the neck counts as one piece)
plywood-unusable = the plywood of { $part } cannot be used: { $why }
wood-unknown = the wood of { $part } must be one that is known here, got "{ $got }" (choose one that is listed)
the-neck = the neck
a-layer-of-neck = a layer of the neck
the-pillar = the pillar
the-board = the soundboard
the-rib = the string rib
the-sides = the sides
the-back = the back
the-bars = the bars
pins-too-far = the offset of the tuning pins must be at most the { $most } mm from bridge pin to tuning pin, got { $got } mm (taken as { $most } mm)
zones-twice = two zones of the string spacing must not have one number (the first counts)
no-zone = the string spacing must have at least one zone, got none (taken as { $usual } mm)
no-gap = the string spacing must have at least one gap, got none (taken as { $usual } mm)
curve-unusable = { $why }; until then the typed lengths hold

## Figures of materials

density-like = 1140 or 1.14 g/cm³
density-deviation = tolerance of the density
diameter-deviation = tolerance of the diameter
diameter-deviation-like = 0.01 mm or 2 %
strength-like = 310 or 45 ksi
expansion = expansion
loss-factor = loss factor
rise = rise with the stress
row-diameter = diameter of a row

## The words of a make-up’s line

word-weighed = weighed
word-core = core
word-gauge = gauge
word-breaks = breaks
word-bare = bare
word-board = board
word-pin = pin
word-at = at
