# Saiten und Längen wählen: was vorgeschlagen wird, wie sicher es ist, und warum nichts Besseres da ist.

## Strings within a sentence

string-at = Saite { $number }, { $note }
string-numbered = Saite { $number }
strings-from-to = Saiten { $first } bis { $last }
kind-wound = { $layer } auf { $core } gesponnen
kind-wound-over = { $layer } über { $under } auf { $core } gesponnen
kind-over = { $over } über { $under }
and = { $others } und { $last }
or = { $others } oder { $last }
more = { $listed } und { $count } weitere

## Before and after

line-off-feel = neben dem Soll des Spielgefühls, im Mittel
line-off-tension = neben dem Soll der Zugkraft, im Mittel
line-off-most = am weitesten neben dem Soll
line-step = größter Sprung neben der Kurve
line-changes = Wechsel des Materials
line-different = verschiedene Saiten und Drähte
line-price = Preis dieser Saiten
line-total = Zugkraft aller Saiten
line-feel = Spielgefühl, niedrigstes bis höchstes
line-share = Auslastung, niedrigste bis höchste
line-longest = längste Saite
line-kink = Stift, der am weitesten neben der Kurve seiner Nachbarn liegt
price-and-without = { $price }, und { $count ->
    [one] 1 Saite
   *[other] { $count } Saiten
} ohne Preis
total-of-some = { $total }, { $with } von { $all } Saiten
from-to = { $low } bis { $high } { $unit }

## How sure it is

is-there = Die Harfe hat diesen Satz schon
nearer = Die Saiten auf der Harfe sind näher am Soll
nearer-but = Die Saiten auf der Harfe sind näher am Soll, aber: { $broken }
proved = Dieser Satz ist nachweislich der beste: kein anderer { $from ->
    [both] aus diesem Lager und den Saiten auf der Harfe
   *[stock] aus diesem Lager
} hält die Grenzen ein{ $total ->
    [true] , darunter die des Gesamtzugs,
   *[false] { "" }
} und kommt dem Soll näher
within = Dieser Satz liegt höchstens { $share } % neben dem bestmöglichen (mehr ließ sich nicht nachweisen)
unlisted-stay = { $count ->
    [one] 1 Saite auf der Harfe bleibt wie jetzt, obwohl sie nicht in dieser Lagerliste steht
   *[other] { $count } Saiten auf der Harfe bleiben wie jetzt, obwohl sie nicht in dieser Lagerliste stehen
}
tie = Ein anderer Satz ist gleich gut; er unterscheidet sich zuerst bei: { $string } (unter Gleichen gilt, was im Lager zuerst steht)

## Why there is none

stock-empty = Das Lager hat nichts, was verwendet werden kann (Saiten hinzufügen oder eine andere Liste wählen)
nothing-for = Das Lager hat nichts für { $strings }: { $reason } ({ $remedy })
no-set = Kein Satz hält alle Grenzen ein (eine davon erweitern)
no-item-there = dort ist kein Artikel verwendbar
cannot-keep = { $count ->
    [one] Nicht einzuhalten bei { $strings }: { $limits }
   *[other] Nicht zugleich einzuhalten bei { $strings }: { $limits }
} ({ $remedies })
cannot-keep-least = { $count ->
    [one] Nicht einzuhalten bei { $strings }: { $limits }
   *[other] Nicht zugleich einzuhalten bei { $strings }: { $limits }
}; der niedrigste Gesamtzug, den ein Satz haben kann, ist { $total } ({ $remedies })
passed-share = Die höchste Auslastung wird überschritten bei { $strings }, um bis zu { $over } %
missed-share = Die niedrigste Auslastung wird nicht erreicht bei { $strings }, um bis zu { $over } %
passed-total = Der höchste Gesamtzug wird um { $over } % überschritten
passed = Überschritten: { $limit }
not-kept = Nicht eingehalten bei { $strings }: { $limit }
alternative = { $count ->
    [one] 1 Sorte Saiten
   *[other] { $count } Sorten Saiten
}, im Mittel { $off } % neben dem Soll

## Limits

limit-most-share = die höchste Auslastung
limit-least-share = die niedrigste Auslastung
limit-unknown-share = dass die Bruchlast bekannt sein muss
limit-thin = die dünnste Stärke der Zone
limit-thick = die dickste Stärke der Zone
limit-unknown-gauge = dass in einer Zone die Stärke bekannt sein muss
limit-place = wo eine Saitenart verwendet werden darf
limit-note = die Töne, für die Saiten verkauft werden
limit-stock = was am Lager ist
limit-order = die Reihenfolge der Saitenarten
limit-shrinking = dass keine Saite und kein Kern dünner ist als darüber
limit-jump = der größte Sprung im Spielgefühl von Saite zu Saite
limit-changes = die Zahl der Materialwechsel
limit-items = die Zahl der verschiedenen Saiten
limit-total = der höchste Gesamtzug
limit-breaks = dass keine Saite reißt
limit-no-tension = dass sich die Zugkraft berechnen lässt

