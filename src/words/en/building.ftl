# The order of building as a sheet: what is cut, glued and drilled when, what to check, and what to beware of.

## The sheet

building = Order of building
running = Order of building of { $harp }
steps = Steps
head-check = Check
head-should-be = Should be, mm
head-found = Found
step = { $number }. { $title }
practice = The order of the work and its cautions are common practice, no source. All dimensions are those of the finished parts, from the design as it is now.
how-to-check = Measure from the same corners on both sides. Two diagonals that should be equal tell more than any square.

## The steps

wood = The wood
wood-rests = Let the wood lie in the room where it is glued until it no longer gains or loses weight.
wood-print = Print the templates at full size and measure the check bar on each. Write the name of its part on every piece, and mark its outside.
neck = The neck
neck-runs-out = Before you choose its wood, read at the end of this sheet what straight planks mean for a neck whose line turns from them by { $angle }°: that is not judged.
neck-piece = Plane the neck to { $thick } mm.
neck-layers = Glue the neck up of { $count } layers to { $thick } mm, and let it lie flat under clamps.
neck-turned = The grain of the layers, from the strings’ side, turns from the length of the neck by: { $angles }.
neck-drill = Drill from the strings’ side, square to the face, before the outline is sawn: { $tuning } holes for tuning pins and { $bridge } for bridge pins.
neck-pins = Choose the pins by their length: { $bridge } mm of a bridge pin and { $tuning } mm of a tuning pin sit in the neck, and the strings run { $out } mm off its face. Add what the turns of the string and the tuning key need, and ream the holes of tapered pins.
neck-levers = Mark the places of the { $count } levers, and drill them as their maker says.
neck-discs = Mark the places of the { $count } discs, and drill them as their maker says.
neck-outline = Saw the outline and cut the seat of the pillar square to it; the neck reaches { $heel } mm down there as a heel.
neck-mortise = Cut the mortise for the tenon of the pillar into the seat, while the neck can be clamped.
neck-tenon = Leave the tenon for the knee block standing, and cut it by the template.
pillar = The pillar
pillar-cut = Plane the pillar to { $wide } mm by { $deep } mm and cut both ends square to it where they stand on something.
pillar-tenons = Cut { $count ->
    [one] its tenon
   *[other] its { $count } tenons
} and fit { $count ->
    [one] it
   *[other] them
} before anything is glued.
tenon-head = At its top the tenon is { $thick } mm thick across the harp and { $deep } mm long.
tenon-foot = At its foot the tenon is { $thick } mm thick across the harp and { $deep } mm long.
pillar-capital = Once the pillar is planed, glue the two cheeks of the capital to its front and its back, with their grain along it, before you cut its upper end or its tenons. The neck is glued to pillar and cheeks together.
sides = The sides
sides-cut = Saw two sides, { $thick } mm thick, as mirror images. Their edges are bevelled: the template shows the far edge dashed.
blocks = The blocks
blocks-cut = Saw the foot block with its grain across the harp, so that glue holds it on base and soundboard, and the knee block with the grain as its template shows it.
blocks-mortise = Cut the mortise for the tenon of the neck into the knee block now, while it can be clamped.
mortise-knee = That mortise is { $thick } mm wide across the harp and { $deep } mm deep. Its middle lies { $off } mm from the middle of the harp, on the side of the neck.
blocks-drill-through = Drill { $count } holes of { $wide } mm for the fasteners through the knee block, square to its upper face.
blocks-drill = Drill { $count } holes of { $wide } mm for the fasteners into the knee block, { $deep } mm deep and square to its upper face.
frame = Sides and blocks
frame-glue = Glue the sides to both blocks on a flat bench, after a trial without glue, and check before the glue sets.
liners = Liners and braces
liners-glue = Glue in { $liners } liners, then { $braces } braces on sides and back. Plane what stands proud.
back = The back
back-cut = Saw the back with { $count ->
    [one] its sound hole, round over the edge of the hole
   *[other] its { $count } sound holes, round over the edges of the holes
} so as not to scrape a hand on it, and glue the back on.
back-bend = Before it is glued, bend it over its braces or over a form to a radius of { $low } mm inside at its lower end and of { $high } mm at its upper one, and let it dry clamped there.
back-arched = The braces of the back have its arch on the edge on which it rests: saw them by their templates. Plane the knee block to the same arch, and bevel sides and liners in line with it.
soundboard = The soundboard
soundboard-plane = Join the soundboard and plane it, from { $bass } mm at its lower end to { $treble } mm at its upper one.
soundboard-bars = Glue on { $count } pieces of bars.
soundboard-rib = Glue the string rib inside, between the blocks, and the outer strip over it on the outside.
soundboard-drill = Drill { $count } string holes at { $angle }° to the outer face, along the strings, with the line of holes in the plane of the strings. Their widths in mm, by string: { $widths }.
closing = Soundboard on the soundbox
closing-glue = Sign the inside, clean it of glue, then glue the soundboard on, with the clamps from the middle of each edge outward.
closing-drill = Continue the hole of string { $string } along the string, through the { $deep } mm of knee block behind the soundboard.
base = Base and feet
base-cut = Saw the base and both feet, cut the mortise for the pillar through what the tenon meets, and glue the feet on.
trial = Trial without glue
trial-build = Put soundbox, pillar and neck together without glue. Stretch a thread from each string hole below to its bridge pin and sight along the neck: no thread touches a pin of another string.
shoulder = The shoulder
shoulder-drill = Mark the holes of the knee block on the end of the neck while everything stands as in the trial, and drill them { $deep } mm deep there.
shoulder-bolts = The bolts go through { $block } mm of knee block and { $neck } mm into the neck, to a nut on a washer that is let in there from its side: so the loads are judged. Add the washer under the head, and you have their length.
shoulder-glue = Glue the soundbox to the base and screw it on from below, through the base into the foot block. Glue or bolt pillar and neck to both, and check as in the trial before the glue sets.
shoulder-pull = The strings pull the soundbox up from the base with up to { $pull }, estimated: this joint holds the harp together.
finish = Finish
finish-coat = Finish the wood before the pins go in. By the densities of the tables the wood weighs { $mass } kg; if yours weighs much more or less, check its density in Drawing, under Woods: the estimates depend on it.
stringing = Stringing
stringing-up = Put pins, mechanism and strings in and bring the harp up over some days, by the order of stringing. Look at neck and joints each day.

