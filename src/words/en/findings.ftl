# What is found on a string, and what helps.

finding = { $string }: { $said }
caution = Strings and frames under load can hurt: wear eye protection, keep your face out of the string's plane and let tension down slowly. The load figures are estimates, not approval of a structure: local rules and qualified practice come first.

## Loads

breaks-far = more than ten times the load that breaks it. Check its note, length and gauge.
breaks = { $share } % of its breaking load: it breaks before it is in tune. { $advice }
overworked = { $share } % of its breaking load, above the { $limit } % you allow. { $advice }
slack = { $share } % of its breaking load, below your { $limit } %: it will sound dull and false. { $advice }
slack-plain = A thicker gauge raises the tension, but not the share. Lengthen it to { $length } or more, or use a material that is heavier for its strength.
slack-wound = Lengthen it to { $length } or more, or use a material that is heavier for its strength.
overload-thinner = A thinner gauge is stronger for its size. Use one, or shorten it to { $length } or less.
overload-plain = A thinner gauge won't help: how near a plain string is to breaking depends on its length and pitch. Shorten it to { $length } or less, or use a material that is stronger for its weight.
overload-wound = Shorten it to { $length } or less, or use a lighter winding or a stronger core.
little-tension = its tension of { $tension } { $unit } is below your { $least } { $unit }: it will not hold steady under the finger. { $advice }
little-thicker = Use a gauge of { $gauge } or more.
little-other = Use a heavier make-up or lengthen it.

## Tone and make-up

inharmonic-far = its partials are far too sharp for a string. Check its length and gauge.
inharmonic = its partial 8 is { $cents } cents sharp (you allow { $limit }): it will sound false. A thinner gauge, a longer string or one wound on a thin core sounds truer.
thin-core = it is { $ratio } times as thick as its core, above { $limit }: the core is thin for what it carries. Use a thicker core or a thinner winding.
gauge-thinner = its gauge of { $gauge } { $unit } is thinner than that of the string above it ({ $neighbour } { $unit }).
core-thinner = its core of { $core } { $unit } is thinner than that of the string above it ({ $neighbour } { $unit }).
gauge-thicker = its gauge of { $gauge } { $unit } is thicker than that of the string below it ({ $neighbour } { $unit }).

## Lengths

longer-than-below = { $length } { $unit } is longer than the string below it ({ $neighbour } { $unit }). { $advice }
shorter-than-above = { $length } { $unit } is shorter than the string above it ({ $neighbour } { $unit }). { $advice }
midway = Halfway between its neighbours is { $length }.
check-length = Check the length.
length-off = { $length } { $unit } is out of line with its neighbours, which suggest { $line } { $unit }. Check the length.

## Feel

softer = { $feel } { $unit } under the finger, softer than the { $low } to { $high } { $unit } you ask for.
stiffer = { $feel } { $unit } under the finger, stiffer than the { $low } to { $high } { $unit } you ask for.
all-softer = softer under the finger than the { $low } to { $high } { $unit } you ask for.
all-stiffer = stiffer under the finger than the { $low } to { $high } { $unit } you ask for.
jump-far-from-above = under the finger it is more than ten times as stiff. Check the make-up.
jump-far-below = under the finger the string below it is more than ten times as stiff. Check the make-up.
jump-from-above = under the finger it is { $step } % { $way ->
    [stiffer] stiffer
   *[softer] softer
} than the string above it, where the make-up changes (you allow { $limit } %).
jump-below = under the finger the string below it is { $step } % { $way ->
    [stiffer] stiffer
   *[softer] softer
} than this one, where the make-up changes (you allow { $limit } %).

## Notes

note-between = { $note } is out of order: the string between { $first } and { $second } should be { $meant }. Check the note.
note-beside = { $note } is out of order: the string next to { $first } should be { $meant }. Check the note.
note-natural = every other { $name } is { $name } natural. Check the note.
note-sharp = every other { $name } is { $name } sharp. Check the note.
note-flat = every other { $name } is { $name } flat. Check the note.
pitch-higher = { $pitch } Hz is higher than the string above it ({ $neighbour } Hz). Check the note or the order.
pitch-lower = { $pitch } Hz is lower than the string below it ({ $neighbour } Hz). Check the note or the order.

## Levers and pins

tight-raise = its lever or natural disc would sit { $distance } { $unit } from the bridge pin, nearer than the { $least } { $unit } you allow. Leave it off, or lengthen the string.
turns-far = it stretches far more than its pin can take up. Check its note, length and gauge.
turns = it takes { $turns } turns of its pin to come up to pitch, more than the { $limit } that the cut lengths allow for. Allow more under Instrument, use a thicker pin, or choose a string that stretches less.

## Cures: the words of a button

cure-turns = Allow { $turns } turns
cure-note = Set the note to { $note }
cure-without = Leave it off
cure = { $verb ->
    [set] Set it to { $value }
    [shorten] Shorten to { $value }
    [lengthen] Lengthen to { $value }
   *[use] Use { $value }
}
