# Mit einer Harfe beginnen: eine neue, eine nach Maßen, ein Beispiel.

own = Eine neue Harfe
measured = Nach Maßen, um eine Harfe neu zu bespannen
title = Neue Harfe
how = Wie beginnen
empty = Mit einer leeren Tabelle beginnen
stays = Was jetzt offen ist, bleibt unter Entwürfe, wenn es geändert wurde.
sample = Nach einer Beispielharfe

## Eine neue Harfe

lowest = Tiefste Saite
highest = Höchste Saite
winding = Umspinnung beginnt bei
wrong-end = { $field }: { $why }.
wrong-count = Anzahl der Saiten: { $fewest } bis { $most } angeben ({ $kind }), oder beide Enden.
no-findings = Keine Befunde zu den Saiten.
findings = { $count ->
    [one] { $count } Befund.
   *[other] { $count } Befunde.
} { $first }
compass = Umfang
compass-is = { $low } bis { $high }, { $count ->
    [one] { $count } Saite
   *[other] { $count } Saiten
}
lengths = Klingende Längen
range = { $from } bis { $to } { $unit }
total = Gesamtzug
wound = Umsponnene Saiten
feel = Zupfhärte (Spielgefühl)
frame = Rahmen
none-wound = keine
wound-from = { $count }, ab { $note } abwärts
frame-is = Hals { $neck } { $unit } dick, Säule { $wide } × { $deep } { $unit }, Decke { $bass } bis { $treble } { $unit } dick
numbered = { $title }, Nr. { $number }
wanted = Die Harfe
kind = Art der Harfe
material = Hauptmaterial
count = Anzahl der Saiten
ends-follow = Die Enden folgen der Anzahl, und die Anzahl folgt den Enden.
winding-usual = wo es passt
winding-hint = Die höchste umsponnene Saite, etwa G3. Bleibt das Feld leer, wird sie vorgeschlagen.
each-has = Jede Saite hat
open-to = Leere Saiten gestimmt in
start = Beginnen
start-notes = Nur mit den Tönen beginnen
start-notes-hint = Nur die Töne; Längen und Saiten bleiben leer
clear = Felder leeren
will-be = Was entsteht
preview-label = Zugkraft und Spielgefühl über den Umfang, der Bass links. Die Zeilen darüber nennen ihren Bereich.
preview-sources = Umfang, Längen und Stärken für den Anfang sind übliche Praxis, ohne Quelle. Die Maße des Rahmens folgen aus einer Schätzung, die die Saitenleiste mitzählt, aber keine Balken; sie beweist nicht, dass ein Rahmen sicher ist.

## Nach Maßen

not-started-asked = Nicht begonnen: zuerst die Frage neben der Liste beantworten.
not-started = Nicht begonnen: { $why }
not-known = nicht bekannt
table-of-strings = Eine Tabelle von irgendwoher, oder eine Zeile für jede Saite: Ton, Länge und, wenn bekannt, die alte Saite. Die Spalten dürfen in jeder Reihenfolge stehen. Ein Fragezeichen ist eine Länge, die nicht gemessen wurde.
else-material = Material der Saiten, zu denen die Liste keines nennt
without-notes = Für eine Liste ohne Tonnamen:
list-highest = Höchste Saite der Liste
list-lowest = Tiefste Saite der Liste
list-open = Leere Saiten der Liste
throw-away = Text verwerfen
strings = { $count ->
    [one] { $count } Saite.
   *[other] { $count } Saiten.
}
questions = Fragen
which-column = Welche Spalte was ist
each-row = Was aus jeder Zeile wird
granted = Annahmen
head-heading = Überschrift
head-first = Erste Zelle
head-is = Ist
head-bare = Zahlen ohne Einheit sind in
head-number = Nr.
head-note = Ton
head-length = Länge
head-gauge = Stärke
head-material = Material
head-remark = Bemerkung
b-flat = B, der Halbton unter H
b-natural = H
column = Spalte { $number }
column-is = { $column } ist
column-unit = Einheit von { $column }
left-out = weggelassen
go-there = Dorthin
go-there-to = Dorthin: { $gap }
missing-title = Erster Schritt: was dieser Harfe fehlt
missing-none = Nichts fehlt: jede Saite hat ihren Ton, ihre Länge und ihren Aufbau.
missing-some = Nichts wurde geraten. Hier steht, was nicht gemessen wurde oder nicht lesbar ist; was sich ohne das berechnen lässt, steht schon in der Tabelle. Diese Liste ist wieder zu finden unter Was fehlt, neben den Befunden.
choose-instead = Bekommt die Harfe ohnehin neue Saiten, brauchen Material und Stärke nicht gemessen zu werden: „Saiten wählen“ findet sie allein nach Tönen und Längen.
and-more = Und { $more } weitere.
asks-unit = Die Zahlen nennen keine Einheit. Wahrscheinlich: { $looks }, nicht { $said }. Was stimmt?
asks-unit-under = Die Zahlen unter „{ $heading }“ nennen keine Einheit. Wahrscheinlich: { $looks }, nicht { $said }. Was stimmt?
asks-b = Unter den Tönen ist B, aber kein H. In deutschen Listen ist B der Halbton unter H, in englischen ist B das H. Was gilt hier?
gap = Saite { $number }: { $gap }.
gap-noted = Saite { $number }, { $note }: { $gap }.
gaps = Saiten { $strings }: { $gap }.
