# Die Zeichnung: das Bild der Harfe und die Gruppen daneben.

## Das Fach

beside = Form, Hölzer, Lasten und Dateien
shape = Form
woods = Hölzer
loads = Lasten
stringing = Bespannen
keys = Tonarten
drills = Bohrungen
files = Dateien
not-drawn = Das lässt sich nicht zeichnen: { $why }.

## Das Bild

larger = Größer
larger-hint = Zeichnung vergrößern (+)
smaller = Kleiner
smaller-hint = Zeichnung verkleinern (-)
fit = Ganz
fit-hint = Die ganze Harfe (0)
details = Details
details-hint = Alle Werte der markierten Saite (Eingabe)
overlay = Überlagern
pin-hint = Einen Stegstift ziehen, um seine Saite zu verlängern oder zu kürzen. Das Rad vergrößert; Ziehen verschiebt das Papier.
finger-hint = Eine Saite antippen, dann ihren Stegstift ziehen, um sie zu verlängern oder zu kürzen. Zwei Finger vergrößern und verschieben das Papier, zweimal schnell tippen zeigt die ganze Harfe.
curve-drives = Die Harfenkurve bestimmt die Längen: ihre Punkte verschieben, und die Stifte folgen.
missing = { $caption } { $count ->
    [one] Eine Saite fehlt, weil sie keine brauchbare Länge hat.
   *[other] { $count } Saiten fehlen, weil sie keine brauchbaren Längen haben.
}
key-help = Bild auf und ab wählt eine Saite, Alt mit Pfeil auf oder ab macht sie länger oder kürzer. Plus, Minus und 0 vergrößern, verkleinern und zeigen die ganze Harfe, die Pfeiltasten verschieben das Papier, Eingabe öffnet die Details.
node = Punkt { $number } von { $count }: { $across } von der tiefsten Saite, { $along } entlang ihr
node-hint = Ziehen oder mit den Pfeiltasten verschieben (Umschalt zehnmal so weit, Alt ein Zehntel)

## Was die Form bestimmt

start-from = Ausgehen von
typed-or-drawn = Vorgegeben sind
lengths-drive = Die Längen: die Stifte folgen
pins-drive = Die Harfenkurve: die Längen folgen
no-curve = Eine Harfenkurve braucht mindestens zwei Saiten mit Längen. Zuerst welche eingeben.
no-more-nodes = Ein Punkt lässt sich nur hinzufügen, wo die Kurve gezeichnet werden kann und weniger als { $most } hat.
nodes = Punkte der Harfenkurve
node-column = Punkt
add-node = Punkt hinzufügen
nodes-hint = „Quer“ ist senkrecht zu den Saiten, von der tiefsten aus, „längs“ ist aufwärts von dort, wo sie auf die Decke trifft. Die Längen aus der Tabelle warten, bis wieder die Längen vorgegeben werden.

## Abstände

spacing = Saitenabstand
from-string-to-string = Von Saite zu Saite
spacing-alike = Alle gleich
spacing-zones = Nach Zonen, dazwischen in gleichen Schritten
spacing-each = Saite für Saite
measured = Gemessen
measured-square = Senkrecht zu den Saiten
measured-board = Längs der Decke
numbers-converted = Die Zahlen wurden umgerechnet: die Saiten bleiben, wo sie waren.
numbers-stayed = Die Zahlen sind geblieben, die Harfe hat jetzt also eine andere Breite.
convert = Umrechnen, damit die Harfe bleibt, wie sie ist
now-alike = Alle Abstände sind jetzt { $width } mm, das Mittel der bisherigen.
now-zones = Die Abstände haben jetzt { $count ->
    [one] { $count } Zone
   *[other] { $count } Zonen
}.
now-each = Jeder der { $count } Abstände hat jetzt seine eigene Breite.
strings-stay = { $now } Die Saiten bleiben, wo sie waren.
strings-move = { $now } Die am weitesten verschobene Saite rückt { $moved } mm.
all-zoned = Jeder Abstand hat schon seine eigene Zone.
zones = Zonen des Saitenabstands
between = Zwischen
add-zone = Zone hinzufügen
zones-hint = Abstand 1 liegt zwischen der tiefsten Saite und der nächsten. Zwischen zwei Zonen ändern sich die Breiten gleichmäßig.
widths = Breiten der Abstände, vom Bass an
gap = Abstand
widths-hint = Vom Bass aufwärts. Eine aus einer Tabellenkalkulation kopierte Spalte lässt sich einfügen.
string-number = Saite { $number }
no-strings = keine Saiten
least-room = Kleinstes Spiel zwischen zwei Saiten, die beide gezupft sind: { $room } mm, Saiten { $first } und { $second }.
gap-above = { $string }: { $square } mm zur nächsthöheren senkrecht zu den Saiten, { $along } mm längs der Decke.
is-highest = { $string } ist die höchste: darüber liegt kein Abstand.

