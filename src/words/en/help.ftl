# The help: first steps, measuring, what figures mean, care, and the words of the trade.

## The window

title = Help
find = Find in the help
nothing-found = Nothing here about that. Try another word, or look under The numbers, explained.
found = { $count ->
    [one] { $count } passage
   *[other] { $count } passages
} found

## A first harp

first = Your first harp in five steps
first-1 = Open Designs, New. Say what kind of harp it is, how many strings it has and how it is tuned. It comes strung as is usual for its kind, on a frame that carries it.
first-2 = Type your own lengths and strings into the chart. The curves follow at once: look for a line without jumps, inside its target band.
first-3 = Read the findings, the most serious first; the ? beside one says what it means. Where there is a cure, a button beside it makes the change, and Undo takes it back.
first-4 = Put what you can buy into Stock, then let Choose strings find the best set from it.
first-5 = See what the frame carries in Drawing. When all is as you want it, print the templates and the stringing card, and save the design as a file.

## Restringing

restring = Restring a harp in five steps
restring-1 = Measure every string as the drawing below shows, with the levers open, and write down its note, length, material and gauge.
restring-2 = Open Designs, Restring a harp, and type or paste the table. The columns may come in any order.
restring-3 = Read the findings about notes and lengths first: a slip of the tape shows there.
restring-4 = Keep what was on the harp, or choose a set from your stock. Do not go above the old total tension unless you know that the frame carries it.
restring-5 = Print the order and, for the owner, the stringing card. With other strings, check the regulation of levers or discs.

## Measuring

measure = How to measure a harp
measure-drawing = A harp from the side: 1 is the vibrating length of a string, from the soundboard to the bridge pin; 2 is its gauge; 3 is the length from the bridge pin to the tuning pin; 4 is the angle between strings and soundboard.
measure-1 = Vibrating length: from where the string leaves the soundboard to the bridge pin, to half a millimetre, with a tape held straight beside the string.
measure-2 = Gauge: with a micrometer, at three places, turning it a little each time; write down the middle one. An old string is thinner where it was plucked.
measure-3 = From the bridge pin to the tuning pin, for the length to cut.
measure-4 = The angle between strings and soundboard, at one string in the middle. It decides how hard the strings lift the soundboard.
measure-5 = A wound string: its overall diameter, and that of the core where it is bare. A string of unknown make-up can be weighed: Materials says how.

## What the figures mean

meaning = What the figures mean at the bench
meaning-feel = Feel, or pluck stiffness, is the force that the finger meets for each millimetre it pulls a string aside. A harp feels even where it changes little from string to string; you feel a jump as a hard or a soft string.
meaning-share = Load share is tension as a part of the load at which the string breaks. Above what you allow, it breaks early; far below, it sounds dull and drifts. A thinner gauge hardly changes it: at a given note it follows from length and material.
meaning-margin = Margin is how many semitones a string could be tuned up before it breaks.
meaning-frame = The frame's verdict is the share of its allowance that the worst part takes, from the kindest to the harshest assumptions. A part without sizes is not judged, and is said not to be.

## Materials

materials = Materials compared
materials-nylon = Nylon: cheap, forgiving, stretches for weeks. The usual choice in treble and middle of lever harps.
materials-gut = Gut: fuller and firmer under the finger at the same length, dislikes damp air, wears where it is plucked.
materials-fluorocarbon = Fluorocarbon: denser than nylon, so thinner and brighter at the same tension; damp air moves it least.
materials-wire = Steel, brass and bronze: thin, long-ringing, little stretch, so a small turn of the pin is many cents. Steel also makes the cores of bass strings.
materials-wound = Wound strings: weight without stiffness for the bass. On a nylon core they feel soft, on steel firm.
materials-standing = Common practice, no source. The figures of each material, with their sources, are under Materials.

## Care

care = Take care
care-1 = Wear eye protection when you string, tune up or take strings off. Keep your face out of the plane of the strings.
care-2 = Let tension down slowly, a few turns on each string in turn; never cut a string under tension.
care-3 = Bring a new frame up over days. Stop if a joint opens, a glue line creaks or the soundboard rises more than foreseen.
care-4 = All load figures are estimates, not approval of a structure. Local rules and qualified practice come first.

## Where it is kept

kept = Where your designs are
kept-1 = In this browser, on this machine. Nothing is sent anywhere; after the first visit it works without a network.
kept-2 = A link holds the whole design in its address: whoever has it can open the harp, and no server sees it.
kept-3 = Clearing the browser's data clears the designs. Save what matters as a file, or back up everything under Designs.

## The glossary

