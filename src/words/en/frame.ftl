# What the frame bears: parts, verdicts, forces, and what may be done.

## How a part stands

not-judged = not judged
within = within
may-be-over = may be over
over = over
gives-way = gives way
or-gives-way = { $low } % or gives way
percents = { $low } to { $high } %
from-to = { $low } to { $high }
from-to-degrees = { $low } to { $high }°

## Parts, by themselves and within a sentence

part-neck = Neck
part-pillar = Pillar
part-shoulder = Shoulder
part-head = Pillar-to-neck joint
part-foot = Pillar-to-base joint
part-soundbox = Soundbox
board-with-rib = Soundboard with its string rib
board-without-rib = Soundboard without a string rib
in-neck = neck
in-pillar = pillar
in-shoulder = shoulder
in-head = pillar-to-neck joint
in-foot = pillar-to-base joint
in-soundbox = soundbox
in-board-with-rib = soundboard with its string rib
in-board-without-rib = soundboard without a string rib

## What of a part was looked at

bending-push = bending with the push along it
bending-pull = bending with the pull along it
shear-twist = shear and twist together
across-curve = tension across the grain where a curve opens
buckling = buckling
beside-middle = off-centre load
pressed-along = compression along the grain
pressed-across = compression across the grain
sliding = sliding and twist
opening = bending that opens an edge of the joint
opening-glue = opening held by the glue of its faces
opening-tenon = opening held by the tenon
opening-dowels = opening held by the dowels
opening-bolts = opening held by the bolts
opening-screws = opening held by the screws
opening-plates = opening held by the plates
sliding-glue = sliding and twist held by the glue of its faces
sliding-tenon = sliding and twist held by the tenon
sliding-dowels = sliding and twist held by the dowels
sliding-bolts = sliding and twist held by the bolts
sliding-screws = sliding and twist held by the screws
sliding-plates = sliding and twist held by the plates
splitting = splitting beside what holds the joint
sides-bent = bending of the sides with the force along them
back-bent = bending of the back with the force along it
board-pulled = soundboard pulled across its grain as the soundbox bends
sides-sheared = shear and twist in the sides
back-sheared = shear and twist in the back
bowing-sides = buckling of the sides between the braces
rolling = rolling shear in the crossed layers
metal-bent = bending of the metal beside the neck
metal-glue = shear in the glue of the metal beside the neck
metal-screws = push on the screws of the metal beside the neck
board-bent = bending across, with the pull of the risen soundboard
rib-bent = bending of its string rib
rib-glue = shear in the glue of its string rib
bars-bent = bending of its bars
bars-glue = shear in the glue of its bars
bars-sheared = shear and twist of its bars
edge-peel = peeling of the glue at its edges
bars-ends = peeling of the glue at the ends of its bars
board-bows = buckling under the push along it, after ten years
of-board-bent = bending of the soundboard
of-rib-bent = bending of the string rib
of-rib-glue = shear in the glue of the string rib
of-bars-bent = bending of the soundboard's bars
of-bars-glue = shear in the glue of the soundboard's bars
of-edge-peel = peeling of the glue at the soundboard's edges
of-bars-ends = peeling of the glue at the ends of the soundboard's bars
of-bars-sheared = shear and twist of the soundboard's bars

## What may be done

mend-pillar = Make the pillar wider and deeper.
mend-neck = Make the neck deeper there, or thicker, or choose a stronger wood.
mend-twist = Make the neck thicker, move the strings nearer to its centre line, and join it firmly to a stiff pillar.
mend-curve = Widen the curve, or laminate the neck from plies that follow it.
mend-sides = Make the sides thicker or the soundbox deeper, or give it larger liners.
mend-back = Make the back thicker, or its holes smaller.
mend-board-pulled = Make the soundbox deeper, or its sides and liners stiffer.
mend-bowing = Space the braces closer, or make the sides thicker.
mend-rolling = Make the neck thicker, or cross fewer of its layers.
mend-metal-glue = Make the plates thinner or higher, or end them where the neck bends less.
mend-metal-screws = Space the screws closer, or make them thicker and deeper.
mend-metal = Make the plates thicker or higher, or the neck stiffer.
mend-held = Make what holds the joint larger, deeper or further apart.
mend-joint = Make the joint larger, or strengthen it.
mend-rib = Make the string rib wider or higher, or the soundboard thicker.
mend-rib-glue = Make the string rib wider, or the soundboard thicker.
mend-bars = Make the bars higher, or the soundboard thicker.
mend-bars-glue = Make the bars wider, or add more of them.
mend-edges = Make the liners wider, or the soundboard narrower or thicker.
mend-bars-ends = Make the soundboard thicker where the bars end, or the bars higher.
mend-board-bows = Make the soundboard or its string rib thicker, give it bars along, or make the soundbox deeper.
mend-board = Make the soundboard thicker or narrower, or give it a stiffer string rib.

