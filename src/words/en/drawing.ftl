# The drawing: the picture of the harp and the groups beside it.

## The panel

beside = Shape, woods, loads and files
shape = Shape
woods = Woods
loads = Loads
stringing = Stringing
keys = Keys
drills = Drilling
files = Files
not-drawn = This cannot be drawn: { $why }.

## The picture

larger = Zoom in
larger-hint = Make the drawing larger (+)
smaller = Zoom out
smaller-hint = Make the drawing smaller (-)
fit = Fit
fit-hint = The whole harp (0)
details = Details
details-hint = Every figure of the marked string (Enter)
overlay = Overlay
pin-hint = Drag a bridge pin to lengthen or shorten its string. The wheel zooms; dragging moves the paper.
finger-hint = Tap a string, then drag its bridge pin to lengthen or shorten it. Two fingers zoom and move the paper, two quick taps show the whole harp.
curve-drives = The harmonic curve sets the lengths: move its nodes, and the pins follow.
missing = { $caption } { $count ->
    [one] One string is left out: it has no usable length.
   *[other] { $count } strings are left out: they have no usable lengths.
}
key-help = Page up and Page down choose a string, Alt with the arrow up or down makes it longer or shorter. Plus, minus and 0 zoom in, zoom out and show the whole harp, the arrow keys move the paper, Enter opens the details.
node = Node { $number } of { $count }: { $across } from the lowest string, { $along } along it
node-hint = Drag it, or move it with the arrow keys (Shift: ten times as far, Alt: a tenth)

## What drives the shape

start-from = Start from
typed-or-drawn = You set
lengths-drive = The lengths: the pins follow
pins-drive = The harmonic curve: the lengths follow
no-curve = A harmonic curve needs at least two strings with lengths. Type some first.
no-more-nodes = You can add a node only where the curve can be drawn and has fewer than { $most }.
nodes = Nodes of the harmonic curve
node-column = Node
add-node = Add a node
nodes-hint = Across is square to the strings from the lowest one, along is up from where it meets the soundboard. The lengths typed in the chart wait until you set the lengths again.

## Spacing

spacing = String spacing
from-string-to-string = From string to string
spacing-alike = All the same
spacing-zones = By zones, with even steps between
spacing-each = String by string
measured = Measured
measured-square = Square to the strings
measured-board = Along the soundboard
numbers-converted = The numbers were converted: the strings stay where they were.
numbers-stayed = The numbers stayed, so the harp now has a different width.
convert = Convert them, so that the harp stays as it is
now-alike = All gaps are now { $width } mm, the average of what they were.
now-zones = The spacing now has { $count ->
    [one] { $count } zone
   *[other] { $count } zones
}.
now-each = Each of the { $count } gaps now has a width of its own.
strings-stay = { $now } The strings stay where they were.
strings-move = { $now } The string that moves most moves { $moved } mm.
all-zoned = Every gap has a zone of its own already.
zones = Zones of the string spacing
between = Between
add-zone = Add a zone
zones-hint = Gap 1 lies between the lowest string and the next one. Between two zones the widths go in even steps.
widths = Widths of the gaps, from the bass
gap = Gap
widths-hint = From the bass up. A column copied from a spreadsheet can be pasted.
string-number = string { $number }
no-strings = no strings
least-room = Least clearance between two strings that are both plucked: { $room } mm, strings { $first } and { $second }.
gap-above = { $string }: { $square } mm to the next higher string square to the strings, { $along } mm along the soundboard.
is-highest = { $string } is the highest: no gap lies above it.

## Woods

neck = Neck
pillar = Pillar
soundboard = Soundboard
string-rib = String rib
wood-neck = Wood of the neck
wood-pillar = Wood of the pillar
wood-board = Wood of the soundboard
wood-rib = Wood of the string rib
wood-bars = Wood of the bars
wood-sides = Wood of the sides
wood-back = Wood of the back
plies = Plies
wood-figures = Its figures and their sources
most-sections = A neck has at most { $most } sections.
sections = Measured sections of the neck
number = No.
add-section = Add a section
sections-hint = Measured sections, from the shoulder at 0 % to the pillar at 100 %. With none given, the depth is that of the drawing and the thickness the one above.

## Bars of the soundboard

bars = Bars
bars-of-board = Bars of the soundboard
how-many = Number
wide = Width
high = Height
first-at = First at
last-at = Last at
bars-across = Across
bars-along = Along, pairs
board-sides = Thickness of the soundboard at its sides
of-the-middle = Share of the middle
at-the-sides = At the sides
bars-hint = 0 means none. At its sides the soundboard is as thick as in the middle, or this share of that. Bars across run from side to side: give first and last in per cent of the soundboard's length from its lower end. Bars along run on both sides of the string rib: give first and last pair in per cent of the way from the middle to the side. With 0 for both they are spaced evenly.
board-map = Thickness of the soundboard from place to place
map-row = Row
map-middle = Middle
map-half = Halfway to the sides
map-side = Sides
map-at = Along
add-map-row = Add a row
most-map-rows = A soundboard has at most { $most } rows of thicknesses.
map-hint = Each row goes across the soundboard, so far along it in per cent from its lower end. With any row given, these thicknesses count alone, with even steps between. On paper and among the parts the wood is planed off the outside.
map-unusable = These thicknesses cannot be read: { $text }. A new row replaces them.

## Joints

