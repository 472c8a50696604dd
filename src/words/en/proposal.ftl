# What the search proposes: strings, lengths, both.

no-gain = No gain worth moving pins for
no-gain-because = These come nearer the target by less than { $mean } % on average and { $most } % at most, which is not worth moving pins for (limits chosen for this project, no source).
no-gain-set = No gain worth changing strings for
no-gain-set-because = This is the best set, but it comes nearer the target by less than { $mean } % on average and { $most } % at most, which is not worth changing strings for (limits chosen for this project, no source).
nearest = The nearest set
best-within = The best set within the limits
best = The best set
no-lengths = No other lengths
lengths = Other lengths
lengths-there = The strings have these lengths already.
ended = { $count ->
    [one] After { $count } round
   *[other] After { $count } rounds
}, changing only the strings or only the lengths brings it no nearer. Something better may still exist.
no-both = No other strings or lengths
both = Strings and lengths together
frame = frame, worst of what is judged, estimated
span-one = string { $name }
span = strings { $first } to { $last }
stiffness = pluck stiffness
tension = tension
