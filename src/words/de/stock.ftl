# Das Lager, was Saiten kosten, und wie sie verkauft werden.

## Welcher Artikel eine Saite ist

no-make-up = kein Aufbau ist angegeben (wählen, woraus die Saite ist)
no-code = kein Artikel hat die Bestellnummer „{ $code }“ (ihn ins Lager aufnehmen, oder die Nummer löschen)
other-make-up = der Artikel mit der Bestellnummer „{ $code }“ ist { $item }, nicht { $string } (eines von beiden ändern)
not-listed = kein Artikel ist { $string } (ihn ins Lager aufnehmen, oder eine andere Stärke wählen)

## Preise

no-price = der Artikel hat keinen Preis (ihn eintragen)
no-pack-length = der Artikel ist eine Rolle von unbekannter Länge (die Packungslänge eintragen)
no-cut-length = die Zuschnittlänge ist nicht bekannt (klingende Länge und Stärke angeben)
pack-short = die Saite wird auf { $cut } mm zugeschnitten, und eine Packung enthält { $pack } mm (eine längere Packung wählen)

## Packungen

packs-outside = wie es verkauft wird, ist nicht bekannt (ins Lager aufnehmen)
packs-length = wie viel eine Rolle enthält, ist nicht bekannt (die Packungslänge eintragen)
packs-cut = die Zuschnittlänge von Saite { $number } ist nicht bekannt (Länge und Stärke angeben)
packs-short = Saite { $number } wird auf { $cut } mm zugeschnitten, länger als eine Packung (eine längere Packung wählen)
coil = Rolle
single = einzeln
bundle = Bündel zu { $count }
coil-of = Rolle zu { $metres } m
single-of = einzeln, { $metres } m
bundle-of = Bündel zu { $count }, je { $metres } m

## Bemerkungen zu einer Zeile der Bestellung

outside = nicht in der Lagerliste
sold-out = zurzeit nicht lieferbar
strings = { $count ->
    [one] Saite
   *[other] Saiten
} { $numbers }
not-for-note = nicht für diesen Ton verkauft: { $strings }
not-exact = nicht genau das Maß, sondern das nächste im Lager: { $strings }
coils-unsettled = { $count } Rollen genügen; ob { $least } reichen, blieb offen
price-missing = kein Preis ist angegeben
spare = Ersatz: { $lengths }

## Summen

lines = { $count ->
    [one] 1 Zeile
   *[other] { $count } Zeilen
}
both = { $first } und { $second }
lack-length = { $count ->
    [one] 1 ohne Packungslänge
   *[other] { $count } ohne Packungslänge
}
sum = { $lines }: { $sums }
sum-no-price = { $lines }, kein Preis ist bekannt
sum-none = { $lines }, keine Summe möglich: { $why }
sum-at-least = { $lines }, { $without } ohne Preis: mindestens { $sums }
sum-at-least-why = { $lines }, { $without } ohne Preis ({ $why }): mindestens { $sums }

## Dateien von Listen

list-too-large = eine Lagerliste darf höchstens { $most } MB haben (eine andere Datei wählen)
list-empty = die Datei ist leer (eine Lagerliste wählen, die Stringloft gespeichert hat, oder eine Tabelle)
list-unreadable = diese Lagerliste ist nicht lesbar: { $what } (die Datei berichtigen oder eine andere wählen)
list-other-kind = dieses JSON ist keine Lagerliste (es fehlt „stringloft-stock“ mit der Fassung der Liste)
list-is-design = diese Datei ist ein Entwurf und keine Lagerliste (als Entwurf öffnen)
list-too-new = diese Lagerliste hat die Fassung { $found }, lesbar ist hier die Fassung { $version } (die Seite neu laden, um das neueste Stringloft zu bekommen)
list-many = eine Lagerliste darf höchstens { $most } { $what } haben, es sind { $got } (in zwei teilen)
list-long = Lagerliste, { $what }: höchstens { $most } Zeichen lang, es sind { $got } (kürzen)
what-items = Artikel
what-materials = Materialien
what-name = Name
what-currency = Währung
what-remark = Bemerkung
what-material-name = Name eines Materials
what-material-source = Quelle eines Materials

## Die Liste für den Anfang

usual = Übliche Stärken
usual-remark = Im Handwerk übliche Stärken: übliche Praxis, ohne Quelle, aus dem Gedächtnis. Beim Lieferanten fragen, was zu haben ist, und Bestellnummern und Preise eintragen.
