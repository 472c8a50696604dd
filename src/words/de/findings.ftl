# Was an einer Saite auffällt, und was hilft.

finding = { $string }: { $said }
caution = Saiten und Rahmen unter Zug können verletzen: Schutzbrille tragen, das Gesicht aus der Ebene der Saiten halten und die Zugkraft langsam nachlassen. Die Angaben zu Lasten sind Schätzungen und keine Abnahme einer Konstruktion: örtliche Vorschriften und fachkundige Praxis gehen vor.

## Lasten

breaks-far = mehr als das Zehnfache der Last, bei der sie reißt. Ton, Länge und Stärke prüfen.
breaks = { $share } % der Bruchlast: sie reißt, bevor sie gestimmt ist. { $advice }
overworked = { $share } % der Bruchlast, mehr als die zugelassenen { $limit } %. { $advice }
slack = { $share } % der Bruchlast, weniger als die geforderten { $limit } %: sie wird dumpf und unrein klingen. { $advice }
slack-plain = Eine größere Stärke erhöht die Zugkraft, aber nicht die Auslastung. Auf { $length } oder mehr verlängern, oder ein Material nehmen, das für seine Festigkeit schwerer ist.
slack-wound = Auf { $length } oder mehr verlängern, oder ein Material nehmen, das für seine Festigkeit schwerer ist.
overload-thinner = Eine dünnere Saite hält im Verhältnis mehr aus. Eine solche nehmen, oder auf { $length } oder weniger kürzen.
overload-plain = Eine kleinere Stärke hilft nicht: wie nahe eine blanke Saite am Riss ist, hängt von Länge und Tonhöhe ab. Auf { $length } oder weniger kürzen, oder ein Material nehmen, das für sein Gewicht fester ist.
overload-wound = Auf { $length } oder weniger kürzen, oder eine leichtere Umspinnung oder einen festeren Kern nehmen.
little-tension = die Zugkraft von { $tension } { $unit } liegt unter den geforderten { $least } { $unit }: sie gibt unter dem Finger nach. { $advice }
little-thicker = Eine Stärke von { $gauge } oder mehr nehmen.
little-other = Einen schwereren Aufbau nehmen oder die Saite verlängern.

## Klang und Aufbau

inharmonic-far = ihre Teiltöne sind für eine Saite viel zu hoch. Länge und Stärke prüfen.
inharmonic = ihr 8. Teilton ist { $cents } Cent zu hoch (zugelassen sind { $limit }): sie wird unrein klingen. Eine kleinere Stärke, eine längere Saite oder eine auf dünnem Kern umsponnene klingt reiner.
thin-core = sie ist { $ratio }-mal so dick wie ihr Kern, mehr als { $limit }-mal: der Kern ist dünn für das, was er trägt. Einen dickeren Kern oder eine dünnere Umspinnung nehmen.
gauge-thinner = ihre Stärke von { $gauge } { $unit } ist kleiner als die der Saite darüber ({ $neighbour } { $unit }).
core-thinner = ihr Kern von { $core } { $unit } ist dünner als der der Saite darüber ({ $neighbour } { $unit }).
gauge-thicker = ihre Stärke von { $gauge } { $unit } ist größer als die der Saite darunter ({ $neighbour } { $unit }).

## Längen

longer-than-below = { $length } { $unit } ist länger als die Saite darunter ({ $neighbour } { $unit }). { $advice }
shorter-than-above = { $length } { $unit } ist kürzer als die Saite darüber ({ $neighbour } { $unit }). { $advice }
midway = In der Mitte zwischen den Nachbarn liegt { $length }.
check-length = Die Länge prüfen.
length-off = { $length } { $unit } passt nicht zu den Nachbarn, die auf { $line } { $unit } weisen. Die Länge prüfen.

## Spielgefühl

softer = { $feel } { $unit } unter dem Finger, weicher als die gewünschten { $low } bis { $high } { $unit }.
stiffer = { $feel } { $unit } unter dem Finger, härter als die gewünschten { $low } bis { $high } { $unit }.
all-softer = unter dem Finger weicher als die gewünschten { $low } bis { $high } { $unit }.
all-stiffer = unter dem Finger härter als die gewünschten { $low } bis { $high } { $unit }.
jump-far-from-above = unter dem Finger ist sie mehr als zehnmal so hart. Den Aufbau prüfen.
jump-far-below = unter dem Finger ist die Saite darunter mehr als zehnmal so hart. Den Aufbau prüfen.
jump-from-above = unter dem Finger ist sie { $step } % { $way ->
    [stiffer] härter
   *[softer] weicher
} als die Saite darüber, dort wo der Aufbau wechselt (zugelassen sind { $limit } %).
jump-below = unter dem Finger ist die Saite darunter { $step } % { $way ->
    [stiffer] härter
   *[softer] weicher
} als diese, dort wo der Aufbau wechselt (zugelassen sind { $limit } %).

## Töne

note-between = { $note } steht außer der Reihe: die Saite zwischen { $first } und { $second } müsste { $meant } sein. Den Ton prüfen.
note-beside = { $note } steht außer der Reihe: die Saite neben { $first } müsste { $meant } sein. Den Ton prüfen.
note-natural = jedes andere { $name } steht ohne Vorzeichen. Den Ton prüfen.
note-sharp = jedes andere { $name } ist um einen Halbton erhöht. Den Ton prüfen.
note-flat = jedes andere { $name } ist um einen Halbton erniedrigt. Den Ton prüfen.
pitch-higher = { $pitch } Hz ist höher als die Saite darüber ({ $neighbour } Hz). Den Ton oder die Reihenfolge prüfen.
pitch-lower = { $pitch } Hz ist tiefer als die Saite darunter ({ $neighbour } Hz). Den Ton oder die Reihenfolge prüfen.

## Klappen und Stimmwirbel

tight-raise = ihre Halbtonklappe oder Auflösungsscheibe säße { $distance } { $unit } vom Stegstift, näher als die zugelassenen { $least } { $unit }. Sie weglassen, oder die Saite verlängern.
turns-far = sie dehnt sich viel weiter, als ihr Stimmwirbel aufnehmen kann. Ton, Länge und Stärke prüfen.
turns = bis zur Tonhöhe braucht sie { $turns } Umdrehungen des Stimmwirbels, mehr als die { $limit }, die in den Zuschnittlängen vorgesehen sind. Unter „Instrument“ mehr vorsehen, einen dickeren Stimmwirbel nehmen, oder eine Saite wählen, die sich weniger dehnt.

## Abhilfen: die Wörter eines Knopfs

cure-turns = { $turns } Umdrehungen vorsehen
cure-note = Ton auf { $note } setzen
cure-without = Weglassen
cure = { $verb ->
    [set] Auf { $value } setzen
    [shorten] Auf { $value } kürzen
    [lengthen] Auf { $value } verlängern
   *[use] { $value } nehmen
}
