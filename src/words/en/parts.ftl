# The parts of the harp for the saw: what each is called, and what is worth saying of them.

## What each is

neck = neck
pillar = pillar
capital = capital cheek
base = base
front-foot = front foot
rear-foot = rear foot
soundboard = soundboard
strip = outer strip
string-rib = string rib
cross-bar = bar across
long-bar = bar along
side = side
back = back
front-liner = liner at the soundboard
back-liner = liner at the back
side-brace = side brace
back-brace = back brace
foot-block = foot block
knee-block = knee block

## Why there are none

no-neck = without a neck there are no parts (give at least three strings a length)
no-box = the soundbox has no sizes yet (give its depth, its sides and its back in the drawing, under Woods)
too-flat = the soundboard lies too flat for a harp that stands on the lower end of its soundbox (let it stand steeper)
crossed = the faces of a part cross: { $part } (look at the sizes of pillar, soundboard and soundbox)

## What is worth saying of them

tuning-pin = tuning pin
bridge-pin = bridge pin
strings-at-neck = The strings come within { $gap } mm of the face of the neck. Take them farther from its middle, or make it thinner.
string-at-pin = String { $string } comes within { $gap } mm of the { $pin } of string { $other }. Move the pins farther aside, or take thinner ones.
levers-close = The levers of strings { $one } and { $other } leave { $gap } mm between them, for levers 11 mm wide. Take narrower levers, or a wider gap.
pin-at-edge = String { $string }: its { $pin } stands { $off } mm from the edge of the neck; { $asked } mm are sound for its diameter. The wood may split there.
hole-on-brace = Sound hole { $hole } lies over brace { $brace } of the back. Make it shorter, or take braces farther apart.
hole-narrowed = Sound hole { $hole } is cut { $to } mm wide and not { $from } mm, as the liners leave no more.
back-lower = The back rises { $to } mm at its lower end and not { $from } mm: over so narrow a box it would be too steep at its edges.
hand-too-wide = The sound holes are { $length } mm by { $width } mm. A large flat hand wants { $hand-long } mm by { $hand-wide } mm.
out-of-reach = { $count ->
    [one] The knot of string { $first } lies
   *[other] { $count } knots, of strings { $first } to { $last }, lie
} up to { $far } mm from the nearest sound hole; one reaches { $reach } mm. Take more or larger holes.
in-foot-block = { $count ->
    [one] String { $first } runs into the foot block, or too close to it for its knot.
   *[other] Strings { $first } to { $last } run into the foot block, or too close to it for their knots.
} Make the block shorter, or begin the strings higher up. The strength of the soundboard is worked out as if the string rib went on there.
in-knee-block = { $count ->
    [one] String { $first } runs into the knee block, or too close to it for its knot.
   *[other] Strings { $first } to { $last } run into the knee block, or too close to it for their knots.
} Make the block lower or the tenon in it shorter, or let the soundboard reach farther up. The strength of the soundboard is worked out as if the string rib went on there.
board-thin = At string { $string } the soundboard is { $at-string } mm thick; past it, it thins to { $at-end } mm at its end. Make it thicker at that string, or taper it less.
face-across = across the harp
face-high = in the plane of the strings
face-too-large = { $joint }: its glued face is given as { $given } mm { $way }, but the parts meet on only { $drawn } mm. Under Loads the joint is judged with the larger face. Type { $drawn } mm, or make the part larger.
neck-beside = The neck stands { $by } mm over the side of the soundbox. A soundboard { $wanted } mm wide at its upper end would carry it whole.
rib-narrowed = The string rib is cut from { $from } mm down to { $to } mm towards the treble, as the liners leave no more. The strength of the soundboard is worked out for the full width.
bar-at-rib = Pair { $pair } of the bars along runs into the string rib. Move it outward, or take a narrower rib.
neck-in-box = The neck reaches { $deep } mm into another part: { $part }. Cut it back there, or change the shape of the shoulder.
no-shoulder-tenon = The tenon of the neck finds no room in the knee block and is not drawn.
no-shoulder-fastener = Not every fastener of the shoulder lies within the knee block; those that would come out of it are not drawn.
no-neck-fastener = Not every fastener of the shoulder stays within the neck, which bends away there; those that would come out of it, or near its edge, are not drawn.
no-head-tenon = The tenon at the top of the pillar would come through the neck, or near it, and is not drawn.
no-foot-tenon = The foot of the pillar leaves no room for its tenon, which is not drawn.
to-front = to the front
to-player = to the player
aside = to a side
tips = The harp tips { $way } when it is tilted by { $angle }°. Make the base reach farther that way, or bring the weight lower down.
falls = The harp does not stand: it falls { $way }. Make the base reach farther that way.
not-judged = Not looked at: strings in motion, the play of pins, and how the parts are clamped and glued. Metal, strings, glue and finish are not weighed. Measure before you saw, and try the fit of each part on the part beside it.
neck-grain = Not judged: grain that runs out of the neck. Its planks are straight, and its line turns from them by up to { $angle }°; the estimate under Loads takes the grain to follow the neck. Where the grain runs out, the neck is much weaker than shown: at 11° little more than half of its strength in bending is left (Wood Handbook, table 5-12, from memory), beyond that less. Glue the neck up of layers whose grain crosses, or take plywood; both bear less than grain that follows the neck, so make it thicker.
neck-layers-turn = Not judged: what the turn of its line does to the layers of the neck. The estimate under Loads takes their angles from that line; the layers are straight, and the line turns by up to { $angle }°. Where it does, they bear less than shown.
held = The strings pull the soundbox up from the base with up to { $pull }, estimated. The glue under the foot block takes { $glue } % of its design allowance; the base, bent between pillar and foot block, { $base } %. Screws, and glue on end grain, are not counted. How the pull goes on from the foot block into soundboard and sides is not judged.
held-unjudged = The strings pull the soundbox up from the base with up to { $pull }, estimated. Whether glue and base bear that is not judged: the strength of the wood of base and foot block is not known.
base-opens = The glue under the foot block, which holds the soundbox on the base, takes { $share } % of its design allowance, estimated. Make the foot block longer along the base.
base-bends = The base, bent between pillar and foot block, takes { $share } % of its design allowance, estimated. Make it thicker.
block-longer = The foot block is { $to } mm along the base and not { $from } mm, so that what is glued inside the soundboard ends above the base.
bolts-close = Bolts of the shoulder stand { $gap } mm apart, where nuts and washers need { $asked } mm. Set them farther apart, or take thinner ones.
bent-not-judged = Not judged: whether the back can be bent so far without breaking, and what its bend does for the strength of the soundbox, which is worked out with a flat back.

