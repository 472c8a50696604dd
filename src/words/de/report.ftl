# Der Entwurfsbericht und die Papiere der Ansichten.

## Überschriften

summary = Zusammenfassung
sources = Quellen der Zahlen
totals = Summen
settings = Einstellungen, die sich unterscheiden
differing = Saiten, die sich unterscheiden, vorher → nachher
curves = Kurven, der Bass links
drawing = Zeichnung von der Seite, nicht maßstäblich
loads = Lasten, geschätzt
forces = Kräfte, geschätzt
giving = Wie der Rahmen beim Bespannen nachgibt, geschätzt
years = Über die Jahre, geschätzt
assumptions = Annahmen über den Rahmen
findings = Befunde

## Die Zusammenfassung

total = { $count } Saiten. Gesamtzug { $newton } ({ $kgf }, { $lbf }).{ $missing ->
    [0] { "" }
    [one] { " " }Eine Saite ohne Zugkraft ist nicht dabei.
   *[other] { " " }{ $missing } Saiten ohne Zugkraft sind nicht dabei.
}
tightest = Am stärksten ausgelastet: Saite { $string }, mit { $share } % ihrer Bruchlast.
no-findings = Keine Befunde zu den Saiten.
findings-told = { $count ->
    [one] Ein Befund zu den Saiten, er steht weiter unten.
   *[other] { $count } Befunde zu den Saiten, sie stehen weiter unten.
}

## Die Abschnitte

formulas = Die Formeln, ihre Quellen, wo sie gelten und wie jede geprüft wurde, stehen in Stringloft unter „Die Zahlen erklärt“.
before-after = Vorher: { $before }. Nachher: { $after }.
no-difference = Keine Saite unterscheidet sich.
no-strings = Es gibt noch keine Saiten.
curves-of = Kurven über den Umfang: { $names }
drawing-of = Zeichnung der Harfe von der Seite
nothing-to-draw = Noch gibt es nichts zu zeichnen: die Saiten haben keine Längen.
no-loads = Noch gibt es keine Lasten: den Saiten fehlen Töne, Längen oder Aufbau.
not-judged = Der Rahmen ist nicht beurteilt: { $why }.
over-years = { $what }: { $one } nach einem Jahr, { $ten } nach zehn.
grave = Ernst. { $finding }
warning = Warnung. { $finding }
of-string = Saite { $string }: { $finding }
of-strings = Saiten { $first } bis { $last }: { $finding }
printed = Gedruckt am { $day } aus Stringloft.

## Köpfe der Spalten

head-pluck = Zupfhärte
head-pluck-long = Zupfhärte
head-load-share = Auslast.
head-partial = Teilton 8
head-pitch = Tonhöhe
head-tension = Zugkraft
head-length = Länge
head-gauge = Stärke
head-part = Teil
head-used = Anteil, geschätzt
head-leads = was den Ausschlag gibt, und wo
head-force = Kraft
head-how-much = wie groß
head-what = was
head-before = vorher
head-after = nachher

## Die Saiten, die sich unterscheiden

new = { $number }, neu
gone = { $number }, weg

## Die Quellen der Materialien

no-material = Keine Saite hat ein Material, dessen Werte gebraucht werden.
material = { $name }. { $density }{ $more }.
density = Dichte { $density } kg/m³: { $source } ({ $standing })
strength = ; Festigkeit: { $source } ({ $standing })
stiffness-sounding = ; Modul bei Schwingung: { $source } ({ $standing })
stiffness-minutes = ; Modul über Minuten: { $source } ({ $standing })
stiffness-weeks = ; Modul über Wochen: { $source } ({ $standing })
