# The page as a whole: its top, its views and menus, and what it tells.

## The top

undo-hint = Undo (Ctrl+Z)
undo = Undo
redo-hint = Redo (Ctrl+Y)
redo = Redo
skip = Skip to the view
title = Name of the instrument
acts = Design menus
instrument = Instrument
share = Print and share
help = Help
new = New
restring-hint = From its measurements, typed or pasted
restring = Restring a harp
open-hint = Open a design file or a table; you can also drag it onto the page
open = Open a file
shelf = Designs in this browser
save-hint = Save the design as a file (Ctrl+S)
save = Save as a file
designs = Designs
setup-hint = Pitch, client, limits, allowances
setup = Pitch, units, limits
materials-hint = Figures of the materials, materials of your own, weighing and breaking tests
materials = Materials
stock-hint = The strings and wires that you can buy: gauges, order codes, prices
stock = Stock
card = Stringing card
report-hint = For your file, to print: strings, curves, drawing, loads, findings, sources
report = Design report
templates-hint = Templates at full size: DXF, SVG, PDF, and the pin schedule
templates = Templates
table-hint = Save the table of all figures as CSV, for a spreadsheet
table = Table of figures
link = Link to this design
light = Light colours
dark = Dark colours
numbers = The numbers, explained
about = About
shortcuts = Shortcuts
colours-forgotten = This browser does not remember the colours: { $why }.
language-not-kept = This browser does not remember the language: { $why }.

## The views

chart = String chart
chart-hint = Every string: type, and see what follows
drawing = Drawing
drawing-hint = The harp to scale: shape, woods, loads, files for printer and cutter
parts = Parts
parts-hint = The whole harp part by part, for the saw
choose = Choose strings
choose-hint = The best set of strings from a stock, and better lengths
order = Order
order-hint = What to order, and what it costs
versions = Versions
versions-hint = Keep versions of the design, and compare them
views = Views
strings = Strings
chart-help = Arrow keys move, Enter types, Escape then Tab leaves the chart, F6 goes to the findings.

## Parts and the program

not-printed = Stringloft cannot print this yet: a part of it has not arrived. Close this, then press Ctrl+P.
link-missed = The link was not opened: a part of Stringloft did not arrive. Check the connection, then reload the page.
newer = A newer version of Stringloft is ready. It opens when you next load the page.
curves = Curves
opening = Opening…
not-here = Not here yet
close = Close
missed = This part of Stringloft did not arrive. Check the connection, then try again. Everything else goes on working.
try-again = Try again
not-done = This was not done: a part of Stringloft did not arrive. Check the connection, then try again.

## Notices

dismiss = Dismiss
not-kept = Not kept: this browser stores nothing, as { $why }. Save the design as a file before you leave the page.
keep-mine = Keep mine as a copy
load-it = Load it
elsewhere-changed = This design was changed in another tab. Here it is as it was before; if you change it here, that becomes a copy.
elsewhere-gone = This design was moved to the bin in another tab. Here it is as it was.
from-link = A copy from a link, not yet saved here. Changing it saves your own copy.
keep-copy = Save a copy here
a-sample = A sample. Change it as you like, or start your own with New, under Designs: a new harp, one from measurements, or another sample.
handed = Handed to this browser's downloads as { $name }.
not-handed = this browser did not take { $name } as a download (try again, or open the page in another browser)
file-too-large = { $name } has { $mb } MB; a design or a table has at most 5 MB. Choose another file.
file-unread = { $name } could not be read. Choose it again, or another file.
storage-full = its storage is full
storage-shut = its storage is switched off, or refuses to store
backup-too-large = it is larger than a backup can be
backup-unread = it could not be read (choose it again)

## What was kept, and what was opened

refused = That was not accepted: { $why }.
frame-not-yet = not worked out yet
frame-later = A part of Stringloft that is fetched after the chart works this out.
columns-forgotten = This browser does not remember the columns: { $why }.
link-not-opened = This link was not opened: { $why }.
not-opened = { $name } was not opened: { $why }.
opened = Opened { $name }.
and-more = And { $more } more.
not-read = { $name } was not read: { $errors }
columns-left-out = Columns left out: { $columns }.
read-strings = Read { $count ->
    [one] { $count } string
   *[other] { $count } strings
} from { $name }.
copied = This design was changed in another tab too. Both are kept: what was changed in this tab is a copy of its own.
keeping = keeping…
not-kept-here = not kept in this browser: { $why }
kept-at = Kept { $time }
copy-of = { $name } (copy)
kept-here = Kept in this browser.
list-clash = That design was changed in another tab first, so your change in the list was not accepted.
design-not-opened = That design was not opened: { $why }.
let-go = This browser does not keep the open design, so it will be gone. Open the other one anyway?
last-not-opened = The last open design was not opened: { $why }.
change-not-kept = This browser did not keep the last change: { $why }. Save the design as a file.
declined = Nothing else was opened: the design stays as it is.
given-back = What you were typing when you left the page is back in its cell. Enter accepts it, Escape leaves the cell as it was.

## Fields

write-or-empty = Write { $asked }, or leave it empty.
write-such = Write { $asked }, such as { $value }.
write = Write { $asked }.
back-to = Back to { $value }.
back-empty = Empty again.
remove-row = Remove { $of } { $row }
remove = Remove
no-room = Nothing was pasted: { $lines } rows were copied, and there is room for { $room }.
no-number = Nothing was pasted: "{ $got }" in row { $line } of what was copied is no number that fits here.