## Hölzer

neck = Hals
pillar = Säule
soundboard = Decke
string-rib = Saitenleiste
wood-neck = Holz des Halses
wood-pillar = Holz der Säule
wood-board = Holz der Decke
wood-rib = Holz der Saitenleiste
wood-bars = Holz der Balken
wood-sides = Holz der Zargen
wood-back = Holz des Bodens
plies = Furniere
wood-figures = Seine Werte und ihre Quellen
most-sections = Ein Hals hat höchstens { $most } Querschnitte.
sections = Gemessene Querschnitte des Halses
number = Nr.
add-section = Querschnitt hinzufügen
sections-hint = Gemessene Querschnitte, von der Schulter bei 0 % bis zur Säule bei 100 %. Ohne Angaben gilt die Tiefe aus der Zeichnung und die Dicke von oben.

## Balken der Decke

bars = Balken
bars-of-board = Balken der Decke
how-many = Anzahl
wide = Breite
high = Höhe
first-at = Erster bei
last-at = Letzter bei
bars-across = Quer
bars-along = Längs, Paare
board-sides = Dicke der Decke an ihren Seiten
of-the-middle = Anteil der Mitte
at-the-sides = An den Seiten
bars-hint = 0 heißt keine. An den Seiten ist die Decke so dick wie in der Mitte, oder dieser Anteil davon. Querbalken liegen von Seite zu Seite: der erste und der letzte in Prozent der Länge der Decke von ihrem unteren Ende. Längsbalken liegen beiderseits der Saitenleiste: das erste und das letzte Paar in Prozent des Wegs von der Mitte zur Seite. Mit 0 für beides sind sie gleichmäßig verteilt.
board-map = Dicke der Decke von Ort zu Ort
map-row = Zeile
map-middle = Mitte
map-half = Halbwegs zu den Seiten
map-side = Seiten
map-at = Entlang
add-map-row = Zeile hinzufügen
most-map-rows = Eine Decke hat höchstens { $most } Zeilen von Dicken.
map-hint = Jede Zeile geht quer über die Decke, so weit an ihr entlang in Prozent von ihrem unteren Ende. Sobald es eine Zeile gibt, zählen nur diese Dicken, mit gleichmäßigen Übergängen. Auf Papier und bei den Teilen ist das Holz außen abgehobelt.
map-unusable = Diese Dicken lassen sich nicht lesen: { $text }. Eine neue Zeile ersetzt sie.

## Verbindungen

