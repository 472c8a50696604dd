# The window of the stock lists: what there is to buy.

## Lists

list-gone = that stock list is no longer kept in this browser
unnamed = List without a name
unreadable = Unreadable: { $why }
in-use-not-opened = The stock list in use was not opened: { $why }. Open Stock to choose another.
title = Stock
left-out = Lines that were left out
new-name = New stock list
in-use = List in use for choosing and ordering
name = Name
currency-usual = Currency of prices that name none
new-list = New list
new-list-hint = An empty list
usual = Usual gauges
usual-hint = A list of usual gauges to start from: common practice, from memory
remove-list = Remove list
remove-list-hint = Remove this list for good
open-file = Open a file
open-file-hint = A stock list of Stringloft, or a CSV table
paste-table = Paste a table
paste-table-hint = Paste a table from a spreadsheet
save-csv = Save as CSV
save-csv-hint = Save the list as CSV, for a spreadsheet
save-file = Save as file
save-file-hint = Save the list as a file of Stringloft
file-not-opened = { $name } was not opened: { $why }.
not-kept = This browser does not keep the stock list. It stays in use until you leave the page: save it as a file.
leave = This browser does not keep the stock list, so its last changes will be gone. Go on anyway?
list-not-opened = The stock list was not opened: { $why }.
changed-elsewhere = The stock was changed in another tab.
list-spoilt = The stock list was not opened: { $why }. It stays as it is until you remove it.
now-in-use = "{ $name }" is now in use.
refused = That was not accepted: { $why }.
refused-list = That was not accepted: { $why }. Make a new list first.
from-table = Stock from a table
from-table-next = Stock from a table { $number }
remove-asked = Remove the stock list "{ $name }" from this browser for good? Designs keep the codes and prices that they hold.
list-removed = "{ $name }" was removed.
list-not-removed = "{ $name }" was not removed: { $why }.
item-removed = { $item } was removed.
not-kept-because = This browser does not keep the stock list: { $why }. It stays in use until you leave the page: save it as a file.
listed-not-kept = { $name } (not kept)

## Items

make-up = Make-up
code = Order code
supplier = Supplier
pack = Pack, mm
price = Price
currency = Currency
from-note = From note
to-note = To note
remark = Remark
bad-price = a price must be a number that can be read in one way, got "{ $got }" (write it like 12.50)
not-kept-yet = Not kept yet: { $why }.
ends-crossed = the lowest note must not lie above the highest (change one of them)
make-up-missing = the make-up is missing (write it like nylon 0.81)
material-unknown = the material "{ $material }" is not known here (write a known one, or add it under Materials)
empty = This list is empty: add an item, open a file or paste a table.
items = { $count ->
    [one] { $count } item
   *[other] { $count } items
}
items-of = { $found } of { $all } items
show-only = Show only
show-only-hint = gut, or part of a code
add-item = Add an item
items-table = Items of the stock list
item = Item
more-items = Show more items
sold-as = Sold as
in-stock = In stock
item-called = item { $number }
remove = Remove
remove-item = Remove { $item }
cell-of = { $head } of { $item }
coil = coil
single = single
bundle = bundle
bundle-of = Strings in a bundle of { $item }
item-sold-as = { $item } is sold as
item-had = { $item } is available

## A table of anyone

paste = A table with headings in its first line, copied from a spreadsheet or a price list
read = Read the table
back = Back to the list
range = { $low } to { $high }
no = no
yes = yes
and-more = And { $more } more.
no-good-line = No line of the table is good yet: check which column is what.
new-list-from = A new list with { $count ->
    [one] { $count } item
   *[other] { $count } items
} from the table is now in use.
added = Items from the table: { $added } new, { $updated } changed.
odd-taken = Nothing can be worked out for { $count } of them.
left-out-told = These lines were left out:
take-good = Take the good lines
add-to = Add to "{ $name }"
take-new = Take as a new list
take-new-hint = A list of its own, which is then in use for choosing and ordering
which-column = Which column is what
columns-table = Columns of the table
head-heading = Heading
head-first = First cell
head-is = Is
head-bare = Bare numbers are in
else-material = Material of lines that name none
what-read = What is read
first-lines = First good lines
notes = Notes
bad-lines = Lines that are left out
odd-lines = Lines that are odd
good = { $count ->
    [one] { $count } good line
   *[other] { $count } good lines
}
odd = { $count ->
    [one] { $count } odd line
   *[other] { $count } odd lines
}
bad = { $count ->
    [one] { $count } bad line left out
   *[other] { $count } bad lines left out
}
columns-left-out = Columns left out: { $columns }.
unit-of = Unit of column { $column }
column-is = Column { $column } is
column-left-out = left out
