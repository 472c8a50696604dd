# The string chart with what stands beside it: tools, columns, findings, summary.

## What can be done with strings

tools = Selected strings
insert = Insert
insert-hint = Insert a string above the cursor (Insert key)
duplicate = Duplicate
duplicate-hint = Repeat the selected strings below
delete = Delete
delete-hint = Delete the selected strings (Ctrl+Delete)
up = Up
up-hint = Move the selected strings up (Ctrl+Shift+Up)
down = Down
down-hint = Move the selected strings down (Ctrl+Shift+Down)
add-treble = Add treble
add-treble-hint = Add a string one note above string 1
add-bass = Add bass
add-bass-hint = Add a string one note below the last string
fill-down = Fill down
fill-down-hint = Copy the first row of the selection into the others (Ctrl+D)
make-up = Make-up
make-up-hint = Material, gauge and windings of the selected strings (Ctrl+Enter)
exchange = Swap material
exchange-hint = Put the selected strings in another material: gut, nylon, fluorocarbon
details = Details
details-hint = Every figure of the string, its partials and levers (Alt+Enter)
explain = How it is worked out
at-most-strings = A design has at most { $most } strings. Delete some first.
computed = This column is computed. Change the note, the length, the string or the gauge.
not-copied = The browser did not put these cells on the clipboard. Copy them again.
too-much = The clipboard holds { $mb } MB of text, far more than a string chart. Copy only the cells you need.
no-text = The clipboard holds no text to paste.
not-pasted = Nothing was pasted: { $why }.
too-many-rows = Nothing was pasted: the block has { $count } rows, and a design has at most { $most } strings.
all-computed = These columns are computed: nothing can be pasted into them.
wound-kept = The gauge of a wound string follows from its windings, so those strings were left as they are.
cell = Cell

## Columns

chart = String chart
empty = No strings yet. Paste notes and lengths from a spreadsheet here, or choose New under Designs.
number-hint = Counted from the top: string 1 is the highest.
number = No.
octave-hint = The harpist's octave: counted from the top, each from E down to F.
octave = Oct.
note-meaning = The note, with the number of its octave: middle C is C4. You can type a frequency instead, such as 443.2 Hz.
note = Note
string-meaning = What it is made of: a material, or a core and what is wound on it.
string = String
gauge-meaning = Diameter; for a wound string the overall diameter, which follows from its make-up.
gauge = Gauge
code-meaning = The supplier's code, for the card and the order. It is cleared when the string changes.
code = Order code
typed-as = Typed: { $typed }
place = String { $number }
place-noted = String { $number }, { $note }
columns-window = Columns of the chart
column-sets = Sets of columns
columns-hint = Number and note always show. Tick a column to show it; move it up to bring it further left. Your own choice is kept in this browser as My columns.
farther-left = Move left
farther-right = Move right
my-columns = My columns
choose-columns = Choose columns…
border = Divider between the view and the curves
border-hint = Drag it, or use the arrow keys. Home and End fold one side away, Enter brings both back.
with-curves = With curves
without-curves = Without curves
curves-alone = Curves only
beside = What is shown side by side
set-working = Working
set-feel = Feel
set-tone = Tone
set-tuning = Tuning and levers
set-workshop = Workshop
set-all = All columns

## Findings

no-findings = No findings on the strings
findings-count = { $count ->
    [one] { $count } finding
   *[other] { $count } findings
}
findings = Findings
missing-hint = What has not been measured or typed yet
missing = What is missing
strings-say = Strings { $first } to { $last }: { $sentence }
all-say = { $count ->
    [one] String
   *[other] Strings
} { $strings }: { $sentence }
range = { $first } to { $last }

## Summary

without-tension = The total leaves out { $count ->
    [one] { $count } string without a tension.
   *[other] { $count } strings without a tension.
}
for-client = for { $client }
tolerances = How far off the strings may be: the usual case, not the worst.
temperature-left-out = Temperature is left out: the drift of these strings is not known.
temperature-left-out-for = { $count ->
    [one] Temperature is left out for { $count } string: its drift is not known.
   *[other] Temperature is left out for { $count } strings: their drift is not known.
}

## A make-up on trial

overall = Overall diameter
core = Core
mass = Mass per metre
breaking-load = Breaking load
tension-at-pitch = Tension at pitch
load-share = Load share
stiffness = Pluck stiffness
frame = Frame
opens-loads = { $frame } Opens the loads.
summary = Summary
strings = Strings
compass = Compass
total = Total tension
tightest = Tightest
