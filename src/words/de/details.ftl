# Eine Saite mit allen Werten, ihr Aufbau, ihr Tausch, und was beim Tippen angeboten wird.

## Die Saite mit allen Werten

as-the-harp = Wie die Harfe
partials-count = Teiltöne
above = Vorige Saite
above-hint = Die Saite darüber (Strg+Pfeil auf)
below = Nächste Saite
below-hint = Die Saite darunter (Strg+Pfeil ab)
raised-one = Klappe oder Drehscheibe von Saite { $number }
raised = Klappen oder Drehscheiben der Saiten { $first } bis { $last }
title = { $string }, mit allen Werten
figure = Wert
off = Toleranz
main-cause = Hauptursache, oder warum er fehlt
few-turns = Die Dehnung allein braucht { $turns } Umdrehungen des Stimmwirbels, und die Zuschnittlänge rechnet mit { $wound } in Stimmung: die Saite vor dem Aufwickeln von Hand durchziehen, oder mehr Umdrehungen zugeben.
cause-diameter = der Durchmesser
cause-density = die Dichte
cause-length = die Länge
cause-pitch = die Tonhöhe
cause-temperature = die Temperatur
cause-push = das Auslenken
cause-others = { $cause }, und anderes
off-meaning = Toleranz: die unter Instrument und die der Materialien zusammengenommen (Wurzel der Quadratsumme). Auch Formeln und Moduln können abweichen.
off-without-warmth = Wie die Temperatur auf diese Saite wirkt, ist nicht bekannt und bleibt außen vor.
string = Saite
code = Bestellnummer

## Der Aufbau einer umsponnenen Saite

core = Kern
bedding = Unterlage
winding = Umspinnung
core-alone = Die Bruchlast ist die des Kerns allein: die Umspinnung trägt nichts. Was sie zur Steifigkeit beiträgt, bleibt außen vor.
inside-out = Aufbau, von innen nach außen
head-part = Teil
head-material = Material
head-size = Maß
head-over-all = Gesamt
head-mass = Masse
head-share = Anteil
covering = { $size }, Deckung { $percent } %
no-bare = Von Ende zu Ende umsponnen: kein freier Kern.
bare-ends = Freier Kern: { $board } an der Decke, { $pin } am Stift.
bare-tension = Die Zugkraft rechnet sie nicht mit: bei der angegebenen Zugkraft klingt die Saite { $cents } Cent über ihrem Ton, in Stimmung hat sie also { $percent } % weniger.
bare-partial = Von den { $cents } Cent des 8. Teiltons kommen { $bare } von den freien Enden.

## Teiltöne und ein Zupfen

partials = Teiltöne: wie weit über den ganzen Vielfachen des ersten
head-partial = Teilton
by-stiffness = Durch Steifigkeit, Cent
by-ends = Durch freie Enden
together = Zusammen
by-law = Freie Enden nach dem kubischen Gesetz
by-ends-exact = Durch freie Enden: genau. Das kubische Gesetz gilt für kurze Enden und gibt für hohe Teiltöne zu viel.
cents = { $cents } Cent
pluck = Ein Zupfen
of-finger = Der Finger
value = Wert
pulls-aside = Lenkt die Saite aus um
at-share = Zupft bei diesem Anteil der Länge
needs-force = Braucht eine Kraft von
from-tension = davon aus der Zugkraft
from-stretching = davon aus dem Dehnen
glide = Anstieg: sie beginnt zu hoch um

## Klappen und Drehscheiben

lever = Klappe
disc = Drehscheibe
disc-natural = Auflösungsscheibe
disc-sharp = Kreuzscheibe
disc-to-disc = Von Scheibe zu Scheibe: { $apart } { $unit }. Die Kreuzscheibe ist so gesetzt, dass die Auflösungsscheibe mitdrückt.
core-stiff = Der Kern gilt als so steif wie beim Schwingen; solange ein Kontakt drückt, gibt er mehr nach, die Dehnung ist also zu hoch geschätzt: die richtige Stelle liegt zwischen der angegebenen und der Nennstelle.
places-mm = Stellen und Toleranzen in Millimetern vom Stegstift. Die Nennstelle ist die einer Saite, die nur verkürzt wird; der Fehler ist, wie viel zu hoch der Halbton dort wäre. Was übrig bleibt, wird an der Harfe reguliert.
places-inch = Stellen und Toleranzen in Zoll vom Stegstift. Die Nennstelle ist die einer Saite, die nur verkürzt wird; der Fehler ist, wie viel zu hoch der Halbton dort wäre. Was übrig bleibt, wird an der Harfe reguliert.
contacts = Klappen und Drehscheiben
head-contact = Kontakt
head-place = Stelle
head-nominal = Nennstelle
head-error = Fehler dort, Cent
head-two-cents = Toleranz der Stelle für ± 2 Cent
head-five-cents = Toleranz der Stelle für ± 5 Cent
head-pull = Zugkraft, solange sie drückt
head-load = Auslastung

