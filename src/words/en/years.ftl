# What the years do to a harp.

nothing = nothing can be said about the years: the frame needs sizes (in Drawing, under Woods), the strings lengths, make-ups and tensions, the neck three strings or more, and the woods figures for how they give and creep. How plywood creeps is known for heated rooms only
meaning = Estimated: what the harp gives at once, times the creep of the wood; at least with joints and soundboard edges that do not give, at most with ones that do. The factor is that of EN 1995-1-1, table 3.2, as quoted, for fifty years; on the way there it grows with a power of time, from 0.2 to 0.3 (that it is a power was read, its range is from memory). The strings are taken as kept at pitch. Joints that settle, glue that creeps, wood that is twisted or pressed across its grain, and moisture that comes and goes under load add to it. Swelling: Wood Handbook, table 13-5, in part from memory.
head-what = In addition to what gives at once
head-one-year = After 1 year
head-ten-years = After 10 years
belly = Soundboard rises (belly), at { $string }
roll = Neck rolls towards the strings
sway = Top of the pillar moves sideways
shorter = String grows shorter, most { $string }
contact = Lever or disc left in place raises too much, most { $string }
cents = { $range } cents
months = A string that is not retuned falls as the wood gives, most of all { $string }: by { $first } cents in the first month, and by { $later } in a month after a year. The creep of the string itself comes on top.
seasons = Through the seasons, from { $dry } % of moisture in the dry season to { $damp } % in the damp one, the neck swells across its grain: the tuning pins move by { $pins } from its centre at most, and the strings rise, most of all { $string }, by { $cents } cents.
damp-share = Strings tuned in the dry season and then left alone come nearer to breaking, most of all { $string }: from { $now } to { $then } % of the load at which it breaks. Let it down before the damp season.
board = The soundboard would grow by { $grows } along its length, from { $dry } % of moisture in the dry season to { $damp } % in the damp one, if nothing held it: as it is held, it arches and pushes instead. Glue it while its wood is in the drier half of that range (common practice, no source).
kept-heated = The harp is kept in heated rooms: that sets creep and moisture, and you choose it under Woods. The moisture is common practice, without a source.
kept-covered = The harp is kept under a roof, not heated: that sets creep and moisture, and you choose it under Woods. The moisture is common practice, without a source.
kept-outdoors = The harp is kept in the open: that sets creep and moisture, and you choose it under Woods. The moisture is common practice, without a source.