joints = Verbindungen
joint = Verbindung
neck-on-box = Schulter
pillar-on-neck = Säule–Hals
pillar-on-base = Säule–Sockel
neck-on-box-by = Schulter, gehalten durch
pillar-on-neck-by = Säule–Hals, gehalten durch
pillar-on-base-by = Säule–Sockel, gehalten durch
tenons = Zapfen und Leimflächen der Verbindungen
tenon = Zapfen
deep = Tiefe
face-wide = Breite der Fläche
fasteners = Dübel, Bolzen oder Schrauben der Verbindungen
thick = Dicke
apart = Abstand
rows-apart = Reihenabstand
joint-plates = Platten auf beiden Seiten der Verbindungen
plate = Platte
held-unknown = Nicht bekannt
held-dowels = Geleimte Dübel
held-bolts = Bolzen
steel = Stahl
brass = Messing
aluminium = Aluminium
plates-of = Platten aus
joints-hint = 0 heißt keine oder nicht bekannt. Eine Verbindung ohne Angaben wird nicht beurteilt. Die Schulter ist dort, wo der Hals auf den Knieklotz des Korpus trifft. Zapfen liegen in der Ebene der Saiten und sind so hoch wie das Teil; Dübel, Bolzen und Schrauben sitzen in beiden Teilen gleich tief, in einer Reihe in dieser Ebene oder in zweien. Bei Platten gehen Schrauben durch jede Platte in jedes Teil.

## Korpus

soundbox = Korpus
part = Teil
box-walls = Tiefe des Korpus und Dicke seiner Wände
deep-bass = Tiefe, Bass
treble = Diskant
side = Zarge
back = Boden
walls = Wände
box-inside = Reifchen und Streben des Korpus
braces-every = Strebenabstand
liners = Reifchen
box-holes = Schalllöcher im Boden
long = Länge
sound-holes = Schalllöcher
back-is = Der Boden ist
back-closed = Geschlossen bis auf seine Löcher
back-open = Der Länge nach offen
soundbox-hint = Der Korpus ist so breit wie die Decke. Er wird beurteilt, sobald Tiefe, Zargen und Boden Maße haben, und das Ausbeulen der Zargen, sobald der Strebenabstand angegeben ist. Ein offener Boden ist so breit offen wie ein Loch.

## Lagen des Halses

layers = Lagen des Halses
layer = Lage
turned = Winkel
wood-of-layer = Holz der Lage { $number }
that-of-neck = Das des Halses
most-layers = Ein Hals hat höchstens { $most } Lagen.
add-layer = Lage hinzufügen
layers-hint = Lagen eines verleimten Halses, nebeneinander durch seine Dicke: es zählt nur das Verhältnis ihrer Dicken. Bei 0° läuft die Faser längs des Halses, bei 90° quer dazu. Ohne Angaben ist der Hals aus einem Stück.

## Metall am Hals

metal = Metall am Hals
neck-plates = Platten am Hals
plates = Platten
from = Von
to = Bis
neck-screws = Schrauben der Platten
screws = Schrauben
one-every = Eine alle
deep-in-wood = Tiefe im Holz
plates-on = Platten auf
both-sides = Beiden Seiten
one-side = Einer Seite
of = Aus
metal-hint = Platten in halber Tiefe des Halses, von 0 % an der Schulter bis 100 % an der Säule; 0 mm heißt keine. Ohne Schrauben sind sie auf ihrer ganzen Fläche aufgeleimt. Schrauben stehen in einer Reihe in der Mitte der Platte; sie geben nach, sodass die Platten gegen seitliche Biegung weniger helfen. Ohne ihre Tiefe werden sie nicht beurteilt: üblich sind Schrauben von 4 mm, 25 mm tief, eine alle 60 mm (übliche Praxis, ohne Quelle).

## Eigene Hölzer

