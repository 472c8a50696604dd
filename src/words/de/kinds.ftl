# Beispiele und neue Harfen, Tonarten, und die Kurve, die führt.

## Beispiele

sample-floor = Hakenharfe, 36 Saiten
sample-floor-blurb = Nylon, Darm und zehn umsponnene Drähte von C7 hinab bis C2, insgesamt etwa 4 kN.
sample-wire = Drahtharfe, 22 Saiten
sample-wire-blurb = Gelbes und rotes Messing von G6 hinab bis G3, pythagoreisch in G-Dur gestimmt.
sample-travel = Reiseharfe, 26 Saiten
sample-travel-blurb = Leichtes Nylon von G6 hinab bis C3, der Bass auf Nylon umsponnen.
sample-pedal = Pedalharfe, 47 Saiten
sample-pedal-blurb = Nylon, Darm und zwölf umsponnene Drähte von Ges7 hinab bis Ces1, insgesamt über 10 kN.

## Ein Umfang

compass-order = die tiefste Saite darf nicht über der höchsten liegen, angegeben sind { $low } und { $high }
compass-long = ein Umfang darf höchstens { $most } Saiten haben, es sind { $got } (ihn verkleinern)
compass-sign = eine offene Saite darf höchstens zwei Halbtöne von ihrem Stammton abweichen

## Die Kurve der Stegstifte

curve-drives-same = Die Harfenkurve mit { $nodes } Punkten bestimmt jetzt die Längen. Sie bleiben, wie sie waren.
curve-drives-changed = Die Harfenkurve mit { $nodes } Punkten bestimmt jetzt die Längen. Die größte Änderung einer Länge ist { $change } mm: { $string }.
curve-new = { $told } Saiten ohne Länge, die jetzt eine haben: { $count }.
lengths-drive-typed = Vorgegeben sind wieder die Längen, wie sie eingegeben waren.
lengths-drive = Vorgegeben sind wieder die Längen. Die der Harfenkurve stehen in der Saitentabelle, auf 0,1 mm.
lengths-drive-but = Vorgegeben sind wieder die Längen. Die der Harfenkurve stehen in der Saitentabelle, auf 0,1 mm; wo sie nicht hinreicht ({ $count }), gilt, was eingegeben war.
string-in-sentence = Saite { $number }
string-with-note-in-sentence = Saite { $number }, { $note }

## Tonarten

key = { $major }-Dur, { $minor }-Moll
flat = { $letter }♭
sharp = { $letter }♯
no-string-for = keine Saite für { $letters }
up-one = um einen Halbton erhöht: { $letters }
up-two = um zwei Halbtöne erhöht: { $letters }
some = einige { $letter }
as-tuned = wie gestimmt
and = { $first } und { $last }
more = { $count } weitere
every = jedes { $letters }
strings = { $count ->
    [one] Saite
   *[other] Saiten
} { $names }
why-no-note = { $who } { $count ->
    [one] hat keinen Ton
   *[other] haben keinen Ton
}
why-too-high = { $who } { $count ->
    [one] ist
   *[other] sind
} { $by ->
    [1] einen Halbton
   *[other] { $by } Halbtöne
} zu hoch gestimmt
why-no-mechanism = { $who } { $count ->
    [one] hat keine Klappe oder Drehscheibe
   *[other] haben keine Klappe oder Drehscheibe
}
why-out-of-reach = { $who }: nötig wären { $by } Halbtöne hinauf
why-not-alike = { $who } { $count ->
    [one] ist anders gestimmt
   *[other] sind anders gestimmt
} als die übrigen dieses Stammtons

## Arten von Harfen, und woraus die meisten Saiten sind

lever-harp = Hakenharfe
wire-strung-harp = Drahtharfe
pedal-harp = Pedalharfe
nylon = Nylon
gut = Darm
fluorocarbon = Fluorcarbon
yellow-brass = Gelbes Messing
phosphor-bronze = Phosphorbronze
harp-of = { $instrument }, { $count } Saiten

## Grundstimmungen

tuning-c = C-Dur
tuning-g = G-Dur
tuning-d = D-Dur
tuning-f = F-Dur
tuning-b-flat = B-Dur
tuning-e-flat = Es-Dur
tuning-a-flat = As-Dur
tuning-c-flat = Ces-Dur