## Tausch

gauge = Stärke
tension = Zugkraft
load-share = Auslastung
margin = Reserve
stays = Bleibt: { $why }.
grey = Grau: die Saiten aus { $material }
frame-now = Rahmen jetzt: { $before }. Mit diesen Saiten: { $after }.
none-exchanged = So lässt sich keine Saite tauschen. Die Tabelle sagt warum.
exchanged = { $count ->
    [one] { $count } Saite ist
   *[other] { $count } Saiten sind
} jetzt aus { $material }. Rückgängig nimmt das zurück.
all-strings = alle Saiten
these = Saiten { $first } bis { $last }, wie markiert
this = Saite { $number }, wie markiert
nearest-of = die nächstliegende der Liste „{ $list }“
any-gauge = jedes Hundertstel Millimeter
exchange-title = Material tauschen
strings = Saiten
new-material = Neues Material
what-stays = Was gleich bleibt
gauges = Stärken
before-after = Saiten vorher und nachher
exact-gauge = Genaue Stärke
remark = Bemerkung
exchange = Diese Saiten tauschen
exchange-hint = Ein Schritt: Rückgängig nimmt ihn zurück. Die grauen Kurven zeigen die Saiten, wie sie wären.

## Beim Tippen einer Saite

then-gauge = dann die Stärke eingeben
offer-load = { $tension }, Auslastung { $share } %
offer-breaks = { $tension }, Auslastung { $share } %, reißt
matches = { $count ->
    [one] { $count } Saite passt.
   *[other] { $count } Saiten passen.
}
offers = Materialien und Lager

## Das Fenster für den Aufbau

unused = Der Aufbau wurde geändert. Übernehmen? Abbrechen lässt die Saite, wie sie war.
make-up = Aufbau
no-string = Es gibt noch keine Saite. Zuerst eine anfügen.
make-up-of = Aufbau von Saite { $number }
make-up-of-several = Aufbau der Saiten { $first } bis { $last }
several-hint = Bei mehreren blanken Saiten bleibt ein Material oder eine Stärke, die nicht geändert wird, wie jede Saite sie hat.
use-one = Für diese Saite verwenden
use-several = Für diese Saiten verwenden
choose-one = eines wählen
material = Material
kind = Art
plain = Blank
wound = Auf einen Kern gesponnen
weighed = Gewogen (Masse je Meter bekannt)
diameter = Durchmesser, mm
bare-board = Freier Kern an der Decke, mm
bare-pin = Freier Kern am Stift, mm
add-layer = Außen eine Lage anfügen
layer = Lage { $number }, vom Kern aus gezählt
wire = Draht, mm
ribbon = Flachdraht, mm
cover = Deckung, %
layer-hint = Flachdraht: seine Breite; bei Runddraht leer lassen. Deckung 100 %: die Windungen berühren sich.
remove-layer = Diese Lage entfernen
measured = Gewogen
mass = Masse je Meter, g/m
overall = Gesamtdurchmesser, mm (wenn gemessen)
breaking = Bruchlast, N (wenn bekannt)
windings-hint = Die Umspinnung zählt als Masse, nicht als Festigkeit oder Steifigkeit.
section = Schnitt durch die Saite, im Maßstab: Stirnansicht und Längsschnitt
to-scale = Im Maßstab: der Balken misst { $bar } mm. Links die Stirnansicht, rechts der Längsschnitt.

## Das Blatt für Finger unter der Tabelle

sheet = Zelle
sheet-above = Saite darüber
sheet-below = Saite darunter
sheet-keep = Übernehmen
sheet-leave = Lassen, wie es war
