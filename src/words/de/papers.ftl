# Was alle Papiere gemeinsam haben, die Bestellliste auf Papier und die Leiste über einem Papier auf der Seite.

## Arten von Papieren

card = Saitenkarte
order-list = Bestellliste
report = Entwurfsbericht
chart = Saitentabelle
drawing = Zeichnung
comparison = Fassungen im Vergleich
report-within = Entwurfsbericht
chart-within = Saitentabelle
drawing-within = Zeichnung
comparison-within = Fassungen im Vergleich
titled = { $kind }: { $title }

## Jede Seite

page = Seite { $page } von { $pages }
continued = { $title }, Fortsetzung
running-card = { $name }, Entwurfskennung { $mark }
running-order = { $title }, Bestellliste
running-report = { $name }, { $kind }, Entwurfskennung { $mark }

## Der Kopf

untitled = Harfe ohne Namen
maker = Hersteller
serial = Seriennummer
client = gebaut für
date = Datum
open-tuning = Grundstimmung
strings = Saiten
pitch = Tonhöhe
mark = Entwurfskennung
strings-and-spares = Saiten und Ersatz
compass = { $count }, { $lowest } bis { $highest }
pitch-is = A4 = { $hz } Hz, { $temperament }
equal = gleichstufig
pythagorean = reine Quinten (pythagoreisch)
meantone = mitteltönig (Viertelkomma)
werckmeister = Werckmeister III
vallotti = Vallotti
young = Young II
just = reine Stimmung auf C

## Köpfe der Spalten

head-number = Nr.
head-string = Saite
head-octave = Oktave
head-note = Ton
head-make-up = Aufbau
head-core-first = Kern zuerst, mm
head-gauge = Ø
head-vibrating = Länge
head-cut-to = Schnitt
head-order = Bestell-
head-code = Nr.

## Unter einer Tabelle

remarks = Bemerkungen: { $remarks }
named = { $key }: { $name }
covered = Bei … %: Deckung.
bare = Frei: Kern ohne Umspinnung an der Decke (Decke) und am Stegstift (Stift).
dash-means = Ein Strich heißt: nicht bekannt.

## Der Aufbau einer Saite

bare-both = { $words }, frei { $board } Decke { $pin } Stift
bare-board = { $words }, frei { $board } Decke
bare-pin = { $words }, frei { $pin } Stift
weighed = gewogen
weighed-mass = gewogen, { $mass }
weighed-core = gewogen, Kern { $core }
weighed-mass-core = gewogen, { $mass }, Kern { $core }
packed = { $words } bei { $percent } %

## Die Bestellliste

no-supplier = Kein Lieferant genannt
outside = Außerdem gebraucht, nicht in der Lagerliste
all-outside = Gebraucht
sum = Summe: { $sum }.
nothing-to-order = Es gibt nichts zu bestellen.
head-strings = Saiten: Nr.,
head-cut-lengths = Zuschnitt, mm
head-sold = Einheit
head-pieces = Stück
head-metres = Länge
head-packs = Pack.
head-price = Preis

## Die Leiste über einem Papier

paper = Papier
language = Sprache
language-missing = Die Texte dieser Sprache ließen sich nicht holen. Noch einmal versuchen, sobald eine Verbindung besteht.
print-full-size = Mit 100 % drucken, ohne zusätzliche Ränder.
code-local = Der Code führt nur zu diesem Rechner: bevor Karten für andere gedruckt werden, Stringloft unter seiner Adresse im Netz öffnen.
not-printed = Dieser Browser hat sein Druckfenster nicht geöffnet. Stattdessen aus dem Menü des Browsers drucken.
as-it-is-now = der Entwurf, wie er jetzt ist
bar = Papier, Sprache, Drucken
