# How far the strings fall while a harp is strung and gives.

nothing = how the frame flexes cannot be worked out: the frame needs sizes (in Drawing, under Woods), the strings lengths, make-ups and tensions, the neck three strings or more, and the soundboard a wood whose modulus is known
meaning = Estimated. The least is with joints and edges of the soundboard that do not give, and strings that have had weeks to stretch; the most is with { $joints ->
    [sized] joints that give twice as much as their sizes say
   *[none] a pillar that only pushes and a shoulder that turns freely, as the joints have no sizes
}, edges of the soundboard that turn, and strings that have had minutes. { $soundbox ->
    [sized] The soundbox gives as its sizes say.
   *[none] The soundbox has no sizes: at least it does not give, at most it gives as a usual one.
} A soundboard that rises by more than its thickness gives less than the most says. Creep of wood, glue, knots and strings comes on top, so the first days take more rounds than this.
head-string = String
head-cents = Falls, cents
head-hz = Falls, Hz
head-round-2 = After round 2, cents
head-round-3 = After round 3, cents
head-off = If it is off, another rises, cents
range = { $least } to { $most }
slack = slack
string-noted = string { $number }, { $note }
string-numbered = string { $number }
strung-lowest-first = Strung from the longest string up, each to pitch in turn, the strings that are up fall as the others follow: most of all { $string }, by { $cents } cents.
strung-highest-first = Strung from the shortest string down, each to pitch in turn, the strings that are up fall as the others follow: most of all { $string }, by { $cents } cents.
strung-middle-first = Strung from the middle outwards, each to pitch in turn, the strings that are up fall as the others follow: most of all { $string }, by { $cents } cents.
strung-in-turns = Strung bass and treble in turns, each to pitch in turn, the strings that are up fall as the others follow: most of all { $string }, by { $cents } cents.
rounds = After a second round { $second-string } is furthest off, by { $second-cents } cents, and after a third { $third-string }, by { $third-cents }.
one-off = With one string off and all others at pitch, the others sound sharp: with { $string } off, one of them by { $cents } cents. Put the new string on and bring it to pitch first: its neighbours come back by themselves. Only then retune them.
