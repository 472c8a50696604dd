# Fassungen und frühere Stände eines Entwurfs, und was sich unterscheidet.

## Tage und Gründe

january = Januar
february = Februar
march = März
april = April
may = Mai
june = Juni
july = Juli
august = August
september = September
october = Oktober
november = November
december = Dezember
day = { $day }. { $month } { $year }
session = Ende einer Sitzung
printed = Gedruckt
link = Link kopiert
order = Bestellliste gespeichert
template = Schablone gespeichert
while-working = Während der Arbeit
lacks = { $total }, ohne { $count }
now-side = jetzt
unnamed = Fassung { $number }
grey = Grau: { $what }
nothing-differs = Nichts unterscheidet sich.
strings-differ = { $strings ->
    [one] { $strings } Saite unterscheidet sich.
   *[other] { $strings } Saiten unterscheiden sich.
}
settings-differ = { $settings ->
    [one] { $settings } Einstellung unterscheidet sich.
   *[other] { $settings } Einstellungen unterscheiden sich.
}
both-differ = { $strings ->
    [one] { $strings } Saite
   *[other] { $strings } Saiten
} und { $settings ->
    [one] { $settings } Einstellung unterscheiden sich.
   *[other] { $settings } Einstellungen unterscheiden sich.
}

## Vergleichen

versions = Fassungen
before = Vorher
after = Nachher
compare = Vergleichen
totals = Summen
every-string = Alle Saiten zeigen, nicht nur die mit Unterschied
strings-before-after = Saiten, vorher → nachher
now = Jetzt
settings = Einstellungen, die sich unterscheiden
string = Saite
what = Was
came = { $string } (neu)
went = { $string } (entfallen)

## Frühere Stände

state-unread = Dieser Stand lässt sich nicht lesen: { $why }.
look-at = Ansehen: { $when }
look = Ansehen
earlier = Frühere Stände
date-and-time = Datum und Uhrzeit
why-kept = Warum er behalten wurde
what-to-do = Was tun
none-yet = Noch keine.
earlier-hint = Dieser Browser behält sie von selbst: wie jede Sitzung endete, jede Viertelstunde während der Arbeit, und immer wenn gedruckt, ein Link kopiert oder eine Bestellliste oder Schablone gespeichert wird. Höchstens 20 bleiben, die älteren in größeren Abständen.
titled-when = { $title } ({ $when })
opened-when = Geöffnet, wie er am { $when } war, als neuer Entwurf. Der vorher offene bleibt unter Entwürfe.
state-shown = Der Stand, der angesehen wird
and-now = { $when }, und jetzt
open-earlier = Als neuen Entwurf öffnen
open-earlier-hint = Der jetzt offene Entwurf bleibt, wie er ist
close = Schließen
strings-then-now = Saiten, damals → jetzt

## Behaltene Fassungen

kept = Behaltene Fassungen
name = Name
date = Datum
strings = Saiten
total = Gesamtzug
none-kept = Noch keine Fassung behalten. Vor einem Versuch eine behalten: sie lässt sich jederzeit zurückholen und vergleichen.
usual-name = Fassung { $number }
kept-as = Behalten als „{ $name }“, in diesem Entwurf.
version-name = Name der Fassung
version-name-hint = etwa: Darm, Frühjahr
keep = Behalten
keep-hint = Den Entwurf behalten, wie er jetzt ist
restored = Der Entwurf ist wieder, wie er in „{ $name }“ war. Rückgängig nimmt das zurück.
removed = „{ $name }“ wurde entfernt. Rückgängig holt sie zurück.
name-of = Name der Fassung { $number }
date-of = Datum der Fassung { $number }
restore = Zurückholen
restore-hint = Der Entwurf wird, was er in dieser Fassung war
remove = Entfernen
remove-hint = Diese Fassung aus der Liste nehmen
