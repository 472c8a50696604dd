# Die Materialien der Saiten: ihr Fenster, ihre Werte, was an ihnen nicht stimmt.

## Das Fenster

panel = Materialien
left-out = Weggelassen, da nicht zu gebrauchen: { $left }.
empty-hint = Ein leeres Feld heißt: nicht bekannt; was daraus folgt, ist dann auch nicht bekannt. Eine Tabelle hat eine Zeile für jeden Durchmesser, etwa 0.50 310.
built-in = Mitgeliefert. Eine Änderung hier gilt nur für diesen Entwurf; andere Entwürfe behalten ihre Werte.
built-in-changed = Mitgeliefert, mit Werten, die nur in diesem Entwurf geändert sind; andere Entwürfe behalten ihre.
own-unused = Gehört zu diesem Entwurf; noch keine Saite verwendet es.
own-used = Gehört zu diesem Entwurf. Vor dem Entfernen seinen Saiten ein anderes Material geben.
back = Zurück zu den mitgelieferten Werten
back-done = Zurück zu den mitgelieferten Werten.
remove = Entfernen
removed = { $key } entfernt. „Rückgängig“ holt es zurück.

## Die Liste

used = { $count ->
    [one] von { $count } Saite verwendet
   *[other] von { $count } Saiten verwendet
}
unused = nicht verwendet
listed-changed = { $used }, geändert
listed-own = { $used }, eigenes
listed-built-in = mitgeliefert, nicht verwendet
listed-unfinished = , unfertig

## Ein Wert

density = Dichte
density-spread = Toleranz der Dichte
diameter-spread = Toleranz des Durchmessers
modulus = Elastizitätsmodul beim Schwingen
intermediate-modulus = Elastizitätsmodul über Minuten
slow-modulus = Elastizitätsmodul über Wochen
strength = Festigkeit
expansion = Wärmedehnung
loss-factor = Verlustfaktor der Biegung
unit-mm-or-percent = mm oder %
unit-millionths = Millionstel je Kelvin
times-the-stress = mal die Spannung
not-known = nicht bekannt
rise-of = { $label }: Anstieg mit der Spannung
with-unit = { $label }, { $unit }
between = Zwischen den Zeilen der Tabelle
straight = Gerade zwischen den Zeilen
steps = Jede Zeile gilt bis zu ihrem Durchmesser
source-alone = Quelle ohne Wert
source-of = Quelle zu: { $label }
source-asked = Quelle: woher der Wert stammt
seen = in der Quelle gelesen
second-hand = aus zweiter Hand
computed = aus gelesenen Werten gerechnet
from-memory = aus dem Gedächtnis
entered = selbst eingetragen
taken = Übernommen für { $name }, { $label }: { $text } { $unit }.
use-as = Übernehmen: { $label }

## Namen und Arten

metal = Metall
polymer = Kunststoff
natural = Darm oder Seide
name = Name
kind = Art
short-name = Kurzname (steht in der Tabelle)
rename = Umbenennen
copy = Unter diesem Kurznamen kopieren
renamed = { $name } heißt in der Tabelle jetzt { $key }; seine Saiten folgen.
copied = { $name } in diesen Entwurf kopiert.
names-stay = Ein mitgeliefertes Material behält Namen und Art. Für ein eigenes einen anderen Kurznamen schreiben und kopieren.
new = Neues Material
new-short = Kurzname, für die Tabelle
new-short-example = Rosshaar
new-full = Voller Name
new-density = Dichte, kg/m³
use-as-density = Als seine Dichte übernehmen
add = Hinzufügen
added = { $name } hinzugefügt.

## Was getippt und nicht verwendet ist

left-new = ein neues Material, das nicht hinzugefügt wurde
left-name = Name von { $name }
left-key = neuer Kurzname von { $name }
left-figure = { $name }: { $label }

## Was nicht stimmt

wrong-row = Zeile { $number }: { $error }
wrong-pair = Zeile { $number } braucht einen Durchmesser und { $what }, angegeben „{ $got }“ (so schreiben: { $example })
a-strength = eine Festigkeit
a-deviation = eine Toleranz
of-deviation = Toleranz des Durchmessers
of-density = Dichte
of-density-deviation = Toleranz der Dichte
of-modulus = Elastizitätsmodul
of-strength = Festigkeit
of-expansion = Wärmedehnung
of-loss-factor = Verlustfaktor
of-rise-of-modulus = Anstieg des Elastizitätsmoduls mit der Spannung
of-table-strength = Durchmesser in der Tabelle der Festigkeit
of-table-deviation = Durchmesser in der Tabelle der Toleranzen
pure-number = (eine reine Zahl)
wrong-key = der Kurzname eines Materials muss 1 bis { $most } Buchstaben haben, angegeben „{ $got }“
wrong-figure = „{ $key }“, { $what }: zulässig von { $least } bis { $most } { $unit }, angegeben { $got }
wrong-rows = eine Tabelle von „{ $key }“ muss 1 bis { $most } Zeilen haben, angegeben { $got }
wrong-order = die Durchmesser in einer Tabelle von „{ $key }“ müssen steigen, angegeben { $got } mm nach { $after } mm
a-name = Name
a-short-name = Kurzname
naming-empty = { $what } fehlt (ein kurzes Wort dafür schreiben)
naming-long = { $what }: höchstens { $most } Buchstaben, angegeben { $got } (kürzen)
naming-cell = der Kurzname muss als ein Wort eines Aufbaus lesbar sein, angegeben „{ $got }“ (Zeichen und Maße weglassen)
naming-taken = „{ $got }“ heißt schon { $other } ({ $what }: einen anderen wählen)
