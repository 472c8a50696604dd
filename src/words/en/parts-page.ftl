# The view of the parts of the harp.

nothing = There are no parts to show yet: { $why }.
give-sizes = Give the sizes in the drawing
take-usual = Take usual sizes for the soundbox
usual-hint = Usual sizes follow from the longest string and the width of the soundboard: common practice, no source. Check them before you saw.
usual-taken = The soundbox has usual sizes now: common practice, no source. Check them before you saw; they stand in Drawing, under Woods.
shown = Show
in-space = In space
three-sides = From three sides
template = Template
planks = Planks and sheets
space-of = The harp in space
space-help = Left and right turn the harp, up and down tilt it, plus and minus make it larger and smaller, 0 shows it whole again.
space-hint = Drag to turn, press a part to find it in the list. Scroll or pinch to zoom.
sides-hint = One to ten. Dashed: what lies inside the soundbox.
template-hint = As it is cut at full size; the files carry the same at one to one.
planks-hint = How the roughly sawn pieces lie on planks and sheets of the sizes that stand under "Sizes, saw and prices".
list = Parts
list-hint = Choose a part to see its template.
nothing-chosen = Choose a part in the list at the side.
head-mass = Weight
no-mass = not known
grams = { $mass } g
worth = Worth a look ({ $count })
worth-and-unjudged = Worth a look ({ $count }), not judged ({ $unjudged })
nothing-found = Nothing found to put right.
files = Files
files-of = Template of: { $part }
table = All figures as a table (CSV)
table-hint = Parts with their sizes, how they lie on planks, what is needed besides the wood, weight and balance
save-sides = Three sides as a picture (SVG)
dxf = DXF for the cutter
svg = SVG in millimetres
a4 = PDF on sheets of A4
letter = PDF on sheets of Letter
one-sheet = PDF on one sheet
board-number = { $wood }, { $thick } mm: { $number } of { $count }
stands = The wood weighs { $mass } kg. The harp may be tilted { $front }° to the front, { $player }° to the player and { $aside }° to a side before it falls. Balanced on its rear foot, its shoulder comes to { $shoulder } mm above the floor.
stands-unknown = { $count ->
    [one] What the harp weighs and how it stands cannot be told: the density of the wood of one part is not known.
   *[other] What the harp weighs and how it stands cannot be told: the density of the wood of { $count } parts is not known.
}
sizes-of = { $long } × { $wide } × { $thick } mm, { $wood }
head-part = Part
sizes = Sizes, saw and prices
print = Print the cutting list and the order of building
print-hint = Parts, planks and sheets, what is needed besides the wood, weight
all-a4 = All templates on sheets of A4 (PDF)
all-letter = All templates on sheets of Letter (PDF)
all-hint = One page with all parts small, then each part at full size
guides = Guides for the drill (PDF)
guides-hint = Blocks that hold the drill at its angle, with where it stops
no-guides = Nothing is drilled from the face of this part.
