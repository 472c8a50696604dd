# The page of a client who opens a link.

## The page

title = As the client sees it
open = Open in the designer
open-hint = Change strings and lengths; nothing changes for anyone else
card = Stringing card
card-hint = The strings one by one, to print
what = What it is
drawing = The harp from the side
curves = How the strings change from treble to bass
remarks = Remarks by the maker
looking = You are looking at a design sent to you as a link. You cannot break anything here.

## What it is

made-by = made by { $maker }
made-for = for { $client }
strings = It has { $count ->
    [one] 1 string
   *[other] { $count } strings
}.
strings-from-to = It has { $count } strings, from { $low } to { $high }.
levers = { $count ->
    [one] One of them has a lever that raises it by a semitone.
   *[other] { $count } of them have a lever that raises them by a semitone.
}
levers-all = Each of them has a lever that raises it by a semitone.
discs = Pedals turn discs that raise { $count } of them.
tuning = It is tuned in { $tuning }.
pitch = Pitch: { $pitch }.
plain-nylon = { $count } of nylon or similar
plain-gut = { $count } of gut or silk
plain-wire = { $count } of wire
wound = { $count } wound with wire
unknown = { $count } not yet decided
materials = Its strings: { $list }.
feel-like = Under the finger it feels like most harps of its size (common practice, no source).
feel-firmer = Under the finger it is firmer than most harps of its size, by about { $percent } % (common practice, no source).
feel-softer = Under the finger it is softer than most harps of its size, by about { $percent } % (common practice, no source).
total = All strings together have a tension of { $newtons } ({ $other }).
total-of-some = The strings whose tension is known, { $with } of { $all }, have { $newtons } together ({ $other }).
