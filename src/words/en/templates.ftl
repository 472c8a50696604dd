# Templates at full size, and the schedule of their points.

## The drawing

harp = Harp
origin = where the lowest string meets the soundboard
from-side = Seen from the side, in the plane of the strings. A cross marks a centre.
drill = Drill what your own pins, levers and strings need. Try a small part first.
sign-lever = A bar across a string: a lever.
sign-disc-natural = A circle on a string: the natural disc, for the first semitone.
sign-disc-sharp = Two circles on a string: the sharp disc, for the second semitone.
left-out = Left out, as their length or place is unknown: strings { $strings }.
left-out-more = Left out, as their length or place is unknown: strings { $strings } and { $more } more.
unit = One unit is one millimetre. The cross in a circle is 0, 0.
origin-is = Origin: { $origin }

## Layers

outline = outline
board = soundboard
pillar = pillar
strings = strings
pins = pins
holes = holes
levers = levers
discs-natural = natural discs
discs-sharp = sharp discs
far-edge = far edge
openings = sound holes
mortises = mortises
grain = grain
marks = marks
dimensions = dimensions
text = text

## The schedule

pin-remark = pin { $pin } mm; for a tapered pin drill its small end and ream
hole-eyelet = { $along } mm along the soundboard; for the grommet
hole-string = { $along } mm along the soundboard; string { $gauge } mm
hole-unknown = { $along } mm along the soundboard; the gauge of the string is unknown
origin-caution = { $origin }. { $caution }

## One sheet

scale = Print at 100 %, no fit to page.
bars = Check both bars before you cut.
bar = 100 mm (3.94 in)
whole = whole drawing on one sheet; frame begins at x { $x }, y { $y } mm
sheet = sheet { $number } of { $count }; frame begins at x { $x }, y { $y } mm
cut = cut
edge = edge of { $sheet } to the dotted line

## The map of the sheets

template = Template
full-size = Full size on { $count } { $count ->
    [one] sheet
   *[other] sheets
} of { $paper }, { $side ->
    [landscape] landscape
   *[portrait] portrait
}, with { $overlap } mm overlap. { scale }
origin-at = Origin (x 0, y 0): { $origin }
grey = Grey and crossed out: nothing to draw, no sheet is printed.
join = How to join the sheets
join-cut = Cut each sheet along its full line: at the left, at the bottom, or both. A sheet without such a line is not cut.
join-row = Join each row from left to right: lay the cut edge on the dotted line of the sheet at its left, so that both halves of the numbered diamonds meet.
join-rows = Then join the rows from the bottom up, each over the one below it, in the same way.
join-straight = Before the glue sets, lay a straight edge along a long line that crosses the seam: it must not step.
join-name = The name of a sheet, as on the map, stands at its lower left.
alone = There is one sheet: nothing is joined.
before-cut = Before you cut
check-bars = Measure both bars on every sheet with a steel rule before you cut. Each must be 100 mm; if one is off by more than 0.3 mm, set the printer to 100 % and print that sheet again.
check-damp = Paper grows and shrinks with humidity. Measure from the first to the last pin on the joined sheets and compare with the schedule on the day you drill.
check-scrap = Try each drill and pin in scrap of the same wood first. Wear eye protection.
check-load = A template says where things go, not that the wood will carry the strings: have neck, pillar and soundboard checked for their load.
check-origin = The cross in a circle marks the origin, x 0, y 0. All lengths on the sheets count from there.
on-sheets = What is on each sheet
on-sheets-continued = What is on each sheet, continued
one-label = { $layers }; label { $label }
labels = { $layers }; labels { $first } to { $last }

## Why there is no template

empty = a template must have something to draw, got no shape (add a layer)
point = every point of a template must be a number within { $most } mm of the origin, got { $x } mm and { $y } mm in the layer { $layer } (check the lengths)
size = the drawing must be at most { $most } mm wide and high, got { $width } mm by { $height } mm (check the lengths)
measure = a { $what } in the layer { $layer } must be greater than 0 and at most { $most } mm, got { $got } mm (change it)
radius = radius
cross = cross
letter-height = height of letters
angle = an angle in the layer { $layer } must be a number, got { $got } (change it)
short = a line in the layer { $layer } must have at least two points, got fewer (leave the line out)
many = a template must have at most { $most-shapes } shapes and { $most-points } points, got { $shapes } and { $points } (draw fewer layers)
letters = a text, a title and a note must have at most { $most } letters, and there must be at most { $most } notes, got { $got } (shorten it)
overlap = sheets must overlap by { $least } mm to { $most } mm, got { $got } mm (choose another overlap)
too-many-sheets = a template must fit on at most { $most } sheets, got more (print on one large sheet instead, or draw fewer layers)
large-sheet = one large sheet must be at most { $most } mm wide and high, got { $width } mm by { $height } mm (print on small sheets instead)
