# The order list: on the page, on paper, and what it says of its lines.

## The page

panel = Order
nothing = There is nothing to order yet: say what the strings are made of.
print = Print
print-hint = The order list on paper
csv = Save as CSV
csv-hint = The whole order list, for a spreadsheet
csv-of = Save as CSV: order of { $supplier }
table-of = Order of { $supplier }
outside-hint = What the stock list does not have is ordered by description: its packs and prices are not known.
fill-in = Order codes, pack lengths and prices are filled in under Stock.
open-stock = Open Stock
put-codes = Put codes and prices into this design
new-codes = The stock list "{ $list }" has codes or prices that this design does not hold yet. Codes in the design come first, and a link or a file carries no others.
codes-kept = The design now holds codes and prices of { $count ->
    [one] { $count } item
   *[other] { $count } items
}.
supplier-outside = Not in the stock list
supplier-none = No supplier named
of-every-line = For every line: { $said }
head-make-up = Make-up
head-code = Order code
head-strings = Strings: cut to, mm
head-sold-as = Sold as
head-pieces = Pieces
head-metres = Total, m
head-packs = Packs
head-price = Price
pieces-with-spares = { $pieces } + { $spares } spare
unknown = { $count ->
    [one] String
   *[other] Strings
} { $strings }: { $why }.

## Spares and remarks

settings = Spares and remarks
spares = Spares
spares-none = None
spares-item = One of each item, as long as its longest string
spares-string = One for each string
spares-percent = A share of the strings of each item, rounded up
remarks = Remarks for the supplier
