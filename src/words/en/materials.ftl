# The materials of the strings: their panel, their figures, what is wrong with them.

## The panel

panel = Materials
left-out = Left out, as it cannot be used: { $left }.
empty-hint = An empty field means not known, and then what follows from it is not known either. A table has a row for each diameter, such as 0.50 310.
built-in = Built in. A change here changes the copy of this design only; other designs keep theirs.
built-in-changed = Built in, with figures changed in this design only; other designs keep theirs.
own-unused = Belongs to this design; no string uses it yet.
own-used = Belongs to this design. Give its strings another material before you remove it.
back = Back to the built-in figures
back-done = Back to the built-in figures.
remove = Remove
removed = Removed { $key }. Undo brings it back.

## The list

used = { $count ->
    [one] used by { $count } string
   *[other] used by { $count } strings
}
unused = not used
listed-changed = { $used }, changed
listed-own = { $used }, your own
listed-built-in = built in, not used
listed-unfinished = , unfinished

## A figure

density = Density
density-spread = Tolerance of density
diameter-spread = Tolerance of diameter
modulus = Modulus in vibration
intermediate-modulus = Modulus over minutes
slow-modulus = Modulus over weeks
strength = Strength
expansion = Thermal expansion
loss-factor = Loss factor in bending
unit-mm-or-percent = mm or %
unit-millionths = millionths per kelvin
times-the-stress = times the stress
not-known = not known
rise-of = { $label }: rise with the stress
with-unit = { $label }, { $unit }
between = Between the rows of the table
straight = Straight lines between rows
steps = Each row holds up to its diameter
source-alone = source without a figure
source-of = Source of: { $label }
source-asked = source: where the figure comes from
seen = read in the source
second-hand = second-hand
computed = computed from read figures
from-memory = from memory
entered = entered by you
taken = Used as the { $label } of { $name }: { $text } { $unit }.
use-as = Use as { $label }

## Names and kinds

metal = Metal
polymer = Polymer
natural = Gut or silk
name = Name
kind = Kind
short-name = Short name (shown in the chart)
rename = Rename
copy = Copy under this short name
renamed = { $name } is now { $key } in the chart; its strings follow.
copied = Copied { $name } into this design.
names-stay = A built-in material keeps its names and its kind. To have your own, write another short name and copy it.
new = New material
new-short = Short name, for the chart
new-short-example = horsehair
new-full = Full name
new-density = Density, kg/m³
use-as-density = Use as its density
add = Add
added = Added { $name }.

## What was typed and not used

left-new = a new material that was not added
left-name = name of { $name }
left-key = new short name of { $name }
left-figure = { $label } of { $name }

## What is wrong

wrong-row = row { $number }: { $error }
wrong-pair = row { $number } must hold a diameter and { $what }, got "{ $got }" (write it like { $example })
a-strength = a strength
a-deviation = a tolerance
of-deviation = tolerance of the diameter
of-density = density
of-density-deviation = tolerance of the density
of-modulus = modulus
of-strength = strength
of-expansion = expansion
of-loss-factor = loss factor
of-rise-of-modulus = rise of the modulus with the stress
of-table-strength = diameter in the table of strength
of-table-deviation = diameter in the table of tolerances
pure-number = (a pure number)
wrong-key = the short name of a material must have 1 to { $most } letters, got "{ $got }"
wrong-figure = the { $what } of "{ $key }" must be from { $least } to { $most } { $unit }, got { $got }
wrong-rows = a table of "{ $key }" must have 1 to { $most } rows, got { $got }
wrong-order = the diameters in a table of "{ $key }" must rise, got { $got } mm after { $after } mm
a-name = name
a-short-name = short name
naming-empty = the { $what } is missing (write a short word for it)
naming-long = the { $what } must have at most { $most } letters, got { $got } (shorten it)
naming-cell = the short name must read as one word of a make-up, got "{ $got }" (leave out signs and sizes)
naming-taken = "{ $got }" already means { $other } (choose another { $what })
