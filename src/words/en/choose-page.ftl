# The view in which strings and lengths are chosen.

## The view

panel = Choose strings
side = Target, limits, and lengths
group-family = Strings to choose from
group-points = Target
group-weights = What matters
group-limits = Limits
group-zones = Gauges by zone
group-kinds = Kinds of string
group-reshape = Better lengths

## The search

search = Search
stock-in-use = From the stock list in use: { $list }, { $count ->
    [one] { $count } item
   *[other] { $count } items
}.
stock-unnamed = a list without a name
all-strings = All strings
selected = Those selected in the chart
may-change = May change
may-change-now = May change: { $strings }.
from-both = The list and the strings on the harp
from-stock = The list only
choose-from = Choose from
find-set = Find the best set
find-set-hint = The best set for all strings together
find-fronts = Evenness against number of gauges
find-fronts-hint = The best set for each smaller number of gauges
find-by-price = Evenness against price
find-by-price-hint = The best set for each lower price
keep = Keep { $strings }
keep-hint = The strings selected in the chart stay as they are
kept = { $strings } kept as now
kept-list = Strings that stay as they are
let-change = Let it change
let-strings-change = Let { $strings } change
busy = The search is running
cancel = Cancel
cancel-hint = Stop, and change nothing
searching = Searching.
searching-so-far = Searching for { $seconds } s so far.
searching-round = Round { $round }. Searching for { $seconds } s so far.
no-lengths = No lengths found
no-set = No set found
set-with = The set with { $what }
taken = { $count ->
    [one] 1 string
   *[other] { $count } strings
} changed. Undo brings back what was there.
ghost = Solid: the strings now. Grey: what is proposed.

## The alternatives

alternatives = Alternatives
front-up = Off target on average, %
front-across-price = Price, { $currency }
front-across = Different strings and wires
front-hint = Sets to choose from; the arrow keys move from one to the next
front-said = Set { $number } of { $count }: { $what }.

## The wanted curve

wish-title = Target { $what }, { $unit }, bass to treble
legend-wanted = target
legend-now = now
legend-proposed = proposed
legend-reach = what the stock allows within the limits
point-at = Point { $number } of { $count }: { $value } { $unit } at { $note }
point-hint = Drag it, or move it with the arrow keys (Shift: ten times as far); Delete removes it
wants-stiffness = Pluck stiffness (feel)
wants-tension = Tension
wants = Target for
origin = Set the curve
origin-choose = Choose a starting curve
origin-now = As the strings are now
origin-usual = As at the start: the feel of the harp
origin-constant = One value throughout
origin-straight = Straight from end to end
origin-sample = Like the sample { $name }
origin-version = Like the version { $name }
no-curve = There is no curve to start from: no string there has a note, a length and a make-up.
no-room = There is no room for another point.
points-table = Points of the target curve
head-point = Point
head-note = Note
add-point = Add a point
add-point-hint = In the widest gap between two points
points-hint = Between two points the curve changes by equal percentages; beyond the ends it stays level.
remove = Remove
remove-point = Remove point { $number }
note-of-point = Note of point { $number }
value-of-point = Value of point { $number }

## What matters

weight-none = Does not matter
weight-little = Matters a little
weight-some = Matters
weight-much = Matters a lot

## Limits, zones, kinds

wound-from = Winding starts no lower than
wound-from-hint = A note such as E3. Leave it empty, and the search suggests where winding starts.
note-wrong = A note has a letter and the number of its octave: C4, F#5, Bb2.
gauge-wrong = A gauge is a number of millimetres, or one in inches such as 0.032 in.
zone-from = From note
zone-to = To note
zone-thinnest = Thinnest
zone-thickest = Thickest
zone-cell = Zone { $number }: { $head }
zone-remove = Remove zone { $number }
zones-table = Zones of gauges
zone-add = Add a zone
zones-hint = An empty note reaches to the end of the compass; an empty gauge is no limit. Gauges are in millimetres, or add in for inches.
kind-cell = { $kind }: { $head }
kind-lowest = lowest note
kind-highest = highest note
head-lowest = Lowest note
head-highest = Highest note
kind-up = Up
kind-up-hint = Move { $kind } towards the treble
kind-out-hint = Do not use { $kind }
kinds-table = Kinds of string from the treble to the bass
kinds-all = Let the family decide again
kinds-free = The family says which kinds of the stock may be used, in their usual order: plain strings in the treble, wound ones in the bass.
kinds-own = Set the order and range of each kind
kinds-hint = From treble to bass, a kind comes only after those above it in the list.
kind-choose = Choose a kind
kind-add = Add a kind

## What is proposed

would-change = { $count ->
    [one] 1 string would change.
   *[other] { $count } strings would change.
}
breaks-limits = The nearest set breaks limits:
before-after = Before and after
head-now = Now
head-proposed = Proposed
head-take = Take
head-string = String
head-tension = Tension, { $unit }
head-feel = Feel, { $unit }
head-share = Load share, %
close = Close
take-all = Take all
take-anyway = Take all anyway
take-all-hint = Every string listed, in one step
take-some = Take the ticked rows
leave-it = Discard
leave-it-hint = Change nothing
rows-table = Strings that would change
take-string = Take string { $string }
keep-string = Keep string { $string } as it is, and search again
keep-one = Keep

## Other lengths

way-wanted = Near the target, same gauges
way-both = Near the target, other gauges too
way-scale = Scale all by one factor
way-longest = Scale all to a longest string
way-stretch = Scale by a factor at each end
way-fair = Smooth, with the ends kept
smooth-little = A little
smooth-well = Well
smooth-fully = As smooth as possible
smooth = Smooth
room-move-usual = 8 % of its length
room-shortest-usual = as the neck allows
room-any = any
other-lengths = Other lengths
find-lengths = Propose lengths
find-lengths-hint = Shown over the curves before anything changes
lengths-hint = For the strings that may change, as set in Search. Lengths come in steps of half a millimetre or of a 64th of an inch.
room-move = Move a pin at most by
room-shortest = Shortest string
room-longest = Longest string
room-kink = Pin off the curve of its neighbours
factor = Factor
factor-top = Factor at the highest string
factor-bottom = Factor at the lowest string
