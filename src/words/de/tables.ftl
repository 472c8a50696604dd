# Tabellen: was ihre Spalten sind, und was von ihnen nicht lesbar ist.

## Stellen

in-line = Zeile { $line }: { $said }
in-column = Zeile { $line }, Spalte „{ $column }“: { $said }
of-string = Saite { $number }, „{ $column }“: { $said }
and-more = { $first } und { $count } weitere
or = { $first } oder { $second }

## Jede Tabelle

too-large = eine Tabelle darf höchstens { $most } MB haben (eine andere Datei wählen)
open-quote = ein Anführungszeichen, das eine Zelle öffnet, muss sich schließen (das fehlende hinzufügen)
empty = die Tabelle ist leer (ihre erste Zeile muss die Überschriften enthalten)
cell-long = eine Zelle darf höchstens { $most } Zeichen haben, es sind { $got } (kürzen)
cells-many = eine Zeile darf nicht mehr Zellen haben, als es Überschriften gibt, { $most }, es sind { $got } (eine Zelle mit Komma in Anführungszeichen setzen)
no-table = das ist weder ein Entwurf von Stringloft noch eine Tabelle mit Überschriften wie „note“ und „length_mm“ (eine andere Datei wählen, oder Überschriften in die erste Zeile setzen)
strings-many = eine Tabelle darf höchstens { $most } Saiten haben
heading = „{ $name }“
heading-missing = unter den Überschriften muss { $names } sein (eine Spalte in der ersten Zeile so nennen)
heading-twice = eine Überschrift darf nur einmal stehen (eine umbenennen)
layer-material = eine Lage braucht ihr Material (diese Zelle ausfüllen)
layer-diameter = eine Lage braucht ihren Durchmesser (diese Zelle ausfüllen)
density-needed = für ein unbekanntes Material muss die Dichte angegeben sein (diese Zelle ausfüllen, oder ein bekanntes Material nennen)
entered-with-table = mit der Saitentabelle eingegeben
block-large = ein Block zum Einfügen darf höchstens { $most } MB haben (weniger Zellen kopieren)
block-rows = ein Block zum Einfügen darf höchstens { $most } Zeilen haben, es sind { $got } (weniger Zellen kopieren)
raised = Mechanik jeder Saite: { $mechanism }; wie weit sie zur Seite drückt, sagt eine Tabelle nicht
raised-but = Mechanik jeder Saite: { $mechanism }, außer { $count ->
    [one] Saite
   *[other] Saiten
} { $others }; wie weit sie zur Seite drückt, sagt eine Tabelle nicht

## Lagertabellen

items-many = eine Lagerliste darf höchstens { $most } Artikel haben (die Tabelle in zwei teilen; diese Zeile und die folgenden wurden weggelassen)
bad-many = eine Tabelle mit mehr als { $most } unbrauchbaren Zeilen wird nicht weiter gelesen (prüfen, welche Spalte was ist)
material-missing = das Material fehlt (diese Zelle ausfüllen, oder sagen, woraus die ganze Liste ist)
material-unknown = das Material „{ $name }“ ist hier nicht bekannt, für diesen Artikel lässt sich also nichts ausrechnen (das Material hinzufügen, oder ein bekanntes schreiben)
bundle-count = bei einem Bündel muss stehen, wie viele Saiten es enthält, höchstens { $most }, geschrieben steht „{ $got }“ (schreiben wie „bundle of 12“)
pack-kind = eine Packung muss „coil“, „single“ oder „bundle“ sein, geschrieben steht „{ $got }“ (eines schreiben, etwa „bundle of 12“)
price-number = ein Preis muss eine eindeutig lesbare Zahl sein, geschrieben steht „{ $got }“ (schreiben wie 12.50)

## Was eine Spalte ist

whole-make-up = ganzer Aufbau
material = Material
gauge = Stärke
order-code = Bestellnummer
supplier = Lieferant
coil-or-single = Rolle oder einzeln
pack-length = Länge einer Packung
pack-price = Preis einer Packung
currency = Währung
in-stock = lieferbar
lowest-note = tiefster Ton
highest-note = höchster Ton
remark = Bemerkung
number = Nummer
note = Ton
octave = Oktave
pitch-hz = Tonhöhe in Hz
length = Länge
material-and-gauge = Material und Stärke
winding-material = Material der Umspinnung
winding-gauge = Stärke der Umspinnung

## Einheiten

millimetres = Millimeter
centimetres = Zentimeter
metres = Meter
inches = Zoll
thousandths = Tausendstel Zoll
feet = Fuß
hundredths = Hundertstel Millimeter

## Eine Tabelle von fremder Hand

column-number = Spalte { $number }
column-named = Spalte „{ $heading }“
taken-size = { $column } ist { $field }, bloße Zahlen in { $unit }
taken = { $column } ist { $field }
left-out = { $column } ist weggelassen
cells-cut = was in einer Zeile nach { $most } Zellen steht, wurde weggelassen
no-string-in-line = Zeile { $line } enthält keine Saite: { $words }
turned-round = die Liste begann mit der tiefsten Saite und wurde umgedreht
doubles = { $count ->
    [one] 1 Ton hat
   *[other] { $count } Töne haben
} zwei Saiten
plain-b-natural = B wurde als H genommen: es kann B sein wie in deutschen Listen, oder H wie in englischen (Bb schreiben, oder H)
plain-b-left = B wurde weggelassen: es kann B sein wie in deutschen Listen, oder H wie in englischen (Bb schreiben, oder H)
unit-taken = { $column } nennt keine Einheit; ihre Zahlen wurden als { $looks } genommen
unit-left = { $column } wurde weggelassen: sie nennt keine Einheit, und ihre Zahlen sehen eher nach { $looks } als nach { $said } aus (die Einheit in die Überschrift setzen)
german-h = die Tonnamen sind deutsch gelesen: mit H, und B ist der Halbton darunter
german-b = B ist als deutsches B gelesen, einen Halbton unter H
octaves-harp = Oktaven sind gezählt wie bei Harfenisten, von oben, jede von E hinab bis F
octaves-helmholtz = c′ ist das mittlere C, c das darunter
octaves-french = Oktaven sind so gezählt, dass la3 A4 ist
note-inferred-one = der Ton von 1 Saite ohne Ton folgt aus ihren Nachbarn
note-inferred-some = der Ton einiger Saiten ohne Ton folgt aus ihren Nachbarn

## Stimmung aus Frequenzen

tuned-as = die Frequenzen neben den Tönen sind die von A4 bei { $pitch } Hz, Temperierung: { $temperament }
tuned-apart = { $frequency } neben { $note } ist eine andere Tonhöhe, die Saite behält also { $frequency }
equal = gleichstufig
pythagorean = pythagoreisch
meantone = Viertelkomma-mitteltönig
just-on-c = rein auf C
