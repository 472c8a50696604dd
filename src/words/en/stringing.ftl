# Stringing the harp, one string at a time in large letters.

title = String the harp
order = Order
progress = { $up } of { $count } strings on and tuned up
all-up = All { $count } strings are on and tuned up. Go round again until they hold.
next-in-order = Next in order: { $string }
back = Back
next = Next
tick = On and tuned up
cut = Cut to
gauge = Gauge
vibrating = Vibrating length
turns = Turns on the pin
turns-take-up = { $turns } of them take up the stretch
tune = Tune to
tune-lever = with its lever open
tune-discs = with its pedal up and its discs open
code = Order code
no-code = none
string-c = a C string
string-f = an F string
was-other = Ticked for another string: { $then }. Now it is { $now }. Tick it again once this one is on.
before = Before you begin
no-strings = There are no strings yet. Type them into the string chart first.
not-kept = This browser does not keep the ticks: { $why }.
