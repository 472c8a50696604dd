# Was zwei Entwürfe unterscheidet: die Namen des Verglichenen, und seine Wörter.

## Spalten und Summen

note = Ton
make-up = Aufbau
length = Länge
gauge = Stärke
tension = Zugkraft
stiffness = Zupfhärte
share = Auslastung
strings = Saiten
total-tension = Gesamtzug
highest-share = höchste Auslastung
stiffness-range = Zupfhärte, niedrigste bis höchste
kinds-to-buy = verschiedene Saiten zu kaufen
findings = Befunde
price = Preis der Saiten
without = { $sum }, ohne { $count } { $count ->
    [one] Saite
   *[other] Saiten
}
range = { $low } bis { $high } { $unit }

## Einstellungen

title = Titel
maker = Hersteller
client = Kunde
serial = Seriennummer
date = Datum
open-tuning = Grundstimmung
remarks = Bemerkungen
temperament = Temperierung
mechanism = Klappen oder Drehscheiben
own-mechanism = Klappen oder Drehscheiben einzelner Saiten
measured = wie der Saitenabstand gemessen ist
spacing = Saitenabstand, mm
drives = wovon die Form ausgeht
drives-lengths = Längen
drives-curve = Harfenkurve
nodes = Punkte der Harfenkurve
neck-wood = Holz des Halses
sections = Querschnitte des Halses, %, mm
section = { $at }: { $thickness } mal { $depth }
neck-layers = Lagen des Halses, mm, Grad
plates = Metall am Hals
one-side = einseitig
own-woods = eigene Hölzer
softwood = Nadelholz
hardwood = Laubholz
by-class = nach Klasse
pillar-wood = Holz der Säule
board-wood = Holz der Decke
rib-wood = Holz der Saitenleiste
joints = Verbindungen
soundbox = Korpus
open-back = offener Boden
bars = Balken der Decke
part-sizes = Maße für die Säge
service = wo die Harfe steht
family = Saiten zur Wahl
wound-from = Ton, von dem an die Saiten umsponnen sind
wants = Soll der Saiten
wanted-curve = Sollkurve
zones = Stärken nach Zonen
kinds = Saitenarten
spares = Ersatzsaiten
materials = Werte der Materialien
codes = Bestellnummern

## Wörter der Einstellungen

brass = Messing
aluminium = Aluminium
dowels = Dübel
bolts = Bolzen
screws = Schrauben
at-gap = { $width } bei Abstand { $number }
at-note = { $value } bei Ton { $key }
spares-none = keine
spares-item = eine von jedem Artikel
spares-string = eine für jede Saite
percent = { $percent } %
spares-from = { $spares }, von Saite { $first } an
spares-between = { $spares }, von Saite { $first } bis { $last }
