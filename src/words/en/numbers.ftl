# The numbers, explained: the window, what stands around its pages, and its tables.

## The window

window = The numbers, explained
topics = Topics
column-in = Column { $heading } of the table, in { $unit }.
column-pure = Column { $heading } of the table, a pure number.
formula-for = { $what }:
units = In the formulas, put lengths in m, masses in kg, tensions in N, stresses and moduli in Pa.
head-letter = Letter
head-meaning = Stands for
head-example = In the example
example = Example, worked out here with the usual settings: { $string }.
assumptions = Assumptions
range = Where it applies
missing = When there is no figure
sources = Sources
checks = How it was checked
check = { $what }. Source: { $source }

## How well something is known

standing-seen = read in the source
standing-second-hand = second-hand: as another text quotes it
standing-computed = worked out
standing-from-memory = from memory: verify before you rely on it
standing-own = entered by you

## Topics that are no figure

title-partials = Partials
title-tolerance = Tolerance
title-materials = Materials
title-findings = Findings and limits
title-pitch = Notes and temperaments
title-keys = Keys
title-loads = Loads on the frame
title-woods = Woods and plywood
title-giving = Flexing during stringing
title-years = Over the years
title-choosing = Choosing strings
title-lengths = Better lengths

## Numbers and units

span = { $least } to { $most } { $unit }
unit-cents = cents
unit-cents-per-degree = cents per degree
unit-cents-per-kelvin = cents per kelvin
unit-degrees = degrees
unit-millionths-per-kelvin = millionths per kelvin
unit-semitones = semitones
unit-turns = turns
unit-years = years

## The strings of the examples

example-nylon = A4, 448 mm long, nylon 0.81 mm, with a lever
example-disc = A4, 448 mm long, nylon 0.81 mm, with one disc
example-discs = A4, 448 mm long, nylon 0.81 mm, with two discs
example-steel = A5, 250 mm long, steel music wire 0.30 mm
example-wound = A2, 900 mm long, steel 0.50 mm closely wound with bronze 0.30 mm, bare for 12 mm at the soundboard and 15 mm at the pin

## Tables of materials, woods and temperaments

table-of-design = Materials of this design
table-others = The other materials that come with the program
table-woods = The woods that come with the program
table-temperaments = Cents from equal temperament, A being the same
head-material = Material
head-wood = Wood
head-temperament = Temperament
head-figure = Figure
head-value = Value
head-source = Source
head-known = How well known
fact-density = Density
fact-density-off = Tolerance of density
fact-diameter-off = Tolerance of diameter
fact-modulus = Modulus in vibration
fact-modulus-minutes = Modulus over minutes
fact-modulus-weeks = Modulus over weeks
fact-strength = Strength
fact-expansion = Expansion
fact-loss = Loss factor
facts-missing = Not known
fact-modulus-bending = Modulus in bending
fact-bending = Bending
fact-compression-along = Compression along the grain
fact-compression-across = Compression across the grain
fact-shear = Shear
fact-tension-across = Tension across the grain
strength-allowed = { $strength }, allowed under a lasting load { $allowed }
modulus-rising = { $base } + { $rise } times the stress
strength-table = { $first } at { $first-at } to { $last } at { $last-at }, { $diameters } diameters
step-up-to = { $value } up to { $most }

## A cut through the neck by hand

hand-pillar = The pillar
hand-beyond = By hand: what pulls at the neck beyond a cut, on the sample of 36 strings
hand-force = Force
hand-at-x = x in mm
hand-at-y = y in mm
hand-to-x = X in N
hand-to-y = Y in N
hand-steps = The same cut, step by step, with a pillar that only pushes
hand-step = Step
hand-numbers = Numbers
hand-cut = The cut
hand-direction = Its direction
hand-sums = Sum of X, sum of Y
hand-along = Along the neck
hand-across = Across the neck
hand-bending = Bending
hand-torque = Torque and sideways bending
hand-torque-is = T = { $torque }, M′ = { $sideways }, of the strings alone, as the pillar pushes in the middle plane
hand-stress = Stress along the grain
hand-shear = Shear stress
hand-used = Share of the allowable stress
hand-use = { $aspect }: { $stress } of { $limit }: { $share }
