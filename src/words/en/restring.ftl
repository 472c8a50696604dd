# Someone else's harp: what was measured, and strings of another material.

## The list of lengths

too-large = a list of lengths must be at most { $most } MB (paste fewer lines)
empty = the list is empty (write a length on each line, from the highest string down)
count = from { $highest } down to { $lowest } there are { $wanted } strings, but the list has { $got } lines (change a note, or add the missing lines)
no-string = there is no string in it (write a line for each: its note and its length)
too-many = a list of lengths must have at most { $most } strings (paste fewer lines)

## What is missing

note-missing = the note is missing (write it like A4)
length-missing = the vibrating length was not measured (measure from the soundboard to the bridge pin)
material-missing = what the string is made of is not known (look, or weigh a piece)
gauge-missing = the gauge was not measured (measure at several places)

## Another material

same-tension = same tension
same-force = same pluck force
same-mass = same mass
material-unknown = the material "{ $name }" is not known (choose another)
stock-lacks = the stock has no plain { $material } for this note
nearest-thicker = the nearest gauge is { $percent } % thicker than wanted
nearest-thinner = the nearest gauge is { $percent } % thinner than wanted
not-there = there is no such string
not-plain = only plain strings can be swapped, and this one is not plain
not-known = what the string is made of is not known
no-tension = its tension cannot be worked out (give length, note, material and gauge)
no-gauge = no gauge of this material works
total = Total tension: { $before } before, { $after } after.
total-change = Total tension: { $before } before, { $after } after ({ $change } %).
totals-lack = The totals leave out { $count } strings.
share-of = { $string } at { $share } % of its breaking load
tightest = Tightest before: { $before }. After: { $after }.
margin-of = { $margin } semitones ({ $string })
margin = Lowest margin to breaking of the changed strings: { $before } before, { $after } after.
