# Die Bestellliste: auf der Seite, auf Papier, und was sie zu ihren Zeilen sagt.

## Die Seite

panel = Bestellung
nothing = Noch lässt sich nichts bestellen: zuerst angeben, woraus die Saiten sind.
print = Drucken
print-hint = Die Bestellliste auf Papier
csv = Als CSV speichern
csv-hint = Die ganze Bestellliste, für eine Tabellenkalkulation
csv-of = Als CSV speichern: Bestellung, { $supplier }
table-of = Bestellung: { $supplier }
outside-hint = Was nicht in der Lagerliste steht, wird nach seiner Beschaffenheit bestellt: Packungen und Preise sind nicht bekannt.
fill-in = Bestellnummern, Packungslängen und Preise werden unter „Lager“ eingetragen.
open-stock = Lager öffnen
put-codes = Nummern und Preise in diesen Entwurf übernehmen
new-codes = Die Lagerliste „{ $list }“ hat Bestellnummern oder Preise, die dieser Entwurf noch nicht enthält: was der Entwurf enthält, geht vor, und ein Link oder eine Datei nimmt keine anderen mit.
codes-kept = Der Entwurf enthält jetzt Bestellnummern und Preise von { $count ->
    [one] { $count } Artikel
   *[other] { $count } Artikeln
}.
supplier-outside = Nicht in der Lagerliste
supplier-none = Kein Lieferant genannt
of-every-line = Für jede Zeile: { $said }
head-make-up = Aufbau
head-code = Bestell-Nr.
head-strings = Saiten: Zuschnitt, mm
head-sold-as = Verkauft als
head-pieces = Stück
head-metres = Gesamt, m
head-packs = Packungen
head-price = Preis
pieces-with-spares = { $pieces } + { $spares } Ersatz
unknown = { $count ->
    [one] Saite
   *[other] Saiten
} { $strings }: { $why }.

## Reserve und Bemerkungen

settings = Ersatzsaiten und Bemerkungen
spares = Ersatzsaiten
spares-none = Keine
spares-item = Eine von jedem Artikel, so lang wie seine längste Saite
spares-string = Eine für jede Saite
spares-percent = Ein Anteil der Saiten jedes Artikels, aufgerundet
remarks = Bemerkungen für den Lieferanten
