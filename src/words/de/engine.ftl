# Warum eine Angabe fehlt, und warum mit dem Gegebenen nicht zu rechnen ist.

## Eine Saite ohne Angabe

no-pitch = keine Tonhöhe: der Ton fehlt oder ist nicht lesbar
no-length = keine klingende Länge: sie fehlt oder ist nicht lesbar
off-curve = die Harfenkurve lässt dieser Saite keine Länge (ihre Punkte verschieben)
no-make-up = kein Aufbau: Material oder Stärke fehlt oder ist nicht brauchbar
bare-ends-too-long = der freie Kern an den Enden ist länger als die Saite (ihn kürzen)
too-stiff = diese Saite ist für ihre Länge so steif, dass sie sogar ohne Zugkraft zu hoch klänge
no-strength = für dieses Material ist bei diesem Durchmesser keine Bruchlast bekannt
no-modulus = für diese Saite ist kein Elastizitätsmodul bekannt
no-intermediate-modulus = für dieses Material ist kein Modul über Minuten bekannt (für Klappen und Stimmen)
no-slow-modulus = für dieses Material ist kein Modul über Wochen bekannt (für die Dehnung)
no-loss-factor = für dieses Material ist kein Verlustfaktor bekannt
wound-damping = keine Angabe für umsponnene Saiten: sie verlieren das meiste durch Reibung in der Umspinnung, und veröffentlichte Werte wurden nicht gefunden
no-expansion = für dieses Material ist kein Ausdehnungskoeffizient bekannt
polymer-drift = keine Angabe für Kunststoffe: sie werden mit der Wärme weicher, was das Wandern aufhebt oder umkehrt, und veröffentlichte Werte wurden nicht gefunden
natural-drift = keine Angabe für Darm und Seide: die Luftfeuchte wirkt stärker auf sie als die Wärme, und veröffentlichte Werte wurden nicht gefunden
no-lever = diese Saite hat keine Halbtonklappe
no-disc = diese Saite hat keine solche Drehscheibe
too-much-push = diese Saite so weit zur Seite zu drücken erhöht sie mehr als verlangt, wo immer sie berührt wird (einen kleineren Weg angeben)
no-core = der Kerndurchmesser dieser gewogenen Saite ist nicht angegeben
no-gauge = der Gesamtdurchmesser dieser gewogenen Saite ist nicht angegeben
out-of-reach = ein Wert hinter dieser Angabe ist zu groß oder zu klein, um damit zu rechnen (ihn prüfen)

## Eine Saite, die sich nicht machen lässt

diameter = { $part }: { $least } bis { $most } mm dick, angegeben sind { $got } mm
part-string = Saite
part-core = Kern
part-wire = Draht einer Lage
part-ribbon = Breite eines Flachdrahts
packing = die Windungen einer Lage müssen { $least } bis { $most } % der Saite decken, angegeben sind { $got } %
no-layer = eine umsponnene Saite braucht mindestens eine Lage (sonst eine blanke wählen)
bare-end = der freie Kern am Ende muss 0 mm oder mehr sein, angegeben sind { $got } mm
mass = die Masse je Meter muss { $least } bis { $most } g/m sein, angegeben sind { $got } g/m
core-too-thick = der Kern ({ $core } mm) muss dünner sein als die ganze Saite ({ $gauge } mm)
breaking-load = die Bruchlast muss über 0 N liegen, angegeben sind { $got } N

## Zuschnitt

allowance = { $part }: 0 bis { $most } mm, angegeben sind { $got } mm
part-after = Länge vom Stegstift zum Stimmwirbel
part-pin = Durchmesser des Stimmwirbels
part-knot = Zugabe für Decke und Knoten
part-tail = Ende zum Ziehen
allowance-turns = die Umdrehungen um den Stimmwirbel müssen 0 bis { $most } sein, angegeben sind { $got }

## Kurve, Hals und Tonhöhe

curve-count = eine Harfenkurve muss 2 bis { $most } Punkte haben, es sind { $got } (welche hinzufügen oder entfernen)
curve-number = Punkt { $number } der Harfenkurve muss eine Zahl sein (ihn berichtigen)
curve-order = Punkt { $number } muss mindestens { $least } mm weiter zum Diskant liegen als der vorige, es sind { $got } mm (ihn verschieben)
no-neck = ein Hals braucht drei oder mehr Saiten von bekannter Länge (die Längen der Saiten angeben)
reference = die Tonhöhe von A4 muss { $least } bis { $most } Hz sein, angegeben sind { $got } Hz
note-empty = ein Ton fehlt (Buchstabe und Oktave schreiben, etwa A4 oder Es3)
note-letter = ein Ton beginnt mit einem Buchstaben von A bis H, geschrieben steht „{ $got }“ (A4 oder Es3 schreiben)
note-octave = „{ $got }“ fehlt die Nummer der Oktave (das mittlere C ist C4)
note-range = die Oktave muss { $least } bis { $most } sein, angegeben ist { $got }
note-accidental = „{ $got }“ hat Vorzeichen, die nicht lesbar sind (#, b, x oder bb verwenden)

## Klappen und Drehscheiben

lever-push = eine Klappe oder Drehscheibe muss die Saite um { $asked } Cent erhöhen, mit { $push } mm Weg zur Seite wird es an jeder Stelle mehr (die Saite weniger weit zur Seite drücken)
lever-natural = die Auflösungsscheibe muss der Kreuzscheibe etwas zu erhöhen lassen, an ihrer eigenen Stelle geben beide zusammen { $got } von { $asked } Cent (sie näher an den Stegstift setzen)
lever-semitones = eine Klappe oder Drehscheibe muss die Saite um 1 bis { $most } Halbtöne erhöhen, angegeben sind { $got }
lever-fixings = die Saite muss zwischen ihren Befestigungen mindestens so lang sein wie ihre klingende Länge ({ $length } mm), angegeben sind { $between } mm (dazu kommt, was jenseits des Stegstifts und im Korpus liegt)
lever-above = { $figure }: eine Zahl über 0, angegeben ist { $got }
lever-from = { $figure }: eine Zahl ab 0, angegeben ist { $got }
lever-within = { $figure }: eine Zahl über 0 und unter der klingenden Länge, angegeben ist { $got }
figure-natural = Abstand der Auflösungsscheibe in Millimetern
figure-length = klingende Länge in Millimetern
figure-tension = Zugkraft in Newton
figure-rigidity = Dehnsteifigkeit in Newton
figure-push = Weg zur Seite in Millimetern
figure-bending = Biegesteifigkeit in N m²
