# Die Reihenfolge des Baus als Blatt: was wann geschnitten, geleimt und gebohrt wird, was zu prüfen und wovor sich zu hüten ist.

## Das Blatt

building = Reihenfolge des Baus
running = Reihenfolge des Baus von { $harp }
steps = Schritte
head-check = Prüfen
head-should-be = Soll, mm
head-found = Gefunden
step = { $number }. { $title }
practice = Die Reihenfolge der Arbeit und die Warnungen sind übliche Praxis, ohne Quelle. Alle Maße sind die der fertigen Teile, nach dem Entwurf, wie er jetzt ist.
how-to-check = Auf beiden Seiten von denselben Ecken messen. Zwei Diagonalen, die gleich sein sollen, sagen mehr als jeder Winkel.

## Die Schritte

wood = Das Holz
wood-rests = Das Holz in dem Raum liegen lassen, in dem geleimt wird, bis es nicht mehr schwerer oder leichter wird.
wood-print = Die Schablonen in voller Größe drucken und auf jeder die Prüfstrecke nachmessen. Auf jedes Stück den Namen seines Teils schreiben und die Außenseite anzeichnen.
neck = Der Hals
neck-runs-out = Vor der Wahl des Holzes am Ende dieses Blatts lesen, was gerade Bretter aus einem Hals machen, dessen Linie bis zu { $angle }° von ihnen abweicht: das ist nicht beurteilt.
neck-piece = Den Hals auf { $thick } mm hobeln.
neck-layers = Den Hals aus { $count } Lagen auf { $thick } mm verleimen und eben unter Zwingen liegen lassen.
neck-turned = Die Faser der Lagen dreht von der Saitenseite aus gegen die Länge des Halses um: { $angles }.
neck-drill = Von der Saitenseite bohren, senkrecht zur Fläche, bevor der Umriss gesägt wird: { $tuning } Löcher für Stimmwirbel und { $bridge } für Stegstifte.
neck-pins = Stifte und Wirbel nach der Länge wählen: { $bridge } mm eines Stegstifts und { $tuning } mm eines Stimmwirbels sitzen im Hals, und die Saiten laufen { $out } mm vor seiner Fläche. Dazu kommt, was Wicklung und Stimmschlüssel brauchen; Löcher für konische Wirbel aufreiben.
neck-levers = Die Stellen der { $count } Halbtonklappen anzeichnen und bohren, wie deren Hersteller es angibt.
neck-discs = Die Stellen der { $count } Scheiben anzeichnen und bohren, wie deren Hersteller es angibt.
neck-outline = Den Umriss sägen und die Auflage der Säule rechtwinklig zu ihr schneiden; der Hals reicht dort als Ferse { $heel } mm hinab.
neck-mortise = Das Zapfenloch für die Säule in die Auflage stemmen, solange sich der Hals einspannen lässt.
neck-tenon = Den Zapfen für den Knieklotz stehen lassen und nach der Schablone schneiden.
pillar = Die Säule
pillar-cut = Die Säule auf { $wide } mm mal { $deep } mm hobeln und beide Enden rechtwinklig dazu schneiden, wo sie auf etwas stehen.
pillar-tenons = { $count ->
    [one] Ihren Zapfen
   *[other] Ihre { $count } Zapfen
} schneiden und anpassen, bevor etwas geleimt wird.
tenon-head = Oben ist der Zapfen quer zur Harfe { $thick } mm dick und { $deep } mm lang.
tenon-foot = Am Fuß ist der Zapfen quer zur Harfe { $thick } mm dick und { $deep } mm lang.
pillar-capital = Ist die Säule gehobelt, die zwei Backen des Kapitells vorn und hinten an sie leimen, die Faser längs der Säule, bevor ihr oberes Ende und ihre Zapfen geschnitten werden. Der Hals wird auf Säule und Backen zugleich geleimt.
sides = Die Zargen
sides-cut = Zwei Zargen von { $thick } mm Dicke sägen, die eine das Spiegelbild der anderen. Ihre Kanten sind schräg: die Schablone zeigt die hintere Kante gestrichelt.
blocks = Die Klötze
blocks-cut = Den Fußklotz mit der Faser quer zur Harfe sägen, damit Leim ihn an Sockel und Decke hält, und den Knieklotz mit der Faser, wie seine Schablone sie zeigt.
blocks-mortise = Das Zapfenloch für den Hals jetzt in den Knieklotz stemmen, solange er sich einspannen lässt.
mortise-knee = Dieses Zapfenloch ist quer zur Harfe { $thick } mm breit und { $deep } mm tief. Seine Mitte liegt { $off } mm neben der Mitte der Harfe, auf der Seite des Halses.
blocks-drill-through = { $count } Löcher von { $wide } mm für Schrauben oder Dübel durch den Knieklotz bohren, rechtwinklig zu seiner oberen Fläche.
blocks-drill = { $count } Löcher von { $wide } mm für Schrauben oder Dübel in den Knieklotz bohren, { $deep } mm tief und rechtwinklig zu seiner oberen Fläche.
frame = Der Zargenkranz
frame-glue = Die Zargen auf einer ebenen Bank an beide Klötze leimen, nach einer Probe ohne Leim, und prüfen, bevor der Leim anzieht.
liners = Reifchen und Streben
liners-glue = { $liners } Reifchen einleimen, dann { $braces } Streben an Zargen und Boden. Abhobeln, was übersteht.
back = Der Boden
back-cut = Den Boden mit { $count ->
    [one] seinem Schallloch sägen, den Lochrand
   *[other] seinen { $count } Schalllöchern sägen, die Lochränder
} abrunden, damit man sich daran nicht die Hand aufschürft, und den Boden aufleimen.
back-bend = Ihn vor dem Leimen über seinen Streben oder über einer Form biegen: innen am unteren Ende auf einen Radius von { $low } mm, am oberen auf { $high } mm, und dort gespannt trocknen lassen.
back-arched = Die Streben des Bodens haben seinen Bogen an der Kante, auf der er liegt: nach ihren Schablonen sägen. Den Knieklotz auf denselben Bogen hobeln, und Zargen und Reifchen dazu passend abschrägen.
soundboard = Die Decke
soundboard-plane = Die Decke fügen und hobeln, von { $bass } mm am unteren Ende auf { $treble } mm am oberen.
soundboard-bars = { $count } Balkenstücke aufleimen.
soundboard-rib = Die Saitenleiste innen zwischen die Klötze leimen und die Deckleiste außen darüber.
soundboard-drill = { $count } Saitenlöcher mit { $angle }° zur Außenfläche bohren, in Richtung der Saiten, die Lochreihe in der Ebene der Saiten. Ihre Weite in mm, nach Saiten: { $widths }.
closing = Die Decke auf den Korpus
closing-glue = Innen unterschreiben, Leimreste entfernen, dann die Decke aufleimen, die Zwingen von der Mitte jedes Randes nach außen.
closing-drill = Das Loch von Saite { $string } in Richtung der Saite weiterbohren, durch die { $deep } mm Knieklotz hinter der Decke.
base = Sockel und Füße
base-cut = Den Sockel und beide Füße sägen, das Zapfenloch für die Säule durch alles stemmen, was der Zapfen trifft, und die Füße anleimen.
trial = Probe ohne Leim
trial-build = Korpus, Säule und Hals ohne Leim zusammensetzen. Von jedem Saitenloch einen Faden zu seinem Stegstift spannen und am Hals entlang sehen: kein Faden berührt einen Wirbel oder Stift einer anderen Saite.
shoulder = Die Schulter
shoulder-drill = Die Löcher des Knieklotzes am Ende des Halses anzeichnen, während alles steht wie bei der Probe, und dort { $deep } mm tief bohren.
shoulder-bolts = Die Bolzen gehen durch { $block } mm Knieklotz und { $neck } mm in den Hals, zu einer Mutter auf einer Unterlegscheibe, die dort von der Seite eingelassen ist: so sind die Lasten beurteilt. Mit der Unterlegscheibe unter dem Kopf ergibt das ihre Länge.
shoulder-glue = Den Korpus auf den Sockel leimen und von unten festschrauben, durch den Sockel in den Fußklotz. Säule und Hals mit beiden verleimen oder verschrauben, und prüfen wie bei der Probe, bevor der Leim anzieht.
shoulder-pull = Die Saiten ziehen den Korpus mit bis zu { $pull } vom Sockel nach oben, geschätzt: diese Verbindung hält die Harfe zusammen.
finish = Oberfläche
finish-coat = Das Holz behandeln, bevor Wirbel und Stifte hineinkommen. Nach den Dichten der Tabellen wiegt es { $mass } kg; zeigt die Waage viel mehr oder weniger, seine Dichte in der Zeichnung unter „Hölzer“ prüfen: die Schätzungen hängen davon ab.
stringing = Bespannen
stringing-up = Wirbel, Mechanik und Saiten einsetzen und die Harfe über einige Tage hochstimmen, in der Reihenfolge des Bespannens. Jeden Tag Hals und Verbindungen ansehen.

