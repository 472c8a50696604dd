# Das Fenster der Lagerlisten: was zu kaufen ist.

## Listen

list-gone = diese Lagerliste ist nicht mehr in diesem Browser
unnamed = Liste ohne Namen
unreadable = Nicht lesbar: { $why }
in-use-not-opened = Die benutzte Lagerliste wurde nicht geöffnet: { $why }. Unter Lager eine andere wählen.
title = Lager
left-out = Zeilen, die weggelassen wurden
new-name = Neue Lagerliste
in-use = Liste, aus der gewählt und bestellt wird
name = Name
currency-usual = Währung der Preise, die keine nennen
new-list = Neue Liste
new-list-hint = Eine leere Liste
usual = Übliche Stärken
usual-hint = Eine Liste üblicher Stärken für den Anfang: übliche Praxis, aus dem Gedächtnis
remove-list = Liste entfernen
remove-list-hint = Diese Liste endgültig entfernen
open-file = Datei öffnen
open-file-hint = Eine Lagerliste von Stringloft oder eine CSV-Tabelle
paste-table = Tabelle einfügen
paste-table-hint = Eine Tabelle aus einer Tabellenkalkulation einfügen
save-csv = Als CSV speichern
save-csv-hint = Die Liste als CSV speichern, für eine Tabellenkalkulation
save-file = Als Datei speichern
save-file-hint = Die Liste als Datei von Stringloft speichern
file-not-opened = { $name } wurde nicht geöffnet: { $why }.
not-kept = Dieser Browser behält die Lagerliste nicht. Sie bleibt in Gebrauch, bis Sie die Seite verlassen: als Datei speichern.
leave = Dieser Browser behält die Lagerliste nicht, ihre letzten Änderungen werden also weg sein. Trotzdem weiter?
list-not-opened = Die Lagerliste wurde nicht geöffnet: { $why }.
changed-elsewhere = Das Lager wurde in einem anderen Tab geändert.
list-spoilt = Die Lagerliste wurde nicht geöffnet: { $why }. Sie bleibt, wie sie ist, bis sie entfernt wird.
now-in-use = „{ $name }“ ist jetzt in Gebrauch.
refused = Das wurde nicht angenommen: { $why }.
refused-list = Das wurde nicht angenommen: { $why }. Zuerst eine neue Liste anlegen.
from-table = Lager aus einer Tabelle
from-table-next = Lager aus einer Tabelle { $number }
remove-asked = Die Lagerliste „{ $name }“ endgültig aus diesem Browser entfernen? Entwürfe behalten die Bestellnummern und Preise, die sie enthalten.
list-removed = „{ $name }“ wurde entfernt.
list-not-removed = „{ $name }“ wurde nicht entfernt: { $why }.
item-removed = { $item } wurde entfernt.
not-kept-because = Dieser Browser behält die Lagerliste nicht: { $why }. Sie bleibt in Gebrauch, bis Sie die Seite verlassen: als Datei speichern.
listed-not-kept = { $name } (nicht gespeichert)

## Artikel

make-up = Aufbau
code = Bestellnummer
supplier = Lieferant
pack = Packung, mm
price = Preis
currency = Währung
from-note = Von Ton
to-note = Bis Ton
remark = Bemerkung
bad-price = ein Preis muss eine Zahl sein, die sich nur auf eine Art lesen lässt, angegeben ist „{ $got }“ (so schreiben: 12.50)
not-kept-yet = Noch nicht übernommen: { $why }.
ends-crossed = der tiefste Ton darf nicht über dem höchsten liegen (einen der beiden ändern)
make-up-missing = der Aufbau fehlt (so schreiben: Nylon 0,81)
material-unknown = das Material „{ $material }“ ist hier nicht bekannt (ein bekanntes schreiben, oder es unter Materialien anlegen)
empty = Diese Liste ist leer: einen Artikel anfügen, eine Datei öffnen oder eine Tabelle einfügen.
items = { $count ->
    [one] { $count } Artikel
   *[other] { $count } Artikel
}
items-of = { $found } von { $all } Artikeln
show-only = Nur zeigen
show-only-hint = Darm, oder Teil einer Nummer
add-item = Artikel anfügen
items-table = Artikel der Lagerliste
item = Artikel
more-items = Mehr Artikel zeigen
sold-as = Verkauft als
in-stock = Lieferbar
item-called = Artikel { $number }
remove = Entfernen
remove-item = Entfernen: { $item }
cell-of = { $head }: { $item }
coil = Rolle
single = einzeln
bundle = Bündel
bundle-of = Saiten in einem Bündel: { $item }
item-sold-as = { $item } wird verkauft als
item-had = { $item } ist lieferbar

## Eine Tabelle von anderswo

paste = Eine Tabelle mit Überschriften in der ersten Zeile, kopiert aus einer Tabellenkalkulation oder Preisliste
read = Tabelle lesen
back = Zurück zur Liste
range = { $low } bis { $high }
no = nein
yes = ja
and-more = Und { $more } weitere.
no-good-line = Noch ist keine Zeile der Tabelle brauchbar: prüfen, welche Spalte was ist.
new-list-from = Eine neue Liste mit { $count ->
    [one] { $count } Artikel
   *[other] { $count } Artikeln
} aus der Tabelle ist jetzt in Gebrauch.
added = Artikel aus der Tabelle: { $added } neu, { $updated } geändert.
odd-taken = Für { $count } davon lässt sich nichts berechnen.
left-out-told = Diese Zeilen wurden weggelassen:
take-good = Die brauchbaren Zeilen übernehmen
add-to = Zu „{ $name }“ hinzufügen
take-new = Als neue Liste übernehmen
take-new-hint = Eine eigene Liste, aus der dann gewählt und bestellt wird
which-column = Welche Spalte was ist
columns-table = Spalten der Tabelle
head-heading = Überschrift
head-first = Erste Zelle
head-is = Ist
head-bare = Zahlen ohne Einheit sind in
else-material = Material der Zeilen, die keines nennen
what-read = Was gelesen wird
first-lines = Erste brauchbare Zeilen
notes = Töne
bad-lines = Zeilen, die weggelassen werden
odd-lines = Auffällige Zeilen
good = { $count ->
    [one] { $count } brauchbare Zeile
   *[other] { $count } brauchbare Zeilen
}
odd = { $count ->
    [one] { $count } auffällige Zeile
   *[other] { $count } auffällige Zeilen
}
bad = { $count ->
    [one] { $count } unbrauchbare Zeile weggelassen
   *[other] { $count } unbrauchbare Zeilen weggelassen
}
columns-left-out = Weggelassene Spalten: { $columns }.
unit-of = Einheit der Spalte { $column }
column-is = Spalte { $column } ist
column-left-out = weggelassen
