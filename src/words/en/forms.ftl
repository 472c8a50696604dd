# The forms of a design: heads, hints, fields of text.

## The whole instrument

on-the-card = On the card
instrument = Instrument
maker = Maker
client = Client
serial = Serial
date = Date
open-tuning = Open tuning
open-tuning-example = E flat major, levers down
remarks = Remarks
levers = Levers, discs and frame
push-hint = Set a string that differs under Details. The push is common practice, no source: measure your own.
expansion-hint = For drift with temperature. 0: the frame has not yet followed the air. Wood along the grain: 3 to 5 (from memory).
pitch-and-pluck = Pitch and pluck
pluck-hint = Common practice, no source: harps are plucked near 40 % of the length. A string is pulled aside by no more than 2 % of its length.
cut-length = Cut length
measure-hint = Common practice, no source. Measure your own instrument.
findings = Findings and target bands
tolerances = Tolerances (±)
tolerances-hint = Diameter and density apply where the material states none. Common practice, no source; the pitch follows ISO 16.
units = Units
unit-of-tension = Unit of tension
units-of-lengths = Units of lengths and gauges
unit-inches = inches
unit-mm-inches = mm, gauges in inches
unit-inches-mm = inches, gauges in mm
note-names = Note names
note-names-usual = as is usual in English
note-names-english = English: C4, E♭3, B♭3, B3
note-names-german = German: C4, Es3, B3, H3
note-names-syllables = do ré mi: do3, mi♭2, si♭2, si2
note-names-hint = Note names are kept in this browser, not in the design. Middle C is C4, or do3 among syllables, where 440 Hz is la3. Whichever is shown, all of them are read; only a B alone is B flat where the names are German. Files, links and CSV keep English names.
note-names-not-kept = This browser does not remember the note names: { $why }.

## The shape and what it is made of

strings = Strings
around = Neck, pillar and soundboard
around-hint = Common practice, from memory. Measure your own. Set the thickness and width of each part under Woods.
rib-hint = The string rib runs inside along the strings, and the outer strip lies over it; both are glued on with their grain along. 0 means none.
stands = Where it is kept
stands-hint = Damp wood creeps more under a lasting load.
drills-hint = 0 means not drilled or not known. A pin goes through the neck where its depth is 0; the holes weaken the neck, and the loads count that. With a grommet, every string hole is as wide as the grommet. The diameter of the tuning pins is under Instrument: for a tapered pin, drill at its small end and ream. Common practice, from memory; a hole is often 0.3 to 0.5 mm wider than its string.
sizes = Whose sizes
sizes-hint = A new harp comes with sizes that the program proposes for its strings. They become your own when you change one of them, or here.

## Strings that are chosen

no-limit-hint = An empty field is no limit.
family-hint = An empty field takes what is usual for these strings: common practice, no source. Kinds listed below override the family.
breaking-hint = Breaking loads of one material differ from maker to maker: leave room.
usual = { $number }, as usual
usual-soft = { $metal }, gut and plastics { $soft }
any = any
any-number = any number