own-woods = Eigene Hölzer
own-bars = Stäbe eigener Hölzer
own-tests = Wie sich die Stäbe biegen und wie sie klingen
wood = Holz
weighs = Gewicht
span = Stützweite
load = Last
falls = Biegt sich durch um
tone = Ton
most-woods = Ein Entwurf hat höchstens { $most } eigene Hölzer.
add-wood = Holz hinzufügen
name-of-wood = Name des Holzes { $number }
it-is = Es ist ein
hardwood = Laubholz
softwood = Nadelholz
its-strengths = Seine Festigkeiten
strengths-unknown = Nicht bekannt: nicht beurteilt
strengths-by-class = Nach Festigkeitsklasse
remove-wood = Dieses Holz entfernen
own-hint = Einen geraden Stab schneiden, die Faser längs. Seine Dichte ist Gewicht durch Länge mal Breite mal Höhe. Auf zwei Stützen legen, in der Mitte eine Last anhängen und messen, wie weit er sich durchbiegt: E = F l³/(4 b h³ w), mit l der Stützweite und h der Höhe in Biegerichtung. Oder ihn klingen lassen: 22 % vom Ende halten, in der Mitte anklopfen und den Ton angeben; E = 0,9464 ρ f² L⁴/h² mit einer Korrektur für den Schub. Ein Brett sagt nur etwas über sich selbst. Die Festigkeitsklassen sind die der EN 338 (aus dem Gedächtnis): sie gelten für Bretter mit kleinen Ästen, nicht für sprödes Holz oder schräge Faser.

## Lasten

assumptions = Annahmen
no-loads = Noch gibt es keine Lasten. Den Saiten Töne, Längen und Aufbau geben.
formulas-loads = Die Formeln und ein Beispiel von Hand
how-worked-out = Wie das berechnet ist

## Bespannen

order = Reihenfolge
strings-up = Aufgezogene Saiten
up = Auf
up-of = { $up } von { $count }
tension = Zugkraft
pillar-push = Druck in der Säule
bending = Biegung
torque = Drehmoment
share-and-where = Anteil der zulässigen Last, und wo
stages = Stufen des Bespannens
no-frame = Es fehlen Maße des Rahmens.
some-up = { $up } von { $count } Saiten aufgezogen
some-up-last = { $up } von { $count } Saiten aufgezogen, zuletzt { $string }
stage = { $strings }: Zugkraft { $tension }, Druck in der Säule { $pillar }, Biegung { $bending }, Drehmoment { $torque }, { $used }, der zulässigen Last; ohne die Decke.
stage-unjudged = { $strings }: Zugkraft { $tension }, Druck in der Säule { $pillar }, Biegung { $bending }, Drehmoment { $torque }. Wie viel der zulässigen Last das ist, wird nicht beurteilt.
stages-hint = Jede aufgezogene Saite ist auf Tonhöhe. Die Decke bleibt hier außen vor: jeder Teil von ihr trägt nur die Saiten in seiner Nähe.

## Nachgeben und Jahre

giving-title = Wie der Rahmen beim Bespannen nachgibt, geschätzt
falls-table = Wie weit jede Saite fällt
formulas-giving = Die Formeln des Nachgebens
formulas-years = Die Formeln der Jahre

## Tonarten

keys-title = Tonarten aus der Grundstimmung
key = Tonart
levers-or-pedals = Halbtonklappen oder Pedale
key-no = Nein:
keys-hint = Jede Saite behält ihren Stammton. Halbtonklappen werden einzeln gestellt, Drehscheiben eines Stammtons zusammen.

## Dateien

dxf-hint = Für eine Fräse oder ein Zeichenprogramm, in Millimetern
svg-hint = Für ein Zeichenprogramm, in voller Größe
tiled-hint = Auf vielen Blättern, in voller Größe zu drucken und zusammenzukleben
pdf-a4 = PDF auf A4
pdf-letter = PDF auf Letter
sheet-hint = Ein Blatt so groß wie die Harfe, für einen Plotter
pdf-sheet = PDF auf einem Blatt
schedule = Stiftliste
schedule-hint = Eine Tabelle aller Stifte, Löcher, Halbtonklappen und Drehscheiben mit ihren Stellen
picture-hint = Die Zeichnung mit dem, was darüber liegt, nicht in voller Größe, für ein Dokument
picture-svg = Bild, SVG
picture-png = Bild, PNG
