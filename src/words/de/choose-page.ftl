# Die Ansicht, in der Saiten und Längen gewählt werden.

## The view

panel = Saiten wählen
side = Soll, Grenzen und Längen
group-family = Saiten zur Auswahl
group-points = Soll
group-weights = Was zählt
group-limits = Grenzen
group-zones = Stärken nach Zonen
group-kinds = Saitenarten
group-reshape = Bessere Längen

## The search

search = Suche
stock-in-use = Aus der verwendeten Lagerliste: { $list }, { $count } Artikel.
stock-unnamed = eine Liste ohne Namen
all-strings = Alle Saiten
selected = Die in der Tabelle markierten
may-change = Darf sich ändern
may-change-now = Darf sich ändern: { $strings }.
from-both = Die Liste und die Saiten der Harfe
from-stock = Nur die Liste
choose-from = Wählen aus
find-set = Besten Satz suchen
find-set-hint = Der beste Satz für alle Saiten zusammen
find-fronts = Gleichmäßigkeit gegen Zahl der Stärken
find-fronts-hint = Der beste Satz für jede kleinere Zahl von Stärken
find-by-price = Gleichmäßigkeit gegen Preis
find-by-price-hint = Der beste Satz für jeden niedrigeren Preis
keep = Behalten: { $strings }
keep-hint = Die in der Tabelle markierten Saiten bleiben, wie sie sind
kept = { $strings } bleiben wie jetzt
kept-list = Saiten, die bleiben, wie sie sind
let-change = Freigeben
let-strings-change = Freigeben: { $strings }
busy = Die Suche läuft
cancel = Abbrechen
cancel-hint = Anhalten und nichts ändern
searching = Suche läuft.
searching-so-far = Suche läuft seit { $seconds } s.
searching-round = Runde { $round }. Suche läuft seit { $seconds } s.
no-lengths = Solche Längen gibt es nicht
no-set = Solch einen Satz gibt es nicht
set-with = Der Satz mit: { $what }
taken = { $count ->
    [one] 1 Saite
   *[other] { $count } Saiten
} geändert. Rückgängig bringt zurück, was da war.
ghost = Voll: die Saiten jetzt. Grau: der Vorschlag.

## The alternatives

alternatives = Andere Sätze
front-up = Im Mittel neben dem Soll, %
front-across-price = Preis, { $currency }
front-across = Verschiedene Saiten und Drähte
front-hint = Sätze zur Auswahl; die Pfeiltasten gehen von einem zum nächsten
front-said = Satz { $number } von { $count }: { $what }.

## The wanted curve

wish-title = Soll: { $what }, { $unit }, vom Bass zum Diskant
legend-wanted = Soll
legend-now = jetzt
legend-proposed = Vorschlag
legend-reach = was das Lager in den Grenzen hergibt
point-at = Punkt { $number } von { $count }: { $value } { $unit } bei { $note }
point-hint = Ziehen oder mit den Pfeiltasten bewegen (mit Umschalt zehnmal so weit); Entf entfernt ihn
wants-stiffness = Zupfhärte (Spielgefühl)
wants-tension = Zugkraft
wants = Soll für
origin = Kurve setzen
origin-choose = Anfangskurve wählen
origin-now = Wie die Saiten jetzt sind
origin-usual = Wie am Anfang: das Spielgefühl der Harfe
origin-constant = Durchgehend ein Wert
origin-straight = Gerade von Ende zu Ende
origin-sample = Wie die Beispielharfe { $name }
origin-version = Wie die Fassung { $name }
no-curve = Es gibt keine Kurve zu übernehmen: keine Saite dort hat Ton, Länge und Aufbau.
no-room = Für noch einen Punkt ist kein Platz.
points-table = Punkte der Sollkurve
head-point = Punkt
head-note = Ton
add-point = Punkt hinzufügen
add-point-hint = In der weitesten Lücke zwischen zwei Punkten
points-hint = Zwischen zwei Punkten ändert sich die Kurve in gleichen Prozentschritten; jenseits der Enden bleibt sie gleich.
remove = Entfernen
remove-point = Punkt { $number } entfernen
note-of-point = Ton von Punkt { $number }
value-of-point = Wert von Punkt { $number }

