# The stock, what strings cost, and how they are sold.

## Which item a string is

no-make-up = no make-up is given (choose what the string is made of)
no-code = no stock item has the order code "{ $code }" (add it to the stock, or clear the code)
other-make-up = the stock item with the order code "{ $code }" is { $item }, not { $string } (change one of them)
not-listed = no stock item is { $string } (add it to the stock, or choose another gauge)

## Prices

no-price = the stock item has no price (fill it in)
no-pack-length = the stock item is a coil of unknown length (fill in the pack length)
no-cut-length = the length to cut is not known (give the vibrating length and the gauge)
pack-short = the string is cut to { $cut } mm, and a pack holds { $pack } mm (choose a longer pack)

## Packs

packs-outside = how it is sold is not known (add it to the stock)
packs-length = how much is in a coil is not known (fill in the pack length)
packs-cut = the length to cut string { $number } to is not known (give its length and gauge)
packs-short = string { $number } is cut to { $cut } mm, longer than a pack (choose a longer pack)
coil = coil
single = single
bundle = bundle of { $count }
coil-of = coil of { $metres } m
single-of = single, { $metres } m
bundle-of = bundle of { $count }, each { $metres } m

## Remarks on a line of the order

outside = not in the stock list
sold-out = not available now
strings = { $count ->
    [one] string
   *[other] strings
} { $numbers }
not-for-note = not sold for the note of { $strings }
not-exact = not the exact size of { $strings }, but the nearest in the stock
coils-unsettled = { $count } coils are enough; whether { $least } would do could not be settled
price-missing = no price is given
spare = spare: { $lengths }

## Sums

lines = { $count ->
    [one] 1 line
   *[other] { $count } lines
}
both = { $first } and { $second }
lack-length = { $count ->
    [one] 1 lacks the pack length
   *[other] { $count } lack the pack length
}
sum = { $lines }: { $sums }
sum-no-price = { $lines }, no price is known
sum-none = { $lines }, no sum can be given: { $why }
sum-at-least = { $lines }, { $without } without a price: at least { $sums }
sum-at-least-why = { $lines }, { $without } without a price ({ $why }): at least { $sums }

## Files of lists

list-too-large = a stock list must be at most { $most } MB (choose another file)
list-empty = the file is empty (choose a stock list that Stringloft saved, or a table)
list-unreadable = this stock list cannot be read: { $what } (mend the file or choose another)
list-other-kind = this JSON is not a stock list (it lacks "stringloft-stock" with the version of the list)
list-is-design = this file is a design, not a stock list (open it as a design)
list-too-new = this stock list is of version { $found }, and version { $version } can be read here (reload the page to get the newest Stringloft)
list-many = a stock list must have at most { $most } { $what }, got { $got } (split it in two)
list-long = the { $what } of a stock list must be at most { $most } characters long, got { $got } (shorten it)
what-items = items
what-materials = materials
what-name = name
what-currency = currency
what-remark = remark
what-material-name = name of a material
what-material-source = source of a material

## The list to start from

usual = Usual gauges
usual-remark = Gauges that are usual in the trade: common practice, no source, from memory. Ask your supplier what can be had, and fill in codes and prices.