## What leads

leads-gives-way = { $what }: the part gives way
leads-sum = { $what }: { $share } combined, the largest term { $stress } of { $limit } MPa
leads-of = { $what }: { $stress } of { $limit } MPa
leads-unlimited = { $what }: { $stress } MPa, no limit known
share-of = { $what }: { $share }
shares-list = { $what }: { $stress } of { $limit } MPa, { $share }
shares-unlimited = { $what }: { $stress } MPa, { $share }
none-of = { $what }: none
stress-unjudged = { $what }: { $stress } MPa, not judged
there = There: { $list }.
no-limit-known = no limit is known
near = near { $string }
in-the-neck = in the neck

## The neck

neck-no-strength = The strength of this wood is not known.
neck-where = { $lead }, { $place }, where the neck is { $thick } thick and { $deep } deep.
neck-drilled = Pin holes are counted.
neck-range = The lower figure applies if { $least }, the higher if { $most }.
case-pushes = the pillar only pushes
case-joints-give = the joints give
case-no-joint = no joint gives
case-nothing = neither joints nor soundbox give
neck-across = Where a curve opens, the wood is pulled across its grain by up to { $stress } MPa; no limit for that is known for this wood.
neck-rims = Stress gathers at the rim of a hole: up to { $along } MPa along the grain, and up to { $across } MPa across it, which may start a short crack. That is not judged by itself.

## The pillar

pillar-pulled = The pillar is pulled, with { $force }, not pushed: check the shape of the frame.
pillar-no-strength = Strength or modulus of this wood is not known.
pillar-bears = It carries { $push }. With the modulus for buckling, a straight one would buckle at { $plane } in the plane of the strings and at { $square } square to it.
pillar-also = If no joint gives, it is also bent by up to { $plane } in the plane of the strings and { $sideways } square to it, and twisted by { $torque }.

## Joints and soundbox

joint-no-sizes = Not judged: no sizes are given for what holds it.
joint-on-neck = { $lead }, on the wood of the neck.
joint-on-pillar = { $lead }, on the wood of pillar or base. It is judged on what of the pillar stands on the base beside the soundboard.
joint-no-limit = No limit is known for this wood.
joint-opens = Bending outweighs the push: it would open an edge of the joint with up to { $stress } MPa. The glue line and dowels hold that; glue on end grain holds little, and the sizes of dowels are not known here.
box-no-sizes = Not judged: no sizes are given for its sides and back.
box-no-limit = No limit is known for its woods.
box-where = { $lead }, { $place }.

## The board

board-at = At { $string } it is { $wide } wide and { $thick } thick.
board-is = It is { $wide } wide and { $thick } thick.
board-rises-years = It rises { $now } at once, { $later } over the years.
board-rises = It rises { $now } at once; how far it creeps is not known.
board-on-liners = One end of the range is for edges as firm as liners, sides and braces can make them, the other for edges as soft as these may be.
board-edges = One end of the range is for edges that neither turn nor move, the other for edges that turn freely and do not pull.
board-bows-at = After ten years of creep, with the modulus for buckling, it would buckle at { $times } times the push along it.
board-no-bowing = The soundbox stretches it lengthwise, so it does not buckle.
board-bowing-unjudged = Buckling under the push along it is not judged: that needs the sizes of the soundbox and the creep of the wood.
board-ends = Where the string rib ends is not judged; where bars end, only on a solid soundboard of which moduli, density and tension across the grain are known, and for bars across with the sizes of the soundbox. Cut square at their full height, their glue opens there first, so thin them out towards their ends (common practice, no source).

## Forces

force-all = Tension of all strings
force-lift = Lift on the soundboard, square to it
force-along = Force along the soundboard
force-lift-rib = Lift per length of string rib
force-along-rib = Force along the string rib, at most
force-neck = Resultant pull on the neck
force-pillar = Push in the pillar
force-shoulder = Force at the shoulder
force-neck-moment = Neck: highest bending moment
force-neck-sideways = Neck: highest bending sideways
force-neck-torque = Neck: highest torque
force-neck-shear = Neck: highest shear
force-neck-along = Neck: highest force along it
force-neck-twist = Neck: highest twist, immediate
force-pillar-plane = Pillar: bending in the plane, if no joint gives
force-pillar-sideways = Pillar: bending sideways, if no joint gives
force-pillar-torque = Pillar: torque, if no joint gives
force-sway = Top of the pillar: immediate sideways movement, if no joint gives
force-left-out = Strings left out: something is unknown

