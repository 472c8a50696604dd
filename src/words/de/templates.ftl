# Schablonen in voller Größe und die Liste ihrer Punkte.

## Die Zeichnung

harp = Harfe
origin = wo die tiefste Saite auf die Decke trifft
from-side = Von der Seite gesehen, in der Ebene der Saiten. Ein Kreuz bezeichnet eine Mitte.
drill = So bohren, wie es die eigenen Stifte, Klappen und Saiten brauchen. Zuerst an einem kleinen Stück versuchen.
sign-lever = Ein Strich quer über eine Saite: eine Halbtonklappe.
sign-disc-natural = Ein Kreis auf einer Saite: die Auflösungsscheibe, für den ersten Halbton.
sign-disc-sharp = Zwei Kreise auf einer Saite: die Kreuzscheibe, für den zweiten Halbton.
left-out = Weggelassen, weil Länge oder Stelle nicht bekannt ist: Saiten { $strings }.
left-out-more = Weggelassen, weil Länge oder Stelle nicht bekannt ist: Saiten { $strings } und { $more } weitere.
unit = Eine Einheit ist ein Millimeter. Das Kreuz im Kreis ist 0, 0.
origin-is = Nullpunkt: { $origin }

## Ebenen

outline = Umriss
board = Decke
pillar = Säule
strings = Saiten
pins = Stifte
holes = Löcher
levers = Halbtonklappen
discs-natural = Auflösungsscheiben
discs-sharp = Kreuzscheiben
far-edge = hintere Kante
openings = Schalllöcher
mortises = Zapfenlöcher
grain = Faser
marks = Marken
dimensions = Maße
text = Text

## Die Stiftliste

pin-remark = Stift { $pin } mm; für einen konischen Stift das dünne Ende bohren und aufreiben
hole-eyelet = { $along } mm längs der Decke; für die Hülse
hole-string = { $along } mm längs der Decke; Saite { $gauge } mm
hole-unknown = { $along } mm längs der Decke; die Stärke der Saite ist nicht bekannt
origin-caution = { $origin }. { $caution }

## Ein Blatt

scale = Mit 100 % drucken, nicht an die Seite anpassen.
bars = Vor dem Schneiden beide Maßstäbe prüfen.
bar = 100 mm (3,94 in)
whole = ganze Zeichnung auf einem Blatt; Feld ab x { $x }, y { $y } mm
sheet = Blatt { $number } von { $count }; Feld ab x { $x }, y { $y } mm
cut = schneiden
edge = Kante von { $sheet } an die punktierte Linie

## Der Plan der Blätter

template = Schablone
full-size = Volle Größe auf { $count } { $count ->
    [one] Blatt
   *[other] Blättern
} { $paper }, { $side ->
    [landscape] quer
   *[portrait] hoch
}, mit { $overlap } mm Überlappung. { scale }
origin-at = Nullpunkt (x 0, y 0): { $origin }
grey = Grau und durchgestrichen: nichts zu zeichnen, kein Blatt gedruckt.
join = Die Blätter zusammenfügen
join-cut = Jedes Blatt an seiner durchgezogenen Linie schneiden: links, unten oder beides. Ein Blatt ohne solche Linie wird nicht geschnitten.
join-row = Jede Reihe von links nach rechts fügen: die Schnittkante an die punktierte Linie des linken Blatts legen, so dass sich beide Hälften der nummerierten Rauten treffen.
join-rows = Dann die Reihen von unten nach oben fügen, jede über die untere, auf dieselbe Weise.
join-straight = Ehe der Kleber fest ist, ein Lineal an eine lange Linie über die Naht legen: sie darf keinen Absatz haben.
join-name = Der Name eines Blatts, wie auf dem Plan, steht unten links.
alone = Es ist nur ein Blatt: nichts wird gefügt.
before-cut = Vor dem Schneiden
check-bars = Auf jedem Blatt beide Maßstäbe mit einem Stahlmaß messen. Jeder muss 100 mm haben; weicht einer um mehr als 0,3 mm ab, den Drucker auf 100 % stellen und das Blatt noch einmal drucken.
check-damp = Papier wächst und schrumpft mit der Luftfeuchte. Am Tag des Bohrens auf den gefügten Blättern vom ersten bis zum letzten Stift messen und mit der Stiftliste vergleichen.
check-scrap = Jeden Bohrer und Stift zuerst in einem Rest desselben Holzes versuchen. Schutzbrille tragen.
check-load = Eine Schablone sagt, wo etwas hinkommt, nicht, dass das Holz die Saiten trägt: Hals, Säule und Decke auf ihre Last prüfen lassen.
check-origin = Das Kreuz im Kreis ist der Nullpunkt, x 0, y 0. Alle Längen auf den Blättern zählen von dort.
on-sheets = Was auf jedem Blatt ist
on-sheets-continued = Was auf jedem Blatt ist, Fortsetzung
one-label = { $layers }; Nummer { $label }
labels = { $layers }; Nummern { $first } bis { $last }

## Warum es keine Schablone gibt

empty = eine Schablone muss etwas zu zeichnen haben, es ist keine Form da (eine Ebene hinzufügen)
point = jeder Punkt einer Schablone muss eine Zahl sein und höchstens { $most } mm vom Nullpunkt liegen, hier { $x } mm und { $y } mm in der Ebene „{ $layer }“ (die Längen prüfen)
size = die Zeichnung darf höchstens { $most } mm breit und hoch sein, hier { $width } mm mal { $height } mm (die Längen prüfen)
measure = in der Ebene „{ $layer }“ muss dieses Maß größer als 0 und höchstens { $most } mm sein: { $what }, hier { $got } mm (ändern)
radius = Halbmesser
cross = Kreuz
letter-height = Höhe der Buchstaben
angle = ein Winkel in der Ebene „{ $layer }“ muss eine Zahl sein, hier { $got } (ändern)
short = eine Linie in der Ebene „{ $layer }“ muss mindestens zwei Punkte haben, hier weniger (die Linie weglassen)
many = eine Schablone darf höchstens { $most-shapes } Formen und { $most-points } Punkte haben, hier { $shapes } und { $points } (weniger Ebenen zeichnen)
letters = ein Text, ein Titel und eine Notiz dürfen höchstens { $most } Buchstaben haben, und höchstens { $most } Notizen sind möglich, hier { $got } (kürzen)
overlap = Blätter müssen sich um { $least } mm bis { $most } mm überlappen, hier { $got } mm (eine andere Überlappung wählen)
too-many-sheets = eine Schablone muss auf höchstens { $most } Blätter passen, hier sind es mehr (stattdessen auf ein großes Blatt drucken oder weniger Ebenen zeichnen)
large-sheet = ein großes Blatt darf höchstens { $most } mm breit und hoch sein, hier { $width } mm mal { $height } mm (stattdessen auf kleine Blätter drucken)
