# What the loads take for granted.

## Loads and woods

permanently = Every string is permanently at pitch. Limits are those for a lasting load, with the safety that the standards put in; shocks and blows are not in them.
made-plywood = { $part }: birch plywood, handbook of Finnish plywood ({ $standing }).
made-plywood-plies = { $part }: birch plywood of { $plies } plies, handbook of Finnish plywood ({ $standing }).
made-own = { $part }: { $wood }, from a bar of yours. { $told }
made-unknown = { $part }: the usual wood, as the one named is not known here.
made-of = { $part }: { $wood }.
made-of-source = { $part }: { $wood }, { $source } ({ $standing }).
neck = Neck
pillar = Pillar
board = Soundboard
rib = String rib
bars = Bars
sides = Sides
back = Back

## The neck

grain-plies = About half of the plies of the neck run along it all the way, also in the curves.
grain-slants = The grain of the neck slants by { $slope } %. Where it slants more, as in a neck sawn from one straight plank, the neck is weaker than shown here.
grain-follows = The grain of the neck follows its line. A neck sawn from one straight plank is weaker than shown here where the grain runs out.
sound = The wood is sound: no knots.
off-centre = The push in the pillar is also judged { $offset } off its centre, whatever else bends it. Common practice, no source.
one-thickness = The neck has its drawn depth and one thickness.
sections = The neck has the sections that you gave, with even steps between them.
layers-unusable = The neck counts as one piece, as its layers cannot be used: each needs a thickness, and a wood other than plywood.
layer = { $thick } mm { $wood }
layer-turned = { $thick } mm { $wood } at { $angle }°
layers = The neck is laminated from { $layers }, in proportion to its thickness, by classical laminate theory. The layers that run within 45° of a load carry it alone, and the weakest of them sets the limit: so crossed layers carry what pulls across the neck. Shear over their faces rolls crossed layers: it may be twice their tension across the grain, as in EN 1995-1-1, 6.1.7 (from memory), and the twist counts as in a neck of one piece. The glue between them counts as strong as the wood.

## The metal beside it

metal-steel = steel (S235: 235 MPa at yield, from memory)
metal-brass = brass (150 MPa at its proof stress, soft sheet has 125, hard sheet more)
metal-aluminium = aluminium (EN AW-6082 T6: 250 MPa at its proof stress, from memory)
one-side = one side
both-sides = both sides
metal = Metal beside the neck: plates { $thick } thick and { $high } high of { $metal }, on { $sides }. Two thirds of that stress are allowed. Wood and metal bend as one; shear and twist stay with the wood. The metal is judged with wood that has crept, as that leaves more to it. { $held }
metal-screws = Its screws slip as in EN 1995-1-1, 7.1 and annex B (from memory), so it helps less along the neck and sideways. They stand in one row in the middle of the plate, { $thick } thick and one every { $gap }, and go { $deep } deep into the wood. They are of steel, and carry what EN 1995-1-1, 8.2.3, allows beside a thin plate (from memory).
metal-screws-unjudged = Its screws slip as in EN 1995-1-1, 7.1 and annex B (from memory), so it helps less along the neck and sideways. They stand in one row in the middle of the plate, { $thick } thick and one every { $gap }, and are taken to be of steel and to carry what EN 1995-1-1, 8.2.3, allows beside a thin plate (from memory). They are not judged, as their depth is not given.
metal-glue = Its glue covers the whole face and counts as strong as the wood beside it in shear. That takes clean, roughened metal and a glue for metal. Common practice, no source.

## Holes

tuning-pins = tuning pins
bridge-pins = bridge pins
levers-or-discs = levers or discs
hole-deep = { $row } { $wide } wide and { $deep } deep
hole-through = { $row } { $wide } wide and through
holes-none = No pin holes are counted, as none are drilled.
holes = Holes in the neck are counted: { $holes }. Bending, push, shear and twist act on the section that they leave, and what pulls across the grain goes between the holes of a row: EN 1995-1-1, 5.2 (from memory). The stress that gathers at the rim of a hole is shown, by S. G. Lekhnitskii's formula for an open hole (from memory), and not judged by itself: it fades within half a diameter, wood sheds it by short cracks along the grain, and timber rules judge the section that is left. Pins that split the wood as they are driven, and the help of a tight pin, are left out.

## The board

board-plate = The soundboard is a plate with its grain across and upright rings. Width and thickness change evenly from string to string, and evenly from the middle to the sides where these have their own. As it rises it also hangs between its edges.
board-map = The soundboard has the thicknesses that you gave from place to place, with even steps between. Its highest stress is looked for from the middle to the edges.
board-map-unusable = The thicknesses given from place to place cannot be used: { $text }. So those at the longest and the shortest string are taken. Each row needs a place in per cent and three thicknesses.
string-holes = The string holes are taken from string rib and outer strip, or from a soundboard without them; what gathers at their rims is left out.
rib-as-one = String rib, soundboard and outer strip are glued along the middle and bend as one.
bars-as-one = Bars are glued on over their whole length and bend as one with the soundboard under them, between sides and ends that hold them as they hold the soundboard. They turn with the soundboard under them, and are judged in shear and twist; loads beside their middle are left out. They are taken as cut square at their full height where they end, at blocks and liners. There the glue opens first, so thin them out towards their ends (common practice, no source); that is not counted.
liners = Liners and sides hold the edges of the soundboard: at least with a side that turns at the back, at most with braces that hold the liner. Their glue is as strong as the weaker wood across its grain. From memory.

## Where the harp is kept

heated = The harp is kept in heated rooms: that sets how far the wood creeps and what it can carry.
covered = The harp is kept under a roof: the wood creeps more. Its strengths are those of dry rooms, as in EN 1995-1-1, table 3.1 (from memory).
outdoors = The harp is kept in the open: the wood creeps much more, and five sixths of the strengths of dry rooms are allowed, as in EN 1995-1-1, table 3.1 (from memory). The moduli are those of dry wood.

## Joints and soundbox

joints-free = At one end of the estimate the pillar only pushes, and the shoulder turns freely in the plane of the strings and alone holds the neck against twist. At the other no joint gives.
joints-springs = At one end of the estimate the joints give twice as much as their sizes say, at the other they do not give. Slip of fasteners after EN 1995-1-1, along their axis as approvals of screws have it, tenons by the shear of their glue line (from memory).
joints-borne = A joint is pressed together on at least half of its faces; the rest of its bending, and all sliding and twist, is carried by one thing alone, the one with the lowest share. Glue on end grain counts for a tenth of the wood. Fasteners by the formulas of EN 1995-1-1 (second-hand and from memory), in end grain with what is left of them there.
box-tube = The soundbox is a tube of thin walls from the foot to the shoulder, as wide as the soundboard, with liners of the wood of its sides. Between sound holes the back holds like a ladder. The plywood has the plies that go with its thickness.
box-none = The soundbox has no sizes: either it does not give, or it is a tube 0.6 times as deep as it is wide with walls of a fiftieth of its width. Common practice, no source.
