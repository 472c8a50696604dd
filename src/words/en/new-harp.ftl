# Beginning with a harp: a new one, one from measurements, a sample.

own = A new harp
measured = From measurements, to restring a harp
title = New harp
how = How to begin
empty = Begin with an empty chart
stays = What is open now stays under Designs, if you changed it.
sample = From a sample

## A new harp

lowest = Lowest string
highest = Highest string
winding = Winding starts at
wrong-end = { $field }: { $why }.
wrong-count = Number of strings: write { $fewest } to { $most } for a { $kind }, or give both ends.
no-findings = No findings on the strings.
findings = { $count ->
    [one] { $count } finding.
   *[other] { $count } findings.
} { $first }
compass = Compass
compass-is = { $low } to { $high }, { $count ->
    [one] { $count } string
   *[other] { $count } strings
}
lengths = Vibrating lengths
range = { $from } to { $to } { $unit }
total = Total tension
wound = Wound strings
feel = Pluck stiffness (feel)
frame = Frame
none-wound = none
wound-from = { $count }, from { $note } down
frame-is = neck { $neck } { $unit } thick, pillar { $wide } × { $deep } { $unit }, soundboard { $bass } to { $treble } { $unit } thick
numbered = { $title }, no. { $number }
wanted = The harp
kind = Kind of harp
material = Main material
count = Number of strings
ends-follow = The ends follow the number, and the number follows the ends.
winding-usual = where it suits
winding-hint = The highest wound string, such as G3. Left empty, it is suggested.
each-has = Each string has
open-to = Open strings tuned to
start = Start
start-notes = Start with the notes only
start-notes-hint = Only the notes; lengths and strings stay empty
clear = Clear the fields
will-be = What will be made
preview-label = Tension and feel across the compass, bass at the left. The lines above give their range.
preview-sources = Compass, lengths and gauges to start from are common practice, no source. The dimensions of the frame follow from an estimate that counts the string rib but no bars; it does not prove that a frame is safe.

## From measurements

not-started-asked = Not started: answer the question beside the list first.
not-started = Not started: { $why }
not-known = not known
table-of-strings = A table from anywhere, or a line for each string: note, length and, if known, the old string. Columns may come in any order. A question mark stands for a length that was not measured.
else-material = Material of strings for which the list names none
without-notes = For a list without notes:
list-highest = Highest string of the list
list-lowest = Lowest string of the list
list-open = Open strings of the list
throw-away = Discard the text
strings = { $count ->
    [one] { $count } string.
   *[other] { $count } strings.
}
questions = Questions
which-column = Which column is what
each-row = What each row becomes
granted = Assumptions
head-heading = Heading
head-first = First cell
head-is = Is
head-bare = Bare numbers are in
head-number = No.
head-note = Note
head-length = Length
head-gauge = Gauge
head-material = Material
head-remark = Remark
b-flat = B flat
b-natural = B natural
column = Column { $number }
column-is = { $column } is
column-unit = Unit of { $column }
left-out = left out
go-there = Go there
go-there-to = Go there: { $gap }
missing-title = First step: what is missing for this harp
missing-none = Nothing is missing: every string has its note, its length and its make-up.
missing-some = Nothing was guessed. What was not measured, or cannot be read, is listed here; what can be worked out without it is already in the chart. You find this list again under What is missing, beside the findings.
choose-instead = Material and gauge need not be measured if the harp gets new strings anyway: Choose strings finds them from notes and lengths alone.
and-more = And { $more } more.
asks-unit = The numbers name no unit and look like { $looks } rather than { $said }. Which are they?
asks-unit-under = The numbers under "{ $heading }" name no unit and look like { $looks } rather than { $said }. Which are they?
asks-b = The notes have B and no H. In German lists B is B flat, in English ones B natural. Which is it?
gap = String { $number }: { $gap }.
gap-noted = String { $number }, { $note }: { $gap }.
gaps = Strings { $strings }: { $gap }.
