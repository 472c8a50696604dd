# The design report, and the papers of the views.

## Heads of sections

summary = Summary
sources = Sources of the numbers
totals = Totals
settings = Settings that differ
differing = Strings that differ, before → after
curves = Curves, bass at the left
drawing = Drawing from the side, not to scale
loads = Loads, estimated
forces = Forces, estimated
giving = How the frame flexes during stringing, estimated
years = Over the years, estimated
assumptions = Assumptions about the frame
findings = Findings

## The summary

total = { $count } strings. Total tension { $newton } ({ $kgf }, { $lbf }).{ $missing ->
    [0] { "" }
    [one] { " " }One string without a tension is not in it.
   *[other] { " " }{ $missing } strings without a tension are not in it.
}
tightest = Tightest: string { $string }, at { $share } % of its breaking load.
no-findings = No findings on the strings.
findings-told = { $count ->
    [one] One finding on the strings, shown below.
   *[other] { $count } findings on the strings, shown below.
}

## The sections

formulas = Stringloft has the formulas, their sources, where they apply and how each was checked under The numbers, explained.
before-after = Before: { $before }. After: { $after }.
no-difference = No string differs.
no-strings = There are no strings yet.
curves-of = Curves across the compass: { $names }
drawing-of = Drawing of the harp from the side
nothing-to-draw = There is nothing to draw yet: the strings have no lengths.
no-loads = There are no loads yet: the strings lack notes, lengths or make-ups.
not-judged = The frame is not judged: { $why }.
over-years = { $what }: { $one } after a year, { $ten } after ten.
grave = Serious. { $finding }
warning = Warning. { $finding }
of-string = String { $string }: { $finding }
of-strings = Strings { $first } to { $last }: { $finding }
printed = Printed on { $day } from Stringloft.

## Heads of columns

head-pluck = feel
head-pluck-long = pluck stiffness
head-load-share = load share
head-partial = partial 8
head-pitch = pitch
head-tension = tension
head-length = length
head-gauge = gauge
head-part = part
head-used = share, estimated
head-leads = what decides, and where
head-force = force
head-how-much = how much
head-what = what
head-before = before
head-after = after

## The strings that differ

new = { $number }, new
gone = { $number }, gone

## The sources of the materials

no-material = No string has a material whose figures are used.
material = { $name }. { $density }{ $more }.
density = Density { $density } kg/m³: { $source } ({ $standing })
strength = { "; " }strength: { $source } ({ $standing })
stiffness-sounding = { "; " }modulus in vibration: { $source } ({ $standing })
stiffness-minutes = { "; " }modulus over minutes: { $source } ({ $standing })
stiffness-weeks = { "; " }modulus over weeks: { $source } ({ $standing })
