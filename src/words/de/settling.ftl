# Die Tage, in denen sich eine neue Harfe setzt: Stimmblatt, Plan, Aufzeichnung, nach Gehör gewogene Saiten.

title = Einstimmen
hint = Die Harfe in Runden hochstimmen und sehen, wann sie hält.
sheet = Stimmblatt

## Das Stimmblatt

running = { $name } — Stimmblatt
head-pitch = Tonhöhe
head-cents = Cent
head-raised = erhöht auf
head-stretch = Dehnung
head-pin = Wirbel
head-turns = Umdr.
head-round = Runde
keys = Tonarten mit den Stellungen von Klappen oder Pedalen
keys-some = Ein Stern: einige Saiten erreichen ihren Ton nicht.
sheet-cents = Cent: wie weit die Saite bei gleichem A4 neben der gleichstufigen Stimmung liegt, wie ein einfaches Stimmgerät es zeigt.
sheet-raised = Mit offenen Klappen, Pedalen oben und offenen Scheiben stimmen. Erhöht auf: was Klappe oder Scheibe dann aus der Saite macht; bei zwei Scheiben ein und zwei Halbtöne höher.
sheet-turns = Dehnung und Umdrehungen gelten von schlaff bis zur Tonhöhe. Was Saite und Knoten kriechen, kommt dazu.
sheet-rounds = In Runden hochstimmen: die erste bis eine Quarte unter die Tonhöhe, die zweite bis einen Halbton darunter, die weiteren auf Tonhöhe. Eintragen, wie weit jede Saite danebenliegt, wenn sie wieder an der Reihe ist.

## Der Plan

plan = Die Harfe hochstimmen
order = Reihenfolge
begin = Erste Runden
begin-two = Quarte, dann Halbton darunter
begin-one = Ein Halbton darunter
begin-none = Keine, gleich auf Tonhöhe
round = Runde
round-below = Runde { $number }, bis { $semitones } { $semitones ->
    [1] Halbton
   *[other] Halbtöne
} darunter
round-at-pitch = Runde { $number }, auf Tonhöhe
string = Saite
tune-to = Stimmen auf
sharp = Höher, Cent
pin = Wirbel drehen
left = Nach der Runde daneben, Cent
stretch = Dehnung
cut-to = Abschneiden auf
mind = Beachten
pin-turns = { $turns } Umdr.
pin-degrees = { $degrees }°
range = { $least } bis { $most }
table = Die Saiten der Runde, der Reihe nach
rounds-needed = { $count } Runden bringen jede Saite auf { $cents } Cent genau, bevor die Saiten selbst kriechen.
rounds-not-enough = Nach { $count } Runden liegen einige Saiten noch mehr als { $cents } Cent daneben: der Rahmen gibt zu sehr nach, um weitere auszurechnen.
rounds-without = Würde keine Saite höher gestimmt, wären es { $count } Runden.
not-foretold = Wie weit Saiten fallen, während die anderen hochkommen, ist nicht ausgerechnet: dazu braucht es einen Rahmen mit allen Maßen und eine Decke, deren Steifigkeit bekannt ist. Weitere Runden stimmen, bis die Saiten halten.
left-out = Weggelassen, da etwas an ihnen unbekannt ist: { $strings }.
load-no-more = In dieser Reihenfolge trägt der Rahmen nie mehr als mit allen Saiten auf Tonhöhe: { $whole } % der zulässigen Last.
load-more = Mit einem Teil der Saiten auf Tonhöhe belastet diese Reihenfolge den Rahmen bis { $highest } % der zulässigen Last, gegen { $whole } % mit allen. Die ersten Runden unter der Tonhöhe halten es niedriger.
easier = Diese Reihenfolge schont den Rahmen mehr: { $order }.
reach-limited = An ihrer Grenze: bleibt darunter, die nächste Runde holt es nach.
reach-no-room = An ihrer höchsten Auslastung: nie höher stimmen.
reach-no-strength = Bruchlast unbekannt: nie höher stimmen.
many-turns = Zuerst von Hand durchziehen.
how = „Höher“ sagt, wie weit über das Ziel der Runde eine Saite gestimmt wird, damit sie darauf zurückkommt, während die anderen folgen. Keine Saite wird über die Hälfte dessen gestimmt, was bis zum Reißen bleibt, keine über ihre höchste Auslastung und keine mehr als 50 Cent über die Tonhöhe.
how-far = „Nach der Runde daneben“ ist geschätzt, für Rahmen und Saiten so steif und so weich, wie sie sein können. Bei Saiten aus Darm oder Kunststoff nach jeder der ersten Runden auf Tonhöhe einen Tag warten. Übliche Praxis, ohne Quelle.

## Die Aufzeichnung

