# Die Harfe bespannen, Saite für Saite, groß geschrieben.

title = Harfe bespannen
order = Reihenfolge
progress = { $up } von { $count } Saiten aufgezogen und gestimmt
all-up = Alle { $count } Saiten sind aufgezogen und gestimmt. Weitere Runden stimmen, bis sie halten.
next-in-order = Als Nächste: { $string }
back = Zurück
next = Weiter
tick = Aufgezogen und gestimmt
cut = Abschneiden auf
gauge = Stärke
vibrating = Klingende Länge
turns = Umdrehungen am Wirbel
turns-take-up = { $turns } davon nehmen die Dehnung auf
tune = Stimmen auf
tune-lever = mit offener Klappe
tune-discs = Pedal oben, Scheiben offen
code = Bestellnummer
no-code = keine
string-c = eine C-Saite
string-f = eine F-Saite
was-other = Abgehakt für eine andere Saite: { $then }. Jetzt ist es { $now }. Neu abhaken, sobald diese aufgezogen ist.
before = Vor dem Anfang
no-strings = Es gibt noch keine Saiten. Zuerst in die Saitentabelle eintragen.
not-kept = Dieser Browser behält die Haken nicht: { $why }.