## Was zu prüfen ist

check-bridge = Tiefster bis höchster Stegstift, von Mitte zu Mitte
check-tuning = Tiefster bis höchster Stimmwirbel, von Mitte zu Mitte
check-neck-long = Hals, längstes Maß längs der Faser, ohne Zapfen
check-pillar-long = Säule, längstes Maß, ohne Zapfen
check-fastener-front = Vorderkante des Knieklotzes bis zu seinen Bohrungen, Reihe { $row }
check-fastener-middle = Mitte der Harfe bis zu den Bohrungen, auf der Seite des Halses, Linie { $row }
check-side-one = Zarge, untere vordere Ecke bis obere hintere Ecke
check-side-other = Zarge, obere vordere Ecke bis untere hintere Ecke
check-front = Diagonalen der Vorderseite, beide
check-low = Breite der Vorderseite am unteren Ende
check-high = Breite der Vorderseite am oberen Ende
check-back = Diagonalen des Bodens, beide
check-rise = Wölbung des Bodens am unteren Ende, innen, unter einem Lineal über seinen Kanten
check-lowest-hole = Unteres Ende der Decke bis zum tiefsten Saitenloch
check-holes = Tiefstes bis höchstes Saitenloch
check-shoulder-front = Schulter vorn über dem Sockel, beide Seiten
check-shoulder-back = Schulter hinten über dem Sockel, beide Seiten
check-seat = Auflage der Säule über dem Sockel
check-lowest-string = Tiefste Saite, von der Decke bis zum Stegstift
check-middle-string = Saite { $number }, von der Decke bis zum Stegstift
check-highest-string = Höchste Saite, von der Decke bis zum Stegstift
check-base = Sockel, von vorn nach hinten
check-shoulder-floor = Oberes Ende des Bodens über dem Fußboden

