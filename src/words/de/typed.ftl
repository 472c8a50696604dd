# Was eingegeben wird: was es sein soll, und warum es nicht zu gebrauchen ist.

## Jede Zahl

missing = { $what }: fehlt (schreiben wie { $example })
unreadable = { $what }: eine Zahl mit oder ohne Einheit, geschrieben steht „{ $got }“ (schreiben wie { $example })
out-of-range = { $what }: von { $least } bis { $most }, geschrieben steht „{ $got }“
out-of-range-meant = { $what }: von { $least } bis { $most }, geschrieben steht „{ $got }“ (gemeint { $meant }?)
either = { $first } oder { $second }
note-number = ein Ton beginnt mit einem Buchstaben von A bis G, geschrieben steht „{ $got }“ (für eine Tonhöhe { $got } Hz schreiben)

## Was es ist

vibrating-length = klingende Länge
vibrating-length-like = 612; 61,2 cm oder 24 1/8 in
bare-end = freier Kern am Ende
bare-end-like = 12 oder 1/2 in
gauge = Stärke
gauge-like = 0.81, 32 thou oder .032{ "\"" }
pitch = Tonhöhe
pitch-like = A4 oder 443,2 Hz
mass-per-metre = Masse je Meter
mass-per-metre-like = 6.75 oder 6.75 g/m
load = Last
load-like = 480, 48 kgf oder 108 lbf
packing = Deckung in Prozent
density = Dichte
modulus = Modul
strength = Festigkeit
length-of-pack = Länge einer Packung

## Aufbau

make-up-long = ein Aufbau darf höchstens { $most } Zeichen haben (Material und Stärke schreiben, etwa Nylon 0,81)
make-up-brackets = eckige Klammern müssen sich schließen, höchstens eine um ein Material und eine um ein Maß, geschrieben steht „{ $got }“
make-up-core = ein Kern muss rund sein und hat keine Deckung, geschrieben steht „{ $got }“ (Lagen hinter ein + setzen)
make-up-no-layer = auf jedes + muss eine Lage folgen (schreiben wie Stahl 0,45 + Bronze 0,25)
make-up-layers = auf einen Kern passen höchstens drei Lagen, es sind { $got } (die übrigen weglassen)
make-up-packing = die Deckung muss zwischen 0 und 1000 Prozent liegen, geschrieben steht „{ $got }“ (schreiben wie Seide 0,10 zu 90 %)
make-up-bare = beim freien Kern muss stehen, an welchem Ende, geschrieben steht „{ $got }“ (schreiben wie frei 12 Decke 15 Stift)
make-up-not-weighed = nur eine gewogene Saite hat „{ $got }“ hinter einem Komma (mit gewogen 6,75 g/m beginnen)
make-up-twice = „{ $got }“ darf nur einmal stehen
wound-without-parts = eine umsponnene Saite braucht Kern und Umspinnung, geschrieben steht „{ $got }“ (schreiben wie Stahl 0,40 + Bronze 0,25, oder die Saite wiegen)
material-unknown = ein Material muss hier bekannt sein, geschrieben steht „{ $got }“ (ein bekanntes schreiben, oder es unter „Materialien“ hinzufügen)

## Einstellungen der Harfe

shares-crossed = die niedrigste Auslastung muss unter der höchsten liegen, angegeben sind { $low } % und { $high } % (eine von beiden ändern)
stiffness-crossed = die niedrigste Zupfhärte muss unter der höchsten liegen, angegeben sind { $low } und { $high } N/mm (umgekehrt genommen)
layer-of-neck-thin = Lage { $number } des Halses muss dicker als 0 mm sein (der Hals wird als ein Stück genommen)
plywood-unusable = { $part }: das Sperrholz ist nicht brauchbar: { $why }
wood-unknown = { $part }: das Holz muss hier bekannt sein, angegeben ist „{ $got }“ (eines aus der Liste wählen)
the-neck = Hals
a-layer-of-neck = eine Lage des Halses
the-pillar = Säule
the-board = Decke
the-rib = Saitenleiste
the-sides = Zargen
the-back = Boden
the-bars = Balken
pins-too-far = der Versatz der Stimmwirbel darf höchstens die { $most } mm vom Stegstift zum Stimmwirbel betragen, angegeben sind { $got } mm (genommen werden { $most } mm)
zones-twice = zwei Zonen des Saitenabstands dürfen nicht dieselbe Nummer haben (die erste gilt)
no-zone = der Saitenabstand braucht mindestens eine Zone, es ist keine da (genommen werden { $usual } mm)
no-gap = der Saitenabstand braucht mindestens einen Abstand, es ist keiner da (genommen werden { $usual } mm)
curve-unusable = { $why }; bis dahin gelten die eingegebenen Längen

## Werte von Materialien

density-like = 1140 oder 1.14 g/cm³
density-deviation = Toleranz der Dichte
diameter-deviation = Toleranz des Durchmessers
diameter-deviation-like = 0.01 mm oder 2 %
strength-like = 310 oder 45 ksi
expansion = Ausdehnung
loss-factor = Verlustfaktor
rise = Anstieg mit der Spannung
row-diameter = Durchmesser einer Zeile

## Die Wörter in der Zeile eines Aufbaus

word-weighed = gewogen
word-core = Kern
word-gauge = Stärke
word-breaks = reißt
word-bare = frei
word-board = Decke
word-pin = Stift
word-at = zu
