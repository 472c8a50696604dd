# Samples and new harps, keys, and the curve that drives.

## Samples

sample-floor = Lever harp, 36 strings
sample-floor-blurb = Nylon, gut and ten wires from C7 down to C2, about 4 kN in all.
sample-wire = Wire-strung harp, 22 strings
sample-wire-blurb = Yellow and red brass from G6 down to G3, tuned in Pythagorean G major.
sample-travel = Travel harp, 26 strings
sample-travel-blurb = Light nylon from G6 down to C3, the bass wound on nylon.
sample-pedal = Pedal harp, 47 strings
sample-pedal-blurb = Nylon, gut and twelve wires from G♭7 down to C♭1, over 10 kN in all.

## A compass

compass-order = the lowest string must not be above the highest, got { $low } and { $high }
compass-long = a compass must have at most { $most } strings, got { $got } (narrow it)
compass-sign = an open string must be at most two semitones off its letter

## The curve of the pins

curve-drives-same = The harmonic curve, with { $nodes } nodes, now sets the lengths. They stay as they were.
curve-drives-changed = The harmonic curve, with { $nodes } nodes, now sets the lengths. The largest change of a length is { $change } mm, at { $string }.
curve-new = { $told } { $count } without a length now have one.
lengths-drive-typed = You set the lengths again, as they were typed.
lengths-drive = You set the lengths again. Those of the harmonic curve are in the chart, to 0.1 mm.
lengths-drive-but = You set the lengths again. Those of the harmonic curve are in the chart, to 0.1 mm; { $count } that it does not reach are as they were typed.
string-in-sentence = string { $number }
string-with-note-in-sentence = string { $number }, { $note }

## Keys

key = { $major } major, { $minor } minor
flat = { $letter }♭
sharp = { $letter }♯
no-string-for = no string for { $letters }
up-one = up one semitone: { $letters }
up-two = up two semitones: { $letters }
some = some { $letter }
as-tuned = as tuned
and = { $first } and { $last }
more = { $count } more
every = every { $letters }
strings = { $count ->
    [one] string
   *[other] strings
} { $names }
why-no-note = { $who } { $count ->
    [one] has
   *[other] have
} no note
why-too-high = { $who } { $count ->
    [one] is
   *[other] are
} tuned { $by ->
    [1] a semitone
   *[other] { $by } semitones
} too high
why-no-mechanism = { $who } { $count ->
    [one] has
   *[other] have
} no lever or disc
why-out-of-reach = { $who } would have to go up { $by } semitones
why-not-alike = { $who } { $count ->
    [one] is
   *[other] are
} tuned differently from the others of the letter

## Kinds of harp, and what most of their strings are of

lever-harp = Lever harp
wire-strung-harp = Wire-strung harp
pedal-harp = Pedal harp
nylon = Nylon
gut = Gut
fluorocarbon = Fluorocarbon
yellow-brass = Yellow brass
phosphor-bronze = Phosphor bronze
harp-of = { $instrument }, { $count } strings

## Open tunings

tuning-c = C major
tuning-g = G major
tuning-d = D major
tuning-f = F major
tuning-b-flat = B flat major
tuning-e-flat = E flat major
tuning-a-flat = A flat major
tuning-c-flat = C flat major
