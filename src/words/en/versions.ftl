# Versions and earlier states of a design, and what differs.

## Days and reasons

january = January
february = February
march = March
april = April
may = May
june = June
july = July
august = August
september = September
october = October
november = November
december = December
day = { $day } { $month } { $year }
session = End of a session
printed = Printed
link = Link copied
order = Order list saved
template = Template saved
while-working = While you worked
lacks = { $total }, without { $count }
now-side = now
unnamed = version { $number }
grey = Grey: { $what }
nothing-differs = Nothing differs.
strings-differ = { $strings ->
    [one] { $strings } string differs.
   *[other] { $strings } strings differ.
}
settings-differ = { $settings ->
    [one] { $settings } setting differs.
   *[other] { $settings } settings differ.
}
both-differ = { $strings ->
    [one] { $strings } string
   *[other] { $strings } strings
} and { $settings ->
    [one] { $settings } setting differ.
   *[other] { $settings } settings differ.
}

## Comparing

versions = Versions
before = Before
after = After
compare = Compare
totals = Totals
every-string = Show every string, not only those that differ
strings-before-after = Strings, before → after
now = Now
settings = Settings that differ
string = String
what = What
came = { $string } (new)
went = { $string } (gone)

## Earlier states

state-unread = That state cannot be read: { $why }.
look-at = Look at { $when }
look = Look
earlier = Earlier states
date-and-time = Date and time
why-kept = Why it was kept
what-to-do = What to do
none-yet = None yet.
earlier-hint = This browser keeps them on its own: how each session ended, every quarter of an hour while you work, and whenever you print, copy a link, or save an order list or a template. At most 20 stay, the older ones further apart.
titled-when = { $title } ({ $when })
opened-when = Opened as it was on { $when }, as a new design. The one that was open stays under Designs.
state-shown = The state you look at
and-now = { $when }, and now
open-earlier = Open as a new design
open-earlier-hint = The design that is open now stays as it is
close = Close
strings-then-now = Strings, then → now

## Kept versions

kept = Kept versions
name = Name
date = Date
strings = Strings
total = Total tension
none-kept = No version is kept yet. Keep one before you try something: you can bring it back and compare it at any time.
usual-name = Version { $number }
kept-as = Kept as "{ $name }", in this design.
version-name = Name of the version
version-name-hint = such as: gut, spring
keep = Keep
keep-hint = Keep the design as it is now
restored = The design is again as it was in "{ $name }". Undo takes this back.
removed = "{ $name }" was removed. Undo brings it back.
name-of = Name of version { $number }
date-of = Date of version { $number }
restore = Restore
restore-hint = The design becomes what it was in this version
remove = Remove
remove-hint = Take this version out of the list