## What is wrong with items

why-tight = { $count } zu straff
why-slack = { $count } zu schlaff
why-unknown-load = { $count } mit unbekannter Bruchlast
why-thin = { $count } zu dünn für die Zone
why-thick = { $count } zu dick für die Zone
why-unknown-gauge = { $count } mit unbekannter Stärke
why-kind = { $count } von einer dort nicht erlaubten Art
why-note = { $count } nicht für diesen Ton verkauft
why-stock = { $count } nicht am Lager
why-breaks = { $count } so straff, dass sie reißen
why-stiff = { $count } zu steif für diese Länge
why-neighbours = { $count } ihren Nachbarn im Weg

## What to do about limits

do-most-share = höchste Auslastung erhöhen, diese Saiten kürzen, oder dickere oder festere Saiten ins Lager aufnehmen
do-least-share = niedrigste Auslastung senken, diese Saiten verlängern, oder Saiten ins Lager aufnehmen
do-unknown-share = Festigkeit des Materials eintragen
do-zone = Zone der Stärken erweitern
do-place = dort eine andere Saitenart erlauben
do-note = die Töne erweitern, für die die Artikel verkauft werden
do-stock = Fehlendes ins Lager aufnehmen
do-order = Reihenfolge der Arten ändern, oder eine Saite freigeben
do-shrinking = eine Saite freigeben, oder Stärken ins Lager aufnehmen
do-jump = einen größeren Sprung erlauben, eine Saite freigeben, oder Stärken ins Lager aufnehmen
do-changes = einen Wechsel mehr erlauben
do-items = mehr verschiedene Saiten erlauben
do-total = höchsten Gesamtzug erhöhen, oder die Saiten kürzen
do-lengths = Längen ändern, oder Saiten ins Lager aufnehmen
do-stock-strings = Saiten ins Lager aufnehmen

## What was left out

left-thick = { $count ->
    [one] 1 blanke Saite, dicker als die dickste erlaubte, ist weggelassen
   *[other] { $count } blanke Saiten, dicker als die dickste erlaubte, sind weggelassen
}
left-unread = { $count ->
    [one] 1 Artikel des Lagers ist
   *[other] { $count } Artikel des Lagers sind
} nicht lesbar: { $list }
left-sold-out = { $count ->
    [one] 1 Artikel des Lagers ist
   *[other] { $count } Artikel des Lagers sind
} ausverkauft: { $list }
left-currency = Preise werden in einer Währung verglichen; { $count ->
    [one] 1 Artikel in einer anderen gilt
   *[other] { $count } Artikel in einer anderen gelten
} als üblich im Preis
left-without = { $count ->
    [one] 1 Saite
   *[other] { $count } Saiten
} ohne Länge oder Ton, daher ohne Aufbau: { $list }
left-no-place = Keine Saite der Harfe liegt dort, wo { $kind } verwendet werden darf (den Tonbereich erweitern)
left-kinds = { $count ->
    [one] 1 Artikel nicht aufgeführter Art ist weggelassen
   *[other] { $count } Artikel nicht aufgeführter Arten sind weggelassen
}
strings-of = Die Saiten aus { $kind }: { $why }
wound-from = Der Ton, ab dem Saiten umsponnen sind: { $why }
zone = Zone { $number }: { $why }
zone-gauges = Zone { $number } der Stärken: { $why }

## Lengths

curve-makes-lengths = Die Harfenkurve bestimmt die Längen (zuerst unter „Form“ von den Längen ausgehen)
none-chosen = Keine Saite ist gewählt (die Saiten wählen, die sich ändern dürfen)
ratio-range = Das Verhältnis der Längen muss zwischen { $least } und { $most } liegen, ist aber { $ratio }
bound-asked = ihre Grenze
bound-share = die Auslastung
bound-stiffness = ihre Steifigkeit
bound-computed = das Berechenbare
held-shorter = { $strings }: kürzer, wäre da nicht { $bound }
held-longer = { $strings }: länger, wäre da nicht { $bound }
length-conflict = { $string }: mindestens { $above } mm ({ $by-above }) und höchstens { $below } mm ({ $by-below }) (eines davon erweitern, oder die Saite ändern)
and-so-on = und so fort bei { $count ->
    [one] 1 weiteren Saite
   *[other] { $count } weiteren Saiten
}