## Wovor man sich hütet

saws = Sägen: Schutzhaube drauf, Spaltkeil drin, nahe am Blatt ein Schiebestock, Hände aus der Schnittlinie, keine Handschuhe, Augen und Ohren geschützt. Nie über ein Blatt greifen, das noch läuft.
drills = Ständerbohrmaschine: das Stück festspannen, keine Handschuhe oder weiten Ärmel, Haare zusammenbinden, Abfallholz hinter dem Loch.
planers = Hobelmaschine und Fräse: keine kurzen oder dünnen Stücke ohne Zuführlade, wenig Span, gegen die Drehrichtung schieben, beide Hände weg vom Messer.
dust = Staub von Laubholz schadet Lunge und Haut: Absaugung an der Maschine und eine Maske.
glue = Leim: Handschuhe, frische Luft; Zeiten und Temperaturen, wie der Hersteller sie angibt. Heißer Leim verbrüht; Epoxid und sein Härter schaden der Haut. Erst die Probe: eine Verbindung, die unter den Zwingen rutscht, ist verloren.
clamps = Zwingen speichern Kraft: die Finger fernhalten und langsam lösen.
bending = Biegen: Dampf, heißes Wasser und heiße Eisen verbrennen die Haut. Handschuhe und lange Ärmel; seitlich von einem gespannten Stück stehen, denn es kann brechen. Zuerst an einem Rest versuchen.
rags = Lappen mit Öl können sich selbst entzünden: im Freien ausgebreitet trocknen oder unter Wasser in einer Dose mit Deckel aufbewahren.

## Bohrhilfen, und alle Teile auf einer Seite

jig = { $harp }: Bohrhilfen, { $part }
jig-note = Seitenansichten von Klötzen aus Hartholz, { $high } mm hoch, in voller Größe. Einen Klotz auf die Fläche spannen, die Seite in der Lochreihe, und durch ihn hindurch bohren.
jig-origin = linke untere Ecke des ersten Klotzes
jig-square = { $what } { $wide } mm, senkrecht
jig-slanting = { $what }, { $angle }° zur Fläche
jig-stop = Anschlag { $stop } mm hinter der Bohrerspitze
jig-through = durch, mit Abfallholz dahinter
string-hole = Saitenloch
overview = { $harp }: alle Teile, 1:{ $scale }
overview-note = Bei jedem Teil stehen Name, Länge längs der Faser, Breite und Dicke in mm. Von einem Paar ist nur eines gezeichnet.

## Ein gebogener Boden

bent = { $harp }: { $part }, abgewickelt
bent-radius = Innen steigt er am unteren Ende { $rise } mm. Über Zargen und Reifchen geht er eben schräg hinauf; dazwischen ist er innen am unteren Ende auf einen Radius von { $low } mm gebogen, am oberen auf { $high } mm, rechtwinklig zur Linie seiner Kanten.
bent-sheet = Die flache Platte der Außenseite, die größer ist als die Innenseite. Ihre Enden sind gekrümmt; auf Sockel und Schulter liegen sie eben auf, wenn sie gebogen ist. Einige Millimeter zu groß schneiden und nach dem Leimen bündig machen.
bent-notches = Ein Reifchen, das am unteren Ende entlang gebogen wird, bekommt { $count } Kerben, { $wide } mm breit und { $deep } mm tief, eine alle { $apart } mm; sie schließen sich beim Biegen.
