# The numbers, explained: what several of these pages say.

all-stretch-stays-within = All the stretch stays within the vibrating length: the string does not slip over the bridge pin.
string-pulled-mm-aside = The string is pulled { $pluck } mm aside unless you set another distance, but never more than { $most-pluck } % of its length: short strings are plucked by less. Common practice, no source.
a4-hz-unless-you = A4 is { $a4 } Hz unless you set another pitch ({ $a4s }).
inharmonicity-listeners-begin-hear = inharmonicity that listeners begin to hear
vibrating-length = vibrating length
