# Tables: what their columns are, and what cannot be read of them.

## Places

in-line = line { $line }: { $said }
in-column = line { $line }, column { $column }: { $said }
of-string = string { $number }, { $column }: { $said }
and-more = { $first } and { $count } more
or = { $first } or { $second }

## Any table

too-large = a table must be at most { $most } MB (choose another file)
open-quote = a quote that opens a cell must be closed (add the missing quote)
empty = the table is empty (its first line must hold the headings)
cell-long = a cell must be at most { $most } characters long, got { $got } (shorten it)
cells-many = a line must have no more cells than there are headings, { $most }, got { $got } (put quotes round a cell that holds a comma)
no-table = this is neither a Stringloft design nor a table with headings such as note and length_mm (choose another file, or put headings in its first line)
strings-many = a table must have at most { $most } strings
heading = { $name }
heading-missing = the headings must have { $names } (name a column so in the first line)
heading-twice = a heading must stand only once (rename one)
layer-material = a layer needs its material (fill in this cell)
layer-diameter = a layer needs its diameter (fill in this cell)
density-needed = the density must be given for a material that is not known (fill in this cell, or name a known material)
entered-with-table = entered with the string table
block-large = a block to paste must be at most { $most } MB (copy fewer cells)
block-rows = a block to paste must have at most { $most } rows, got { $got } (copy fewer cells)
raised = each string has { $mechanism }; a table does not say how far they push it aside
raised-but = each string has { $mechanism }, except { $count ->
    [one] string
   *[other] strings
} { $others }; a table does not say how far they push it aside

## Stock tables

items-many = a stock list must have at most { $most } items (part the table in two; this line and those after it were left out)
bad-many = a table with more than { $most } bad lines is not read further (check which column is what)
material-missing = the material is missing (fill in this cell, or say what the whole list is of)
material-unknown = the material "{ $name }" is not known here, so nothing can be worked out for this item (add the material, or write a known one)
bundle-count = a bundle must say how many strings it holds, at most { $most }, got "{ $got }" (write it like bundle of 12)
pack-kind = a pack must be coil, single or bundle, got "{ $got }" (write one, like bundle of 12)
price-number = a price must be a number that can be read in one way, got "{ $got }" (write it like 12.50)

## What a column is

whole-make-up = whole make-up
material = material
gauge = gauge
order-code = order code
supplier = supplier
coil-or-single = coil or single
pack-length = length of a pack
pack-price = price of a pack
currency = currency
in-stock = in stock
lowest-note = lowest note
highest-note = highest note
remark = remark
number = number
note = note
octave = octave
pitch-hz = pitch in Hz
length = length
material-and-gauge = material and gauge
winding-material = winding material
winding-gauge = winding gauge

## Units

millimetres = millimetres
centimetres = centimetres
metres = metres
inches = inches
thousandths = thousandths of an inch
feet = feet
hundredths = hundredths of a millimetre

## A table in anyone's hand

column-number = column { $number }
column-named = column "{ $heading }"
taken-size = { $column } is { $field }, bare numbers in { $unit }
taken = { $column } is { $field }
left-out = { $column } is left out
cells-cut = what stands in a line after { $most } cells was left out
no-string-in-line = line { $line } holds no string: { $words }
turned-round = the list began with the lowest string and was turned round
doubles = { $count ->
    [one] 1 note has
   *[other] { $count } notes have
} two strings
plain-b-natural = B was taken for B natural: it may be B flat, as in German lists, or B natural (write Bb, or H for B natural)
plain-b-left = B was left out: it may be B flat, as in German lists, or B natural (write Bb, or H for B natural)
unit-taken = { $column } names no unit; its numbers were taken for { $looks }
unit-left = { $column } was left out: it names no unit, and its numbers look like { $looks } rather than { $said } (put the unit into its heading)
german-h = H is the B of English names, and B is B flat
german-b = B is B flat, as in German lists
octaves-harp = octaves are counted as harpists do, from the top, each from E down to F
octaves-helmholtz = c′ is middle C, c the one below
octaves-french = octaves are counted so that la3 is A4
note-inferred-one = the note of 1 string without one follows from its neighbours
note-inferred-some = the note of some strings without one follows from its neighbours

## Tuning from frequencies

tuned-as = the frequencies beside the notes are those of A4 at { $pitch } Hz in { $temperament }
tuned-apart = { $frequency } beside { $note } is another pitch, so the string keeps { $frequency }
equal = equal temperament
pythagorean = Pythagorean tuning
meantone = quarter-comma meantone
just-on-c = just intonation on C