joints = Joints
joint = Joint
neck-on-box = Shoulder
pillar-on-neck = Pillar to neck
pillar-on-base = Pillar to base
neck-on-box-by = Shoulder, held by
pillar-on-neck-by = Pillar to neck, held by
pillar-on-base-by = Pillar to base, held by
tenons = Tenons and glued faces of the joints
tenon = Tenon
deep = Depth
face-wide = Face width
fasteners = Dowels, bolts or screws of the joints
thick = Thickness
apart = Spacing
rows-apart = Row spacing
joint-plates = Plates on both sides of the joints
plate = Plate
held-unknown = Not known
held-dowels = Glued dowels
held-bolts = Bolts
steel = Steel
brass = Brass
aluminium = Aluminium
plates-of = Plates of
joints-hint = 0 means none, or not known. A joint with nothing given is not judged. The shoulder is where the neck meets the knee block of the soundbox. Tenons lie in the plane of the strings and are as high as the part; dowels, bolts and screws go equally deep into both parts, in one row in that plane or in two. With plates, screws go through each plate into each part.

## Soundbox

soundbox = Soundbox
part = Part
box-walls = Depth of the soundbox and thickness of its walls
deep-bass = Depth, bass
treble = Treble
side = Side
back = Back
walls = Walls
box-inside = Liners and braces of the soundbox
braces-every = Brace spacing
liners = Liners
box-holes = Sound holes in the back
long = Length
sound-holes = Sound holes
back-is = The back is
back-closed = Closed except for its holes
back-open = Open along its length
soundbox-hint = The soundbox is as wide as the soundboard. It is judged once depth, sides and back have sizes, and the buckling of its sides once the brace spacing is given. An open back is open to the width of a hole.

## Layers of the neck

layers = Layers of the neck
layer = Layer
turned = Angle
wood-of-layer = Wood of layer { $number }
that-of-neck = That of the neck
most-layers = A neck has at most { $most } layers.
add-layer = Add a layer
layers-hint = Layers of a laminated neck, side by side through its thickness: only the ratio of their thicknesses counts. At 0° the grain runs along the neck, at 90° across it. With none given, the neck is one piece.

## Metal beside the neck

metal = Metal beside the neck
neck-plates = Plates beside the neck
plates = Plates
from = From
to = To
neck-screws = Screws of the plates
screws = Screws
one-every = One every
deep-in-wood = Depth in the wood
plates-on = Plates on
both-sides = Both sides
one-side = One side
of = Of
metal-hint = Plates run along the middle of the neck's depth, from 0 % at the shoulder to 100 % at the pillar; 0 mm means none. Without screws they are glued on over their whole face. Screws stand in one row in the middle of the plate; they slip, so the plates help less against sideways bending. Without their depth they are not judged: screws of 4 mm, 25 mm deep, one every 60 mm, are usual (common practice, no source).

## Woods of one's own

own-woods = Woods of your own
own-bars = Bars of woods of your own
own-tests = How the bars bend and ring
wood = Wood
weighs = Weight
span = Span
load = Load
falls = Sags by
tone = Tone
most-woods = A design has at most { $most } own woods.
add-wood = Add a wood
name-of-wood = Name of wood { $number }
it-is = It is a
hardwood = Hardwood
softwood = Softwood
its-strengths = Its strengths
strengths-unknown = Not known: not judged
strengths-by-class = By strength class
remove-wood = Remove this wood
own-hint = Cut a straight bar with the grain along it. Its density is weight over length times width times height. Lay it on two supports, hang a load in the middle and measure how far it sags: E = F l³/(4 b h³ w), with l the span and h the height in the direction of bending. Or let it ring: hold it 22 % from one end, tap the middle and enter the tone; E = 0.9464 ρ f² L⁴/h² with a correction for shear. One plank speaks only for itself. Strength classes are those of EN 338 (from memory): they hold for planks with small knots, not for brash wood or slanting grain.

## Loads

assumptions = Assumptions
no-loads = There are no loads yet. Give the strings their notes, lengths and make-ups.
formulas-loads = The formulas, and an example worked by hand
how-worked-out = How it is worked out

## Stringing

order = Order
strings-up = Strings up
up = Up
up-of = { $up } of { $count }
tension = Tension
pillar-push = Push in the pillar
bending = Bending
torque = Torque
share-and-where = Share of the allowable load, and where
stages = Stages of stringing
no-frame = Frame dimensions are missing.
some-up = { $up } of { $count } strings up
some-up-last = { $up } of { $count } strings up, the last one { $string }
stage = { $strings }: tension { $tension }, push in the pillar { $pillar }, bending { $bending }, torque { $torque }, { $used }, of the allowable load; the soundboard is left out.
stage-unjudged = { $strings }: tension { $tension }, push in the pillar { $pillar }, bending { $bending }, torque { $torque }. How much of the allowable load that is, is not judged.
stages-hint = Every string that is up is at pitch. The soundboard is left out here: each part of it carries only the strings near it.

## Giving and years

giving-title = How the frame flexes during stringing, estimated
falls-table = How far each string falls
formulas-giving = The formulas for flexing
formulas-years = The formulas for the years

## Keys

keys-title = Keys from the open tuning
key = Key
levers-or-pedals = Levers or pedals
key-no = No:
keys-hint = Each string sounds its own letter. Levers are set one by one, discs of one letter together.

## Files

dxf-hint = For a cutter or a drawing program, in millimetres
svg-hint = For a drawing program, at full size
tiled-hint = On many sheets, to print at full size and glue together
pdf-a4 = PDF on A4
pdf-letter = PDF on Letter
sheet-hint = One sheet as large as the harp, for a plotter
pdf-sheet = PDF on one sheet
schedule = Pin schedule
schedule-hint = A table of all pins, holes, levers and discs, with their places
picture-hint = The drawing with its overlay, not at full size, for a document
picture-svg = Picture, SVG
picture-png = Picture, PNG
