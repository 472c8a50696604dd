# A string in full, its make-up, its exchange, and what is offered while it is typed.

## The string in full

as-the-harp = Like the harp
partials-count = Partials
above = Previous string
above-hint = The string above (Ctrl+Up)
below = Next string
below-hint = The string below (Ctrl+Down)
raised-one = Lever or disc of string { $number }
raised = Levers or discs of strings { $first } to { $last }
title = { $string }, in full
figure = Figure
off = Tolerance
main-cause = Main cause, or reason not shown
few-turns = The stretch alone takes { $turns } turns of the pin, and the cut length counts on { $wound } at pitch: pull the string through by hand before you wind it, or allow more turns.
cause-diameter = the diameter
cause-density = the density
cause-length = the length
cause-pitch = the pitch
cause-temperature = the temperature
cause-push = the push
cause-others = { $cause }, and others
off-meaning = Tolerance: those under Instrument and those of the materials, combined (root sum of squares). Formulas and moduli may be off too.
off-without-warmth = The effect of temperature on this string is not known and is left out.
string = String
code = Order code

## The make-up of a wound string

core = Core
bedding = Bedding
winding = Winding
core-alone = The breaking load is that of the core alone: the windings carry nothing. The stiffness that they add is left out.
inside-out = Make-up, from the inside out
head-part = Part
head-material = Material
head-size = Size
head-over-all = Overall
head-mass = Mass
head-share = Share
covering = { $size }, cover { $percent } %
no-bare = Wound from end to end: no bare core.
bare-ends = Bare core: { $board } at the soundboard, { $pin } at the pin.
bare-tension = The tension leaves them out: at the tension given, the string sounds { $cents } cents above its note, so at pitch it has { $percent } % less.
bare-partial = Of the { $cents } cents of partial 8, { $bare } come from the bare ends.

## Partials and a pluck

partials = Partials: how sharp against whole multiples of the first
head-partial = Partial
by-stiffness = By stiffness, cents
by-ends = By bare ends
together = Together
by-law = Bare ends by the cubic law
by-ends-exact = By bare ends: exact. The cubic law is for short ends and gives too much for high partials.
cents = { $cents } cents
pluck = A pluck
of-finger = The finger
value = Value
pulls-aside = Pulls the string aside by
at-share = Plucks at this share of the length
needs-force = Needs a force of
from-tension = part from tension
from-stretching = part from stretching
glide = Glide: it begins sharp by

## Levers and discs

lever = Lever
disc = Disc
disc-natural = Natural disc
disc-sharp = Sharp disc
disc-to-disc = From disc to disc: { $apart } { $unit }. The sharp disc is placed with the natural disc pressing too.
core-stiff = The core is taken to be as stiff as in vibration; while a contact presses it gives more, so the stretch is an upper estimate: the right place lies between the place given and the nominal one.
places-mm = Places and tolerances are in millimetres from the bridge pin. The nominal place is that of a string that is only shortened; the error is how sharp the semitone would be there. What is left over is for regulation at the harp.
places-inch = Places and tolerances are in inches from the bridge pin. The nominal place is that of a string that is only shortened; the error is how sharp the semitone would be there. What is left over is for regulation at the harp.
contacts = Levers and discs
head-contact = Contact
head-place = Place
head-nominal = Nominal
head-error = Error there, cents
head-two-cents = Placement tolerance for ± 2 cents
head-five-cents = Placement tolerance for ± 5 cents
head-pull = Tension while it presses
head-load = Load share

## Exchange

gauge = Gauge
tension = Tension
load-share = Load share
margin = Margin
stays = Stays: { $why }.
grey = Grey: the strings in { $material }
frame-now = Frame now: { $before }. With these strings: { $after }.
none-exchanged = No string can be swapped like this. The table says why.
exchanged = { $count ->
    [one] { $count } string is
   *[other] { $count } strings are
} now of { $material }. Undo takes this back.
all-strings = all strings
these = strings { $first } to { $last }, as selected
this = string { $number }, as selected
nearest-of = the nearest in the list "{ $list }"
any-gauge = any hundredth of a millimetre
exchange-title = Swap material
strings = Strings
new-material = New material
what-stays = What stays the same
gauges = Gauges
before-after = Strings before and after
exact-gauge = Exact gauge
remark = Remark
exchange = Swap these strings
exchange-hint = One step: Undo takes it back. The grey curves are the strings as they would be.

## While a string is typed

then-gauge = then type its gauge
offer-load = { $tension }, load share { $share } %
offer-breaks = { $tension }, load share { $share } %, breaks
matches = { $count ->
    [one] { $count } string matches.
   *[other] { $count } strings match.
}
offers = Materials and stock

## The window of a make-up

unused = The make-up was changed. Use it? Cancel leaves the string as it was.
make-up = Make-up
no-string = There is no string yet. Add one first.
make-up-of = Make-up of string { $number }
make-up-of-several = Make-up of strings { $first } to { $last }
several-hint = With several plain strings, a material or gauge that you leave alone stays as each string has it.
use-one = Use for this string
use-several = Use for these strings
choose-one = choose one
material = Material
kind = Kind
plain = Plain
wound = Wound on a core
weighed = Weighed (mass per metre known)
diameter = Diameter, mm
bare-board = Bare core at the soundboard, mm
bare-pin = Bare core at the pin, mm
add-layer = Add an outer layer
layer = Layer { $number }, counted from the core
wire = Wire, mm
ribbon = Ribbon, mm
cover = Cover, %
layer-hint = Ribbon: its width; leave it empty for round wire. Cover 100 %: the turns touch.
remove-layer = Remove this layer
measured = Weighed
mass = Mass per metre, g/m
overall = Overall diameter, mm (if measured)
breaking = Breaking load, N (if known)
windings-hint = Windings are taken to add mass, but no strength and no stiffness.
section = Section of the string, to scale: end view, and cut along its length
to-scale = To scale: the bar is { $bar } mm. Left, end view; right, cut along the string.

## The sheet for fingers below the chart

sheet = Cell
sheet-above = String above
sheet-below = String below
sheet-keep = Keep
sheet-leave = Leave as it was
