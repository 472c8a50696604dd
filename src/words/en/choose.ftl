# Choosing strings and lengths: what is proposed, how sure it is, and why there is nothing better.

## Strings within a sentence

string-at = string { $number }, { $note }
string-numbered = string { $number }
strings-from-to = strings { $first } to { $last }
kind-wound = { $layer } wound on { $core }
kind-wound-over = { $layer } wound over { $under } on { $core }
kind-over = { $over } over { $under }
and = { $others } and { $last }
or = { $others } or { $last }
more = { $listed } and { $count } more

## Before and after

line-off-feel = off the target feel, on average
line-off-tension = off the target tension, on average
line-off-most = furthest off target
line-step = largest jump off the curve
line-changes = changes of material
line-different = different strings and wires
line-price = price of these strings
line-total = tension of all strings
line-feel = feel, lowest to highest
line-share = load share, lowest to highest
line-longest = longest string
line-kink = pin furthest off the curve of its neighbours
price-and-without = { $price }, and { $count ->
    [one] 1 string
   *[other] { $count } strings
} without a price
total-of-some = { $total }, { $with } of { $all } strings
from-to = { $low } to { $high } { $unit }

## How sure it is

is-there = the harp already has this set
nearer = the strings on the harp are nearer the target
nearer-but = the strings on the harp are nearer the target, but { $broken }
proved = this set is proved to be the best: no other { $from ->
    [both] from this stock and the strings on the harp
   *[stock] from this stock
} meets the limits{ $total ->
    [true] , that on the total tension among them,
   *[false] { "" }
} and comes nearer the target
within = this set is within { $share } % of the best possible (no more could be proved)
unlisted-stay = { $count ->
    [one] 1 string on the harp stays as now, though it is not in this stock list
   *[other] { $count } strings on the harp stay as now, though they are not in this stock list
}
tie = another set is just as good; it first differs on { $string } (where two are equal, the one listed first in the stock is used)

## Why there is none

stock-empty = the stock has nothing that can be used (add strings to it, or choose another list)
nothing-for = the stock has nothing for { $strings }: { $reason } ({ $remedy })
no-set = no set meets all limits (widen one of them)
no-item-there = no item can be used there
cannot-keep = { $count ->
    [one] { $limits } cannot be met on { $strings }
   *[other] { $limits } cannot be met together on { $strings }
} ({ $remedies })
cannot-keep-least = { $count ->
    [one] { $limits } cannot be met on { $strings }
   *[other] { $limits } cannot be met together on { $strings }
}; the lowest total tension of any set is { $total } ({ $remedies })
passed-share = the highest load share is exceeded on { $strings }, by up to { $over } %
missed-share = the lowest load share is missed on { $strings }, by up to { $over } %
passed-total = the highest total tension is exceeded by { $over } %
passed = { $limit } is exceeded
not-kept = { $limit } is not met on { $strings }
alternative = { $count ->
    [one] 1 different string
   *[other] { $count } different strings
}, { $off } % off target on average

## Limits

limit-most-share = the highest load share
limit-least-share = the lowest load share
limit-unknown-share = the rule that the breaking load must be known
limit-thin = the thinnest gauge of the zone
limit-thick = the thickest gauge of the zone
limit-unknown-gauge = the rule that the gauge must be known in a zone of gauges
limit-place = where a kind of string may be used
limit-note = the notes that strings are sold for
limit-stock = what is in stock
limit-order = the order of the kinds of string
limit-shrinking = the rule that no string, and no core, is thinner than the one above it
limit-jump = the largest jump in feel from string to string
limit-changes = the number of changes of material
limit-items = the number of different strings
limit-total = the highest total tension
limit-breaks = the rule that no string breaks
limit-no-tension = the rule that the tension can be computed

## What is wrong with items