## Their templates

title = { $harp }: { $part }
numbered = { $part } { $number }
of-side = { $part }, { $side }
of-side-numbered = { $part } { $number }, { $side }
strings-side = strings’ side
other-side = other side
corner = lower left corner of the box round the part
sizes = Finished: { $long } mm along the grain, { $wide } mm across it, { $thick } mm thick.
wood-is = Wood: { $wood }. The arrow shows the grain.
wood-across = Wood: { $wood }. The circle with a dot means that its grain runs square to this face.
seen-from-outside = Seen from outside the harp.
seen-from-above = Seen from above, the pillar’s end at the left.
pair-mirrored = The other of the pair is its mirror image.
far-edge-is = Dashed: the edge of the far face, where the edges are bevelled.
planed = Thinner towards its sides: plane its outside from the middle line outward, by up to { $deep } mm at the edges. Its inside stays flat.
tapers = It tapers from { $thick } mm to { $thin } mm.
mechanism = lever or disc
fastener = joint of neck and box
drill-through = { $what }: drill { $wide } mm through, square to the face.
drill-deep = { $what }: drill { $wide } mm, { $deep } mm deep, square to the face.
drill-slanting = String holes: drill at { $angle }° to the face, along the string, with the line of holes in the plane of the strings.

## The views

from-side = From the side
from-front = From the front
from-above = From above
view = { $wide } mm wide, { $high } mm high

## The cutting list on paper

cutting-list = Cutting list
running = Cutting list of { $harp }
parts = Parts
parts-to-saw = Parts: along the grain × across it × thick, in mm
boards-and-sheets = Planks and sheets
counted = Needed besides the wood
stands = Weight of the wood, and how the harp stands
worth-saying = Worth a look
head-part = Part and wood
head-finished = Finished, with tenons
head-rough = Rough
head-wood = Wood
head-boards = Planks
head-waste = Left over
head-what = What
head-count = How many
head-size = Size
part-of-wood = { $part } ({ $wood })
glued-up = { $size }, of { $strips } strips
glued-of-layers = { $size }, of { $layers } layers, each sawn { $thick } mm thick
wood-so-thick = { $wood }, { $thick } mm
board-size = { $long } × { $wide } mm
boards-at-least = { $count } of { $size }; at least { $least }
percent = { $number } %
degrees = { $number }°
kilograms = { $number } kg
millimetres = { $number } mm
item-strings = Strings
item-tuning-pins = Tuning pins
item-bridge-pins = Bridge pins
item-levers = Levers
item-discs = Discs
item-fasteners = Fasteners of the joint of neck and box
mass = Weight of the wood
tips-front = May be tilted to the front by
tips-player = May be tilted to the player by
tips-aside = May be tilted to a side by
shoulder-high = Upper end of the back above the floor, balanced on the rear foot
not-weighed = Parts whose wood has no known density
how-laid = The pieces are laid the widest first, each on the first plank or sheet with room, in strips along it; no way of laying them needs fewer than the number that stands as least. Rough sizes have { $length } mm more in length, { $width } mm in width and, for planks, { $thickness } mm in thickness; the saw takes { $kerf } mm.