log = Aufzeichnung
log-hint = Immer wieder eintragen, wie weit jede Saite danebenliegt. Die Werte bleiben mit dem Entwurf in diesem Browser und in seiner Sicherung.
kind = Was geschah
heard = Gehört
tuned = Gestimmt, gelassen bei
cents = Cent daneben
celsius = Temperatur, °C
note = Eintragen
take-back = Letzte Zeile zurücknehmen
log-empty = Noch ist nichts eingetragen.
bad-cents = Die Cent als Zahl von −2400 bis 2400 schreiben.
bad-celsius = Die Temperatur als Zahl von −40 bis 60 schreiben oder leer lassen.
noted = Eingetragen: { $string }, { $cents } Cent.
taken-back = Die letzte Zeile ist zurückgenommen.
nothing-taken = Es gibt keine Zeile zum Zurücknehmen.
log-full = Die Aufzeichnung ist voll.
not-kept = Dieser Browser behält die Aufzeichnung nicht: { $why }.
log-table = Was die Aufzeichnung von jeder Saite sagt
readings = Zeilen
last = Zuletzt, Cent
rate = Cent je Tag jetzt
holds = Hält eine Woche auf 5 Cent
holds-already = jetzt
holds-from = ab { $day }
holds-surely = ab { $day }, spätestens { $latest }
holds-open = ab { $day }; spätestens lässt sich nicht sagen
holds-not = lässt sich noch nicht vorhersagen
no-tuning = zuerst eine Stimmung eintragen
no-reading = einen Wert nach der Stimmung eintragen
off-by = { $value } ± { $error }
slipped = { $string } ist vor { $when } auf einmal um { $cents } Cent gefallen: nachsehen, ob Knoten oder Wirbel rutscht.
falls-faster = { $string } fällt um { $cents } Cent, während die Zeit sich verzehnfacht, ihre Nachbarn um { $beside }: Knoten oder Wirbel rutschen vielleicht nach und nach.
rises = { $string } steigt um { $cents } Cent, während die Zeit sich verzehnfacht: Werte und Luftfeuchte prüfen, und ob jemand an den Wirbel gestoßen ist.
scatters = Die Werte von { $string } streuen um { $cents } Cent, die ihrer Nachbarn um { $beside }: vielleicht ist die Saite unrein.
law = Das Gesetz: Saiten kriechen mit dem Logarithmus der Zeit seit dem Stimmen, ab einer Minute gezählt; jedes Nachstimmen beginnt neu mit dem, was dazukam. Aus dem Gedächtnis, ohne Quelle. Das ± gilt in 95 von 100 Fällen. Über das Zehnfache der aufgezeichneten Zeit hinaus wird nichts vorhergesagt, und eine Saite wird nur mit mindestens drei Nachbarn ihres Materials verglichen.

## Nach Gehör

ear = Eine Saite nach Gehör wiegen
ear-hint = An eine Saite bekannter Länge ein Gewicht hängen und aufschreiben, wie hoch sie klingt. Eine Last gibt die Masse je Meter; mit einer zweiten, deutlich anderen fällt die Steifigkeit heraus, und vielleicht ergibt sich der Modul einer blanken Saite.
ear-length = Klingende Länge
ear-load = Angehängte Last
ear-pitch = Klingt, Hz
ear-second-load = Zweite Last
ear-second-pitch = Klingt dann, Hz
ear-diameter = Durchmesser einer blanken Saite
of-pitch = Tonhöhe in Hertz
ear-nothing = Diese Werte ergeben keine Saite: Lasten und Tonhöhen müssen verschieden sein, und die größere Last muss höher klingen.
weighs = { $value } ± { $error } g/m.
modulus-is = Modul { $value } ± { $error } GPa.
modulus-not = Ihre Steifigkeit ist kleiner als die Unsicherheit der Werte: kein Modul.
ear-errors = Angenommen sind Fehler von 0,5 mm in der Länge, 0,5 % in der Last, 0,5 Cent in der Tonhöhe und 0,01 mm im Durchmesser. Ein fallendes Gewicht oder eine reißende Saite verletzt: Schutzbrille tragen, niedrig über etwas Weichem aufhängen, Füße und Gesicht fernhalten.
partials = Teiltöne vom ersten aufwärts, Hz
partials-of = Vergleichen mit Saite
partials-say = Inharmonizität { $b } ± { $error } Millionstel, erster Teilton { $first } Hz.
chart-says = In der Tabelle stehen { $b } ± { $error } Millionstel, nach allen Toleranzen außer der des Moduls.
chart-agrees = Das passt zusammen.
chart-softer = Die Saite ist steifer als in der Tabelle: ihr Modul oder ihre Stärke kann anders sein als dort.
chart-stiffer = Die Saite ist weniger steif als in der Tabelle: ihr Modul oder ihre Stärke kann anders sein als dort.
few-partials = Mindestens { $count } Teiltöne schreiben, mit einem Strich für einen, der nicht zu hören war.
