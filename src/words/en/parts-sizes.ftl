# Sizes for the saw that the frame does not say, and what woods cost.

## Heads and hints of the form

base-and-blocks = Base, blocks and joints
base-hint = The feet become higher where the tenon of the pillar needs it, and the knee block where the tenon of the neck does.
sawing = Saw and glue
sawing-hint = Rough sizes are larger than finished ones by so much. Room for glue makes a mortise wider and deeper than its tenon.
planks-and-sheets = Planks and sheets you buy
planks-hint = A part that is wider than a plank is glued up of strips, and one that is thicker, of layers.
prices = What woods cost
price-of-planks = a cubic metre of planks
price-of-sheets = a square metre of a sheet

## The sizes

base = Thickness of the base
base-beyond = Base beyond what stands on it
base-behind = Base farther behind the back
feet = Height of the feet, at least
foot-block = Foot block along the base
knee-block = Height of the knee block, at least
brace = Width of the braces
tenon-shoulder = Shoulders of tenons
under-tenon = Wood left below a tenon
back-rise = Rise of a bent back at its lower end; 0 for a flat one
glue-room = Room for glue round a tenon
kerf = What the saw takes
on-length = Added to the length
on-width = Added to the width
on-thickness = Added to the thickness
plank-length = Length of a plank
plank-width = Width of a plank
plank-thickness = Thickest plank
sheet-length = Length of a sheet
sheet-width = Width of a sheet

## Cost

head-cost = Cost
all-woods = All that has a price
left-out = { $count ->
    [one] One wood has no price.
   *[other] { $count } woods have no price.
}
cost-hint = Whole planks and whole sheets, in the currency of your prices.