why-tight = { $count ->
    [one] { $count } is too tight
   *[other] { $count } are too tight
}
why-slack = { $count ->
    [one] { $count } is too slack
   *[other] { $count } are too slack
}
why-unknown-load = { $count ->
    [one] { $count } has no known breaking load
   *[other] { $count } have no known breaking load
}
why-thin = { $count ->
    [one] { $count } is too thin for the zone
   *[other] { $count } are too thin for the zone
}
why-thick = { $count ->
    [one] { $count } is too thick for the zone
   *[other] { $count } are too thick for the zone
}
why-unknown-gauge = { $count ->
    [one] { $count } has no known gauge
   *[other] { $count } have no known gauge
}
why-kind = { $count ->
    [one] { $count } is of a kind not allowed there
   *[other] { $count } are of a kind not allowed there
}
why-note = { $count ->
    [one] { $count } is not sold for this note
   *[other] { $count } are not sold for this note
}
why-stock = { $count ->
    [one] { $count } is not in stock
   *[other] { $count } are not in stock
}
why-breaks = { $count ->
    [one] { $count } is so tight that it breaks
   *[other] { $count } are so tight that they break
}
why-stiff = { $count ->
    [one] { $count } is too stiff for this length
   *[other] { $count } are too stiff for this length
}
why-neighbours = { $count ->
    [one] { $count } does not fit its neighbours
   *[other] { $count } do not fit their neighbours
}

## What to do about limits

do-most-share = raise the highest load share, shorten these strings, or add thicker or stronger strings to the stock
do-least-share = lower the lowest load share, lengthen these strings, or add strings to the stock
do-unknown-share = fill in the strength of the material
do-zone = widen the zone of gauges
do-place = allow another kind of string there
do-note = widen the notes that the items are sold for
do-stock = add what is missing to the stock
do-order = change the order of the kinds, or unlock a string
do-shrinking = unlock a string, or add gauges to the stock
do-jump = allow a larger jump, unlock a string, or add gauges to the stock
do-changes = allow one more change
do-items = allow more different strings
do-total = raise the highest total tension, or shorten the strings
do-lengths = change the lengths, or add strings to the stock
do-stock-strings = add strings to the stock

## What was left out

left-thick = { $count ->
    [one] 1 plain string thicker than the thickest plain string allowed is left out
   *[other] { $count } plain strings thicker than the thickest plain string allowed are left out
}
left-unread = { $count ->
    [one] 1 item
   *[other] { $count } items
} of the stock cannot be read: { $list }
left-sold-out = { $count ->
    [one] 1 item of the stock is sold out
   *[other] { $count } items of the stock are sold out
}: { $list }
left-currency = prices are compared in one currency, so { $count ->
    [one] 1 item in another counts at a usual price
   *[other] { $count } items in another count at a usual price
}
left-without = { $count ->
    [one] 1 string
   *[other] { $count } strings
} without length or note cannot be given a make-up: { $list }
left-no-place = no string of the harp lies where { $kind } may be used (widen its notes)
left-kinds = { $count ->
    [one] 1 item of kinds that are not listed is left out
   *[other] { $count } items of kinds that are not listed are left out
}
strings-of = the strings of { $kind }: { $why }
wound-from = the note from which strings are wound: { $why }
zone = zone { $number }: { $why }
zone-gauges = zone { $number } of gauges: { $why }

## Lengths

curve-makes-lengths = the harmonic curve sets the lengths (under Shape, choose to start from the lengths)
none-chosen = no string is chosen (choose which strings may change)
ratio-range = the ratio of the lengths must be from { $least } to { $most }, got { $ratio }
bound-asked = its limit
bound-share = the load share
bound-stiffness = its stiffness
bound-computed = what can be computed
held-shorter = { $strings } cannot be shorter because of { $bound }
held-longer = { $strings } cannot be longer because of { $bound }
length-conflict = { $string } must be at least { $above } mm by { $by-above } and at most { $below } mm by { $by-below } (widen one of these, or change the string)
and-so-on = and so on for { $count ->
    [one] 1 more string
   *[other] { $count } more strings
}