## How far from breaking

reserve = At the highest figure, a piece of average strength breaks under about { $mean } times this load at once and { $mean-later } times over ten years, the weakest of twenty under { $weak } and { $weak-later }.
reserve-weak = At the highest figure, the weakest of twenty pieces breaks under about { $weak } times this load at once and { $weak-later } times over ten years.
reserve-buckles = At the highest figure, one of average stiffness buckles under about { $mean } times this load at once and { $mean-later } times over ten years, the least stiff of twenty under { $weak } and { $weak-later }.
reserve-buckles-weak = At the highest figure, the least stiff of twenty buckles under about { $weak } times this load at once and { $weak-later } times over ten years.
reserve-yields = At the highest figure, the metal bends for good under about { $times } times this load, at once or over ten years.
reserve-crushed = At the highest figure, a piece of average strength starts to be crushed for good under about { $mean } times this load, the weakest of twenty under { $weak }, however long it lasts. That dents the wood and breaks nothing.
reserve-crushed-weak = At the highest figure, the weakest of twenty pieces starts to be crushed for good under about { $weak } times this load, however long it lasts. That dents the wood and breaks nothing.
reserve-unjudged = How far that is from breaking is not judged.
reserve-nearer = Nearer to breaking is this: { $what }.
reserve-glue = That is the wood beside the glue; how long the glue itself holds is not judged.

## Stringing

order-lowest = From the longest string up
order-highest = From the shortest string down
order-middle = From the middle outwards
order-in-turns = Bass and treble in turns
stringing-one = Put the strings on one at a time. A guide starts with the longest [a string maker's installation guide, second-hand]; the order shown first is the one that is easiest on this frame, as far as it is judged.
stringing-tone = Bring each to a whole tone below its pitch first, then all to pitch. [The same guide.] A tone below, a string has about 79 % of its tension at pitch.
stringing-rounds = Go up in several rounds, and check neck, joints and soundboard after each. Common practice, no source.
stringing-down = Let tension down slowly and evenly, the longest strings first where the harp must come down as a whole. Common practice, no source.
stringing-care = Wear eye protection and keep your face out of the plane of the strings.

## The verdict

never-judged = the base, which Parts judges, how long glue itself holds
grain-of-neck = grain that runs out of the neck
ends-of-bars = the ends of string rib and bars
meaning = 100 % is the design allowance, not breaking: the strength that 95 of 100 pieces of the wood have, less what a lasting load and safety take off. For solid wood that is about a third of the mean strength of small, sound pieces. What is expected to break a part is shown beside it, for straight grain and without drilled holes, from a curve of how wood tires that was read second-hand.
not-given = not judged: its sizes are not given
not-given-full = The frame is not judged: no sizes and woods are given yet for neck, pillar and soundboard. Give them in Drawing, under Woods.
across-neck = tension across the grain of the neck
opening-of = opening of the { $part }
across-board = tension of the soundboard across its grain
edges-glue = glue at the soundboard's edges
board-bowing = buckling of the soundboard under the push along it
lead-gives-way = { $part } gives way
lead-may-give-way = { $part } may give way
lead-over = { $part }: { $share }, over
lead-may-be-over = { $part }: { $share }, may be over
lead-worst = { $part }: { $share }, worst of what is judged
lead-share = { $part }: { $share }
finding = Frame, estimated: { $lead }. Not judged: { $list }.
estimated = { $lead }, estimated
estimated-proposed = { $lead }, estimated with proposed sizes
finding-proposed = Frame, estimated with proposed sizes: { $lead }. Not judged: { $list }.
sizes-proposed = The sizes are this program's proposal. Check them in the drawing, under Woods: change them, or take them as your own there.
no-loads = No loads: { $why }.
falls = By this estimate the { $part } gives way.
may-fall = By this estimate the { $part } may give way.
share-unjudged = { $part } not judged
shares = { $list } of the design allowance, estimated.
is-over = The { $part } is over the allowance.
is-maybe-over = The { $part } may be over the allowance.
not-judged-list = Not judged: { $list }.