words = Words
words-standing = Trade words: common practice, from memory.
word-back = back
word-back-is = the wall of the soundbox opposite the soundboard
word-bar = bar
word-bar-is = a strip of wood glued to the inside of the soundboard
word-bare-end = bare end
word-bare-end-is = the piece at the end of a wound string without winding
word-belly = belly
word-belly-is = how far the soundboard has risen under the strings
word-brace = brace
word-brace-is = a strut across the inside of the soundbox
word-breaking-load = breaking load
word-breaking-load-is = the load at which a string breaks
word-bridge-pin = bridge pin
word-bridge-pin-is = the pin on the neck at which the vibrating length ends
word-cent = cent
word-cent-is = a hundredth of a semitone
word-compass = compass
word-compass-is = from the lowest to the highest string
word-core = core
word-core-is = the wire or thread on which a string is wound
word-cover = cover
word-cover-is = how closely the turns of a winding lie: at 100 % they touch
word-creep = creep
word-creep-is = slow yielding under a lasting load
word-cut-length = cut length
word-cut-length-is = how long a string is cut: knot, pin turns and tail included
word-damping = damping
word-damping-is = how fast a tone dies away
word-disc = disc
word-disc-is = the turning disc of a pedal harp that raises a string
word-drift = drift
word-drift-is = how far the pitch moves with temperature
word-feel = feel
word-feel-is = how hard a string is to the finger: its pluck stiffness
word-finding = finding
word-finding-is = something in a design that needs attention
word-frame = frame
word-frame-is = neck, pillar, soundboard and soundbox together
word-gauge = gauge
word-gauge-is = the diameter of a plain string, or the overall diameter of a wound one
word-glide = glide
word-glide-is = how sharp a plucked string begins before it settles
word-grommet = grommet
word-grommet-is = the eyelet that lines a string hole in the soundboard
word-harmonic-curve = harmonic curve
word-harmonic-curve-is = the curve of the bridge pins
word-impedance = impedance
word-impedance-is = how hard a string is to move at its end
word-inharmonicity = inharmonicity
word-inharmonicity-is = how sharp the partials of a stiff string are
word-jump = jump
word-jump-is = a larger step in feel between two neighbouring strings
word-knee-block = knee block
word-knee-block-is = the block in the soundbox that takes the neck
word-lever = lever
word-lever-is = the sharping lever, set by hand, that raises a string by a semitone
word-lift = lift
word-lift-is = the part of the tension that lifts the soundboard
word-liner = liner
word-liner-is = the strip to which the edge of the soundboard is glued
word-load-share = load share
word-load-share-is = tension as a part of the breaking load
word-make-up = make-up
word-make-up-is = what a string is made of, the core first
word-margin = margin
word-margin-is = semitones that a string could rise before it breaks
word-natural-disc = natural disc
word-natural-disc-is = the upper disc of a string: flat to natural
word-neck = neck
word-neck-is = the curved beam that carries bridge pins and tuning pins
word-nominal-place = nominal place
word-nominal-place-is = where a lever or disc would stand if pressing did not stretch the string
word-open-tuning = open tuning
word-open-tuning-is = the notes with all levers or discs open
word-partial = partial
word-partial-is = one of the tones that a string sounds at once
word-pillar = pillar
word-pillar-is = the column that holds neck and base apart
word-plain = plain string
word-plain-is = a string without winding
word-regulation = regulation
word-regulation-is = setting levers or discs so that every semitone is true
word-ribbon = ribbon
word-ribbon-is = flat wire for a winding
word-sharp-disc = sharp disc
word-sharp-disc-is = the lower disc of a string: natural to sharp
word-shoulder = shoulder
word-shoulder-is = where the neck is joined to the top of the soundbox
word-side = side
word-side-is = a side wall of the soundbox (makers also say rib)
word-soundboard = soundboard
word-soundboard-is = the thin board that the strings lift
word-soundbox = soundbox
word-soundbox-is = the hollow body with the soundboard as its front
word-spare = spare
word-spare-is = a string that is ordered beyond those on the harp
word-stock = stock
word-stock-is = the strings and wires that you can buy
word-strength = strength
word-strength-is = the stress at which a material breaks
word-stress = stress
word-stress-is = force over the section that carries it
word-stretch = stretch
word-stretch-is = how much longer a string gets from slack to pitch
word-anchor = string anchor
word-anchor-is = what holds the knot of a string behind the soundboard
word-string-rib = string rib
word-string-rib-is = the strip under the strings on the soundboard
word-string-spacing = string spacing
word-string-spacing-is = how far strings stand from each other
word-tail = tail
word-tail-is = the end of a string beyond its tuning pin
word-band = target band
word-band-is = the range in which a curve should lie
word-target-curve = target curve
word-target-curve-is = the feel or tension that you want from bass to treble
word-temperament = temperament
word-temperament-is = how the octave is divided among its twelve notes
word-tension = tension
word-tension-is = the force along a string at pitch
word-tolerance = tolerance
word-tolerance-is = how far a figure may be off, to either side
word-total-tension = total tension
word-total-tension-is = the tension of all strings together
word-tuning-pin = tuning pin
word-tuning-pin-is = the pin round which a string is wound and by which it is tuned
word-vibrating-length = vibrating length
word-vibrating-length-is = from the soundboard to the bridge pin
word-winding = winding
word-winding-is = the wire or ribbon on a core
word-wound = wound string
word-wound-is = a core with wire wound on it (makers also say overspun)

## About

about = About Stringloft
about-version = Version { $version }, build { $build }.
about-is = Stringloft is written in Rust and runs as WebAssembly wholly in this browser: no server works anything out, and no design leaves this device unless you send it.
about-rests = What the figures rest on stands in The numbers, explained, in the menu Help: each formula, its sources, and what it was checked against.
licences = Licences
licences-are = Stringloft is made with packages by others. Each is listed with its version and its licence; press it to read the full text.
licences-coming = Fetching the licences…
licences-missed = The licences did not arrive. Check the connection, then try again.
licences-count = { $count ->
    [one] 1 package
   *[other] { $count } packages
}
licences-find = Find a package or a licence