## What matters

weight-none = Zählt nicht
weight-little = Zählt wenig
weight-some = Zählt
weight-much = Zählt viel

## Limits, zones, kinds

wound-from = Umspinnung beginnt spätestens bei
wound-from-hint = Ein Ton wie E3. Bleibt das Feld leer, schlägt die Suche vor, wo die Umspinnung beginnt.
note-wrong = Ein Ton hat einen Buchstaben und die Zahl seiner Oktave: C4, Fis5, H2.
gauge-wrong = Eine Stärke ist eine Zahl von Millimetern, oder eine in Zoll wie 0.032 in.
zone-from = Von Ton
zone-to = Bis Ton
zone-thinnest = Dünnste
zone-thickest = Dickste
zone-cell = Zone { $number }: { $head }
zone-remove = Zone { $number } entfernen
zones-table = Zonen der Stärken
zone-add = Zone hinzufügen
zones-hint = Ein leerer Ton reicht bis ans Ende des Umfangs, eine leere Stärke ist keine Grenze. Stärken in Millimetern, oder mit in für Zoll.
kind-cell = { $kind }: { $head }
kind-lowest = tiefster Ton
kind-highest = höchster Ton
head-lowest = Tiefster Ton
head-highest = Höchster Ton
kind-up = Nach oben
kind-up-hint = { $kind } zum Diskant hin rücken
kind-out-hint = { $kind } nicht verwenden
kinds-table = Saitenarten vom Diskant zum Bass
kinds-all = Wieder die Familie entscheiden lassen
kinds-free = Die Familie sagt, welche Arten des Lagers verwendet werden dürfen, in ihrer üblichen Reihenfolge: blanke Saiten oben, umsponnene unten.
kinds-own = Reihenfolge und Bereich jeder Art festlegen
kinds-hint = Vom Diskant zum Bass kommt eine Art erst nach denen, die in der Liste darüber stehen.
kind-choose = Art wählen
kind-add = Art hinzufügen

## What is proposed

would-change = { $count ->
    [one] 1 Saite würde sich ändern.
   *[other] { $count } Saiten würden sich ändern.
}
breaks-limits = Der nächstliegende Satz überschreitet Grenzen:
before-after = Vorher und nachher
head-now = Jetzt
head-proposed = Vorschlag
head-take = Nehmen
head-string = Saite
head-tension = Zugkraft, { $unit }
head-feel = Spielgefühl, { $unit }
head-share = Auslastung, %
close = Schließen
take-all = Alles nehmen
take-anyway = Trotzdem nehmen
take-all-hint = Jede aufgeführte Saite, in einem Schritt
take-some = Angehakte Zeilen nehmen
leave-it = Verwerfen
leave-it-hint = Nichts ändern
rows-table = Saiten, die sich ändern würden
take-string = Saite { $string } nehmen
keep-string = Saite { $string } lassen, wie sie ist, und neu suchen
keep-one = Lassen

## Other lengths

way-wanted = Nahe dem Soll, gleiche Stärken
way-both = Nahe dem Soll, auch andere Stärken
way-scale = Alle mit einem Faktor
way-longest = Alle bis zu einer längsten Saite
way-stretch = Mit einem Faktor an jedem Ende
way-fair = Glätten, die Enden bleiben
smooth-little = Ein wenig
smooth-well = Gut
smooth-fully = So glatt wie möglich
smooth = Glätten
room-move-usual = 8 % seiner Länge
room-shortest-usual = wie der Hals es erlaubt
room-any = beliebig
other-lengths = Andere Längen
find-lengths = Längen vorschlagen
find-lengths-hint = Über den Kurven gezeigt, bevor sich etwas ändert
lengths-hint = Für die Saiten, die sich nach der Suche ändern dürfen. Längen kommen in Schritten von einem halben Millimeter oder einem 64stel Zoll.
room-move = Ein Stift rückt höchstens
room-shortest = Kürzeste Saite
room-longest = Längste Saite
room-kink = Stift neben der Kurve seiner Nachbarn
factor = Faktor
factor-top = Faktor an der höchsten Saite
factor-bottom = Faktor an der tiefsten Saite
