# Die Zahlen, erklärt: das Fenster, was um seine Seiten steht, und seine Tabellen.

## Das Fenster

window = Die Zahlen erklärt
topics = Themen
column-in = Spalte { $heading } der Tabelle, in { $unit }.
column-pure = Spalte { $heading } der Tabelle, eine reine Zahl.
formula-for = { $what }:
units = In die Formeln gehören Längen in m, Massen in kg, Zugkräfte in N, Spannungen und Moduln in Pa.
head-letter = Zeichen
head-meaning = Bedeutung
head-example = Im Beispiel
example = Beispiel, hier mit den üblichen Einstellungen gerechnet: { $string }.
assumptions = Annahmen
range = Wo es gilt
missing = Wann es keinen Wert gibt
sources = Quellen
checks = Wie es geprüft wurde
check = { $what }. Quelle: { $source }

## Wie gut etwas bekannt ist

standing-seen = in der Quelle gelesen
standing-second-hand = aus zweiter Hand: wie ein anderer Text es anführt
standing-computed = ausgerechnet
standing-from-memory = aus dem Gedächtnis: vor Gebrauch prüfen
standing-own = selbst eingegeben

## Themen, die kein Wert sind

title-partials = Teiltöne
title-tolerance = Toleranz
title-materials = Materialien
title-findings = Befunde und Grenzen
title-pitch = Töne und Temperierungen
title-keys = Tonarten
title-loads = Lasten auf dem Rahmen
title-woods = Hölzer und Sperrholz
title-giving = Nachgeben beim Bespannen
title-years = Über die Jahre
title-choosing = Saiten wählen
title-lengths = Bessere Längen

## Zahlen und Einheiten

span = { $least } bis { $most } { $unit }
unit-cents = Cent
unit-cents-per-degree = Cent je Grad
unit-cents-per-kelvin = Cent je Kelvin
unit-degrees = Grad
unit-millionths-per-kelvin = Millionstel je Kelvin
unit-semitones = Halbtöne
unit-turns = Umdrehungen
unit-years = Jahre

## Die Saiten der Beispiele

example-nylon = A4, 448 mm lang, Nylon 0,81 mm, mit Halbtonklappe
example-disc = A4, 448 mm lang, Nylon 0,81 mm, mit einer Drehscheibe
example-discs = A4, 448 mm lang, Nylon 0,81 mm, mit zwei Drehscheiben
example-steel = A5, 250 mm lang, Klavierdraht aus Stahl 0,30 mm
example-wound = A2, 900 mm lang, Stahl 0,50 mm, dicht umsponnen mit Bronze 0,30 mm, frei auf 12 mm an der Decke und 15 mm am Stift

## Tabellen der Materialien, Hölzer und Temperaturen

table-of-design = Materialien dieses Entwurfs
table-others = Die anderen Materialien des Programms
table-woods = Die Hölzer des Programms
table-temperaments = Cent gegen die gleichstufige Temperierung, bei gleichem A
head-material = Material
head-wood = Holz
head-temperament = Temperierung
head-figure = Größe
head-value = Wert
head-source = Quelle
head-known = Wie gut bekannt
fact-density = Dichte
fact-density-off = Toleranz der Dichte
fact-diameter-off = Toleranz des Durchmessers
fact-modulus = Modul bei Schwingung
fact-modulus-minutes = Modul über Minuten
fact-modulus-weeks = Modul über Wochen
fact-strength = Festigkeit
fact-expansion = Wärmedehnung
fact-loss = Verlustfaktor
facts-missing = Nicht bekannt
fact-modulus-bending = Modul bei Biegung
fact-bending = Biegung
fact-compression-along = Druck längs der Faser
fact-compression-across = Druck quer zur Faser
fact-shear = Schub
fact-tension-across = Zug quer zur Faser
strength-allowed = { $strength }, unter dauernder Last zulässig { $allowed }
modulus-rising = { $base } + { $rise } mal die Spannung
strength-table = { $first } bei { $first-at } bis { $last } bei { $last-at }, { $diameters } Durchmesser
step-up-to = { $value } bis { $most }

## Ein Schnitt durch den Hals, von Hand

hand-pillar = Die Säule
hand-beyond = Von Hand: was jenseits eines Schnitts am Hals zieht, bei der Beispielharfe mit 36 Saiten
hand-force = Kraft
hand-at-x = x in mm
hand-at-y = y in mm
hand-to-x = X in N
hand-to-y = Y in N
hand-steps = Derselbe Schnitt, Schritt für Schritt, mit einer Säule, die nur drückt
hand-step = Schritt
hand-numbers = Zahlen
hand-cut = Der Schnitt
hand-direction = Seine Richtung
hand-sums = Summe von X, Summe von Y
hand-along = Längs des Halses
hand-across = Quer zum Hals
hand-bending = Biegung
hand-torque = Drehmoment und Biegung zur Seite
hand-torque-is = T = { $torque }, M′ = { $sideways }, allein von den Saiten, da die Säule in der Mittelebene drückt
hand-stress = Spannung längs der Faser
hand-shear = Schubspannung
hand-used = Anteil der zulässigen Spannung
hand-use = { $aspect }: { $stress } von { $limit }: { $share }
