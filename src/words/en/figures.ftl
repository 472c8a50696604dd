# What is shown and said of every figure.

## The figures: the head of the column, what it means, its name in full

frequency-word = Pitch
frequency-meaning = The frequency that the note has in this tuning.
frequency = Pitch in hertz
length-word = Length
length-meaning = Vibrating length, from the soundboard (or string rib) to the bridge pin.
length = Vibrating length
gauge-word = Gauge
gauge-meaning = Diameter of a plain string, overall diameter of a wound one.
gauge = Gauge
core-word = Core
core-meaning = Diameter of what carries the tension: the core of a wound string.
core = Core
linear-density-word = Mass
linear-density-meaning = Mass per metre.
linear-density = Mass per metre
tension-word = Tension
tension-meaning = The tension that brings the first partial of the stiff string to pitch.
tension = Tension
stress-word = Stress
stress-meaning = Tension over the section of the core.
stress = Stress
breaking-load-word = Breaking load
breaking-load-meaning = The lowest load that breaks the core. An estimate from the strength of its material.
breaking-load = Breaking load
load-share-word = Load share
load-share-meaning = Tension over breaking load.
load-share = Load share
semitones-to-break-word = Margin
semitones-to-break-meaning = How far the pitch could rise before the string breaks.
semitones-to-break = Margin to breaking
pluck-stiffness-word = Feel
pluck-stiffness-meaning = Feel, or pluck stiffness: the force that the finger meets for each millimetre or inch.
pluck-stiffness = Pluck stiffness
inharmonicity-word = Inharm. B
inharmonicity-meaning = Inharmonicity coefficient, bare core ends included.
inharmonicity = Inharmonicity
partial-8-word = Partial 8
partial-8-meaning = How sharp the eighth partial is against eight times the first.
partial-8 = Partial 8
impedance-word = Impedance
impedance-meaning = Characteristic impedance, the root of tension times mass per metre.
impedance = Impedance
damping-word = Damping
damping-meaning = Loss factor in bending at the partial set under Instrument: the lower, the longer it rings. Air and soundboard take their share too.
damping = Damping
stretch-word = Stretch
stretch-meaning = How much the string lengthens from slack to pitch, once it has settled.
stretch = Stretch
pin-turns-word = Pin turns
pin-turns-meaning = Turns of the tuning pin that take the stretch up.
pin-turns = Turns of the pin
cents-per-pin-degree-word = Cents per degree
cents-per-pin-degree-meaning = How far one degree of the tuning pin moves the pitch.
cents-per-pin-degree = Cents per degree of the pin
cents-per-kelvin-word = Temperature
cents-per-kelvin-meaning = How far the pitch moves when the air is one degree Celsius warmer. Below zero, it falls.
cents-per-kelvin = Cents per kelvin
lever-word = Lever
lever-meaning = From the bridge pin to where the lever touches, for one semitone.
lever = Lever
disc-natural-word = Natural disc
disc-natural-meaning = From the bridge pin to the natural disc, for the first semitone: flat to natural.
disc-natural = Natural disc
disc-sharp-word = Sharp disc
disc-sharp-meaning = From the bridge pin to the sharp disc, for the second semitone: natural to sharp, with the natural disc pressing too.
disc-sharp = Sharp disc
lift-word = Lift
lift-meaning = The part of the tension that lifts the soundboard, square to it.
lift = Lift on the soundboard
along-board-word = Along
along-board-meaning = The part of the tension along the soundboard, towards its treble end.
along-board = Force along the soundboard
cut-length-word = Cut
cut-length-meaning = The length to cut: vibrating length, knot, turns on the pin, and a tail to pull on.
cut-length = Cut length
pluck-force-word = Pluck force
pluck-force-meaning = The force of a finger that pulls the string as far aside as the design says.
pluck-force = Pluck force
glide-word = Glide
glide-meaning = How sharp such a pluck begins, before the string settles to its pitch.
glide = Glide
nominal-error-word = Nominal error
nominal-error-meaning = How sharp the first semitone is with its lever or disc where a string that is only shortened would have it.
nominal-error = Error at the nominal place

## Groups

group-pull = Tension and feel
group-tone = Tone
group-tuning = Tuning and levers
group-ordering = Dimensions and ordering
group-more = More

## The words beside a band

least-tension = lowest { $low }
working-share = slack under { $low }, working to { $high }
working-semitones = working from { $low } up
feel = target { $low } to { $high }
sharpest-partial = limit { $high } where it is heard

## Units beside a figure

unit-cents = cents
unit-cents-degree = cents/°
unit-cents-celsius = cents/°C
unit-semitones = semit.
unit-turns = turns
