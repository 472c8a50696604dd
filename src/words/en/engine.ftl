# Why a figure is missing, and why what was given cannot be reckoned with.

## A string without a figure

no-pitch = no pitch: the note is missing or cannot be read
no-length = no vibrating length: it is missing or cannot be read
off-curve = the harmonic curve leaves this string no length (move its nodes)
no-make-up = no make-up: the material or the gauge is missing or cannot be used
bare-ends-too-long = the bare core ends are longer than the string (shorten them)
too-stiff = this string is so stiff for its length that it would sound too high with no tension at all
no-strength = no breaking load is known for this material at this diameter
no-modulus = no modulus of elasticity is known for this string
no-intermediate-modulus = no modulus over minutes (for levers and tuning) is known for this material
no-slow-modulus = no modulus over weeks (for the stretch) is known for this material
no-loss-factor = no loss factor is known for this material
wound-damping = no figure for wound strings: they lose most by friction in the winding, and no published numbers were found
no-expansion = no coefficient of expansion is known for this material
polymer-drift = no figure for polymers: they soften as they warm, which offsets or reverses the drift, and no published numbers were found
natural-drift = no figure for gut and silk: humidity moves them more than temperature, and no published numbers were found
no-lever = no lever is fitted to this string
no-disc = no such disc is fitted to this string
too-much-push = pushing this string aside so far raises it more than asked, wherever it is touched (set a smaller push)
no-core = the core diameter of this weighed string was not given
no-gauge = the overall diameter of this weighed string was not given
out-of-reach = a value behind this figure is too large or too small to compute with (check it)

## A string that cannot be made

diameter = the { $part } must be from { $least } to { $most } mm thick, got { $got } mm
part-string = string
part-core = core
part-wire = wire of a layer
part-ribbon = width of a ribbon
packing = the turns of a layer must cover from { $least } to { $most } % of the string, got { $got } %
no-layer = a wound string needs at least one layer (choose a plain string instead)
bare-end = the bare core at an end must be 0 mm or more, got { $got } mm
mass = the mass per metre must be from { $least } to { $most } g/m, got { $got } g/m
core-too-thick = the core ({ $core } mm) must be thinner than the whole string ({ $gauge } mm)
breaking-load = the breaking load must be above 0 N, got { $got } N

## Cutting

allowance = the { $part } must be from 0 to { $most } mm, got { $got } mm
part-after = length from bridge pin to tuning pin
part-pin = diameter of the tuning pin
part-knot = allowance for soundboard and knot
part-tail = tail
allowance-turns = the turns round the tuning pin must be from 0 to { $most }, got { $got }

## Curve, neck and pitch

curve-count = a harmonic curve must have from 2 to { $most } nodes, got { $got } (add or remove some)
curve-number = node { $number } of the harmonic curve must be a number (correct it)
curve-order = node { $number } must lie at least { $least } mm further towards the treble than the one before, got { $got } mm (move it)
no-neck = a neck needs three strings or more of known length (give the strings their lengths)
reference = the pitch of A4 must be from { $least } to { $most } Hz, got { $got } Hz
note-empty = a note is missing (write a letter and an octave, such as A4 or Eb3)
note-letter = a note begins with a letter from A to G, got "{ $got }" (write A4 or Eb3)
note-octave = "{ $got }" lacks the octave number (middle C is C4)
note-range = the octave must be from { $least } to { $most }, got { $got }
note-accidental = "{ $got }" has accidentals that cannot be read (use #, b, x or bb)

## Levers and discs

lever-push = a lever or disc must raise the string by { $asked } cents, got more than that at every place with a push of { $push } mm (set a smaller push)
lever-natural = the natural disc must leave something for the sharp disc to raise, got { $got } cents of { $asked } from both together at its own place (set it nearer to the bridge pin)
lever-semitones = a lever or disc must raise the string by 1 to { $most } semitones, got { $got }
lever-fixings = the string between its fixings must be at least as long as its vibrating length ({ $length } mm), got { $between } mm (add what lies beyond the bridge pin and inside the soundbox)
lever-above = the { $figure } must be a number above 0, got { $got }
lever-from = the { $figure } must be a number from 0, got { $got }
lever-within = the { $figure } must be a number above 0 and below the vibrating length, got { $got }
figure-natural = distance of the natural disc in millimetres
figure-length = vibrating length in millimetres
figure-tension = tension in newtons
figure-rigidity = stretch rigidity in newtons
figure-push = sideways push in millimetres
figure-bending = bending stiffness in N m²
