# Die Kurven, die Saiten im Maßstab, und was über der Zeichnung liegt.

## Kurven

no-strings = Noch keine Saiten
no-figure = Noch keine Saite hat diesen Wert
breaks = reißt
string = Saite
compared = zum Vergleich
range = Toleranz
metals-to = { $words }, Metalle bis { $percent }

## Die Legende

no-make-up = ohne Aufbau
weighed = gewogen
weighed-of = { $material }, gewogen
wound-of = { $material }, umsponnen

## Saiten im Maßstab

no-lengths = Noch keine Saite hat eine Länge
to-scale = Längen im Maßstab

## Bilder

nothing-to-draw = Noch gibt es nichts zu zeichnen. Zuerst den Saiten ihre Längen geben.
no-picture = Dieser Browser hat das Bild nicht gemacht. Stattdessen als SVG speichern.

## Was über der Zeichnung liegt

over-nothing = Nichts
over-measures = Maße
over-bend = Krümmung
measures = Gesamtmaße, die längste und die kürzeste Saite, die Decke und ihr Winkel, der Hals bei Saite { $string }.
measures-gaps = { $measures } Saitenabstand senkrecht zu den Saiten, Bass und Diskant: { $gaps }.
bend-even = Längere Striche bedeuten eine engere Kurve, jeder Stift an seinen Nachbarn gemessen. Keine Saite fällt auf.
bend-kinks = Längere Striche bedeuten eine engere Kurve, jeder Stift an seinen Nachbarn gemessen. Nach den Nachbarn: { $kinks }.
looks-short = Saite { $string } wirkt { $by } zu kurz
looks-long = Saite { $string } wirkt { $by } zu lang

## Die Lasten des Halses

loads-forces = Kräfte am Rahmen
loads-moment = Biegemoment
loads-shear = Schub
loads-axial = Kraft entlang des Halses
loads-twist = Drehmoment
loads-use = Anteil der zulässigen Spannung
about-forces = Druck der Säule und Kraft der Schulter auf den Hals, und die Linie, auf der alle Saiten zusammen ziehen.
about-moment = Biegemoment im Hals, auf der Zugseite gezeichnet.
about-shear = Schub im Hals. Unter der Mittellinie zieht der Teil zur Säule hin den Rest zu den Saiten.
about-axial = Kraft entlang des Halses: über der Mittellinie Zug, darunter Druck.
about-twist = Drehmoment im Hals durch die Saiten neben ihm.
about-use = Anteil der zulässigen Spannung an jedem Schnitt des Halses.
area-pushes = Die Fläche gilt, wenn die Säule nur drückt, die gestrichelte Linie, wenn keine Verbindung nachgibt.
area-joints = Die Fläche gilt, wenn die Verbindungen doppelt so viel nachgeben, wie ihre Maße sagen, die gestrichelte Linie, wenn keine nachgibt.
forces-pushes = Gezeichnet für eine Säule, die nur drückt.
forces-joints = Gezeichnet für Verbindungen, die doppelt so viel nachgeben, wie ihre Maße sagen.
then-at-most = { $about } Dann höchstens { $value }.
limit = Grenze
arrow-pillar = Säule
arrow-shoulder = Schulter
arrow-all = Alle Saiten { $force }
