# Dateien, Links und Sicherungen: warum sie nicht lesbar sind.

## Ein Entwurf

too-large = eine Entwurfsdatei darf höchstens { $most } MB haben, diese hat { $got } MB (eine andere Datei wählen)
empty = die Datei ist leer (eine Datei wählen, die Stringloft gespeichert hat)
cut-off = der Entwurf ist abgeschnitten: sein Text endet mittendrin, in Zeile { $line } (die ganze Datei noch einmal holen)
unreadable = dieser Entwurf ist nicht lesbar: { $what } (die Datei berichtigen oder eine andere wählen)
other-kind = dieses JSON ist kein Entwurf von Stringloft (es fehlt „stringloft“ mit der Fassung des Entwurfs)
too-new = dieser Entwurf hat die Fassung { $found }, lesbar sind hier die Fassungen 1 bis { $version } (die Seite neu laden, um das neueste Stringloft zu bekommen)
misplaced = etwas fehlt, steht doppelt oder am falschen Platz, in Zeile { $line }, Stelle { $place }

## Kurz, als Ende eines Satzes

short-too-large = er ist größer, als ein Entwurf sein kann
short-empty = nichts ist davon übrig
short-cut-off = sein Text endet mittendrin
short-unreadable = ein Teil seines Textes ist beschädigt
short-other-kind = es ist kein Entwurf von Stringloft
short-too-new = ein neueres Stringloft hat ihn geschrieben (die Seite neu laden, um das neueste zu bekommen)

## Was ein Feld enthält

must-be = muss { $must } sein, ist aber { $got }
is-missing = fehlt
there-twice = ein Feld steht doppelt da
kind-nothing = nichts
kind-truth = true oder false
kind-number = eine Zahl
kind-text = Text
kind-list = eine Liste
kind-fields = ein Satz von Feldern
kind-whole = eine ganze Zahl von 0 bis { $most }
kind-two = eine Liste von zwei
kind-list-of = eine Liste von { $count }

## Grenzen

number = { $what }: von { $least } bis { $most }, angegeben ist { $got }
long = { $what }: höchstens { $most } Zeichen lang, es sind { $got } (kürzen)
many = ein Entwurf darf höchstens { $most } { $what } haben, es sind { $got }
layers = Saite { $number } darf höchstens { $most } Lagen haben, es sind { $got }
same-key = zwei Materialien haben den Kurznamen „{ $key }“ (eines umbenennen)
nested = eine Fassung darf selbst keine Fassungen enthalten, Fassung { $number } tut es aber (sie herausnehmen)
version-unkept = Fassung { $number } lässt sich nicht aufbewahren: { $why }
versions-large = die Fassungen eines Entwurfs dürfen zusammen höchstens { $most } KB haben, es sind { $got } KB (eine entfernen)

## Felder: wo

of-string = Saite { $number }, { $field }
of-material = Material { $number }, { $field }
of-item = Artikel { $number }, { $field }
of-one-item = { $field }
of-design = { $field }
of-design-at = { $field } (Nummer { $number })
version-name = Name der Fassung { $number }
version-date = Datum der Fassung { $number }

## Felder: welche

title = Titel
maker = Name des Herstellers
client = Name des Kunden
serial = Seriennummer
date = Datum
open-tuning = Grundstimmung
remarks = Bemerkungen
order-remarks = Bemerkungen der Bestellung
note = Ton
length = Länge
order-code = Bestellnummer
material = Material
diameter = Durchmesser
bare-board = freier Kern an der Decke
bare-pin = freier Kern am Stift
layer-material = Material der Lage
layer-size = Maß der Lage
layer-width = Breite der Lage
layer-packing = Deckung der Lage in Prozent
mass-per-metre = Masse je Meter
weighed-gauge = Stärke der gewogenen Saite
breaking-load = Bruchlast
name = Name
source = Quelle
make-up = Aufbau
supplier = Lieferant
currency = Währung
lowest-note = tiefster Ton
highest-note = höchster Ton
remark = Bemerkung
pack-length = Packungslänge in mm
bundle = Zahl der Saiten in einem Bündel
price = Preis
joint-size = ein Maß einer Verbindung
soundbox-size = ein Maß des Korpus
neck-layer = eine Lage des Halses
layer-angle = Winkel einer Lage
layer-wood = Holz einer Lage
metal-size = ein Maß des Metalls am Hals
bar-of-wood-size = ein Maß eines Holzstabs
wood-key = Kurzname eines Holzes
wood-name = Name eines Holzes
bars-size = ein Maß der Balken
part-sizes = die Maße der Teile
wood-of-neck = Holz des Halses
wood-of-pillar = Holz der Säule
wood-of-board = Holz der Decke
wood-of-rib = Holz der Saitenleiste
wood-of-sides = Holz der Zargen
wood-of-back = Holz des Bodens
wood-of-bars = Holz der Balken
point-place = die Stelle eines Punktes einer Sollkurve
point = ein Punkt einer Sollkurve
zone-text = ein Text einer Zone von Stärken
wound-from = der Ton, von dem an die Saiten umsponnen sind
kind-of-string-text = ein Text einer Saitenart

## Zu viele davon

strings = Saiten
materials = Materialien
stock-items = Artikel
versions = Fassungen
nodes = Punkte auf der Harfenkurve
sections = Querschnitte des Halses
neck-layers = Lagen des Halses
woods = eigene Hölzer
zones = Zonen des Saitenabstands
gaps = Abstände zwischen Saiten
points = Punkte einer Sollkurve
gauge-zones = Zonen von Stärken
kinds-of-string = Saitenarten

## Links

no-link = das ist kein Link zu einem Entwurf (was auf das # folgt, muss mit „{ $form }.“ beginnen)
link-too-new = diesen Link hat ein neueres Stringloft gemacht (die Seite neu laden, um das neueste zu bekommen, oder um die Entwurfsdatei bitten)
link-altered = dieser Link wurde unterwegs abgeschnitten oder verändert (noch einmal um den ganzen Link bitten)
link-too-large = dieser Entwurf ist zu groß für einen Link von { $most } Zeichen (stattdessen die Entwurfsdatei schicken)
link-two-too-large = dieser Entwurf und seine Fassung sind zusammen zu groß für einen Link von { $most } Zeichen (einen Link ohne die Fassung schicken, oder die Entwurfsdatei)
link-unusable = der Link enthält keinen brauchbaren Entwurf: { $why }

## Sicherungen, als Ende eines Satzes

backup-too-large = sie ist größer, als eine Sicherung sein kann
backup-none = es ist keine Sicherung, oder nur ein Teil davon
backup-too-new = ein neueres Stringloft hat sie geschrieben (die Seite neu laden, um das neueste zu bekommen)
backup-other-kind = es ist keine Sicherung von Stringloft (ein einzelner Entwurf öffnet sich mit „Datei öffnen“)
backup-damaged = ein Teil davon ist beschädigt