## What to check

check-bridge = Lowest to highest bridge pin, from middle to middle
check-tuning = Lowest to highest tuning pin, from middle to middle
check-neck-long = Neck, longest along the grain, without tenons
check-pillar-long = Pillar, longest, without tenons
check-fastener-front = Front edge of the knee block to its fastener holes, row { $row }
check-fastener-middle = Middle of the harp to the fastener holes, on the neck’s side, line { $row }
check-side-one = Side, lower front corner to upper back corner
check-side-other = Side, upper front corner to lower back corner
check-front = Diagonals of the front, both
check-low = Width of the front at the lower end
check-high = Width of the front at the upper end
check-back = Diagonals of the back, both
check-rise = Rise of the back at its lower end, inside, below a straightedge over its edges
check-lowest-hole = Lower end of the soundboard to the lowest string hole
check-holes = Lowest to highest string hole
check-shoulder-front = Front of the shoulder above the base, both sides
check-shoulder-back = Back of the shoulder above the base, both sides
check-seat = Seat of the pillar above the base
check-lowest-string = Lowest string, from soundboard to bridge pin
check-middle-string = String { $number }, from soundboard to bridge pin
check-highest-string = Highest string, from soundboard to bridge pin
check-base = Base, from front to back
check-shoulder-floor = Upper end of the back above the floor

## What to beware of

saws = Saws: guard on, riving knife in, a push stick near the blade, hands out of its line, no gloves, eyes and ears protected. Never reach over a blade that still turns.
drills = Drill press: clamp the piece, no gloves or loose sleeves, hair tied back, scrap wood behind the hole.
planers = Planer and router: no short or thin pieces without a carrier, small cuts, feed against the cutter, both hands clear.
dust = Dust of hardwoods harms lungs and skin: extraction at the machine and a mask.
glue = Glue: gloves, fresh air, and the times and temperatures of its maker. Hot glue scalds; epoxy and its hardener harm the skin. Trial first: a joint that slips under clamps is lost.
clamps = Clamps store force: keep fingers out of their way, and loosen them slowly.
bending = Bending: steam, hot water and hot irons scald. Gloves and long sleeves; stand beside a piece under tension, as it may break. Try an offcut first.
rags = Rags with oil can catch fire by themselves: spread them out to dry in the open, or keep them under water in a closed tin.

## Guides for the drill, and all parts on one page

jig = { $harp }: drill guides, { $part }
jig-note = Side views of blocks of hardwood { $high } mm high, at full size. Clamp a block to the face, its side in the line of the holes, and drill through it.
jig-origin = lower left corner of the first block
jig-square = { $what } { $wide } mm, square
jig-slanting = { $what }, { $angle }° to the face
jig-stop = stop the drill { $stop } mm from its tip
jig-through = through, with scrap wood behind
string-hole = string hole
overview = { $harp }: all parts, 1:{ $scale }
overview-note = Each part is named with its length along the grain, its width and its thickness in mm. Of a pair only one is drawn.

## A bent back

bent = { $harp }: { $part }, unrolled
bent-radius = Its inside rises { $rise } mm at its lower end. Over sides and liners it slopes up flat; between them its inside is bent to a radius of { $low } mm at the lower end and of { $high } mm at the upper one, square to the line of its edges.
bent-sheet = The flat sheet of the outside, which is larger than its inside. Its ends are curved; on base and shoulder they lie flat once it is bent. Cut it a few millimetres too large and trim it when it is glued.
bent-notches = A liner bent along its lower end takes { $count } notches, { $wide } mm wide and { $deep } mm deep, one every { $apart } mm; they close when it is bent.
