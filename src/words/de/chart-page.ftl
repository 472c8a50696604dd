# Die Saitentabelle mit dem, was daneben steht: Werkzeuge, Spalten, Befunde, Überblick.

## Was sich mit Saiten tun lässt

tools = Markierte Saiten
insert = Einfügen
insert-hint = Eine Saite über der Schreibmarke einfügen (Taste Einfg)
duplicate = Verdoppeln
duplicate-hint = Die markierten Saiten darunter wiederholen
delete = Löschen
delete-hint = Die markierten Saiten löschen (Strg+Entf)
up = Auf
up-hint = Die markierten Saiten nach oben schieben (Strg+Umschalt+Pfeil auf)
down = Ab
down-hint = Die markierten Saiten nach unten schieben (Strg+Umschalt+Pfeil ab)
add-treble = + Diskant
add-treble-hint = Eine Saite anfügen, einen Ton über Saite 1
add-bass = + Bass
add-bass-hint = Eine Saite anfügen, einen Ton unter der letzten
fill-down = Ausfüllen
fill-down-hint = Die erste Zeile der Auswahl in die übrigen kopieren (Strg+D)
make-up = Aufbau
make-up-hint = Material, Stärke und Umspinnung der markierten Saiten (Strg+Eingabe)
exchange = Material tauschen
exchange-hint = Die markierten Saiten gegen solche aus anderem Material tauschen: Darm, Nylon, Fluorcarbon
details = Details
details-hint = Alle Werte der Saite, ihre Teiltöne und Halbtonklappen (Alt+Eingabe)
explain = Wie das berechnet wird
at-most-strings = Ein Entwurf hat höchstens { $most } Saiten. Zuerst einige löschen.
computed = Diese Spalte wird berechnet. Ändern lassen sich Ton, Länge, Saite und Stärke.
not-copied = Der Browser hat diese Zellen nicht in die Zwischenablage gelegt. Noch einmal kopieren.
too-much = Die Zwischenablage enthält { $mb } MB Text, weit mehr als eine Saitentabelle. Nur die nötigen Zellen kopieren.
no-text = In der Zwischenablage ist kein Text zum Einfügen.
not-pasted = Nichts eingefügt: { $why }.
too-many-rows = Nichts eingefügt: der Block hat { $count } Zeilen, und ein Entwurf hat höchstens { $most } Saiten.
all-computed = Diese Spalten werden berechnet: hier lässt sich nichts einfügen.
wound-kept = Die Stärke einer umsponnenen Saite folgt aus ihrer Umspinnung, darum blieb sie bei diesen Saiten, wie sie ist.
cell = Zelle

## Spalten

chart = Saitentabelle
empty = Noch keine Saiten. Töne und Längen aus einer Tabellenkalkulation hier einfügen, oder unter Entwürfe Neu wählen.
number-hint = Von oben gezählt: Saite 1 ist die höchste.
number = Nr.
octave-hint = Die Oktave der Harfenisten: von oben gezählt, jede von E hinunter bis F.
octave = Okt.
note-meaning = Der Ton mit der Nummer seiner Oktave: das eingestrichene C ist C4. Statt dessen kann eine Frequenz stehen, etwa 443,2 Hz.
note = Ton
string-meaning = Woraus sie ist: ein Material, oder ein Kern und was darum gesponnen ist.
string = Saite
gauge-meaning = Durchmesser; bei einer umsponnenen Saite der gesamte, der aus ihrem Aufbau folgt.
gauge = Stärke
code-meaning = Die Bestellnummer des Lieferanten, für Karte und Bestellung. Sie wird geleert, wenn sich die Saite ändert.
code = Bestell-Nr.
typed-as = Eingegeben: { $typed }
place = Saite { $number }
place-noted = Saite { $number }, { $note }
columns-window = Spalten der Tabelle
column-sets = Spaltensätze
columns-hint = Nummer und Ton sind immer zu sehen. Eine Spalte ankreuzen, um sie zu zeigen; nach oben schieben rückt sie nach links. Die eigene Auswahl behält dieser Browser als Meine Spalten.
farther-left = Nach links
farther-right = Nach rechts
my-columns = Meine Spalten
choose-columns = Spalten wählen …
border = Teiler zwischen Ansicht und Kurven
border-hint = Mit der Maus ziehen oder mit den Pfeiltasten schieben. Pos1 und Ende klappen eine Seite weg, Eingabe holt beide zurück.
with-curves = Mit Kurven
without-curves = Ohne Kurven
curves-alone = Nur Kurven
beside = Was nebeneinander zu sehen ist
set-working = Arbeit
set-feel = Spielgefühl
set-tone = Klang
set-tuning = Stimmen und Klappen
set-workshop = Werkstatt
set-all = Alle Spalten

## Befunde

no-findings = Keine Befunde zu den Saiten
findings-count = { $count ->
    [one] { $count } Befund
   *[other] { $count } Befunde
}
findings = Befunde
missing-hint = Was noch nicht gemessen oder eingegeben ist
missing = Was fehlt
strings-say = Saiten { $first } bis { $last }: { $sentence }
all-say = { $count ->
    [one] Saite
   *[other] Saiten
} { $strings }: { $sentence }
range = { $first } bis { $last }

## Überblick

without-tension = Im Gesamtzug { $count ->
    [one] fehlt { $count } Saite ohne Zugkraft.
   *[other] fehlen { $count } Saiten ohne Zugkraft.
}
for-client = für { $client }
tolerances = Wie weit Saiten abweichen können: der übliche Fall, nicht der schlimmste.
temperature-left-out = Die Temperatur bleibt außen vor: das Wandern dieser Saiten ist nicht bekannt.
temperature-left-out-for = { $count ->
    [one] Bei { $count } Saite bleibt die Temperatur außen vor: ihr Wandern ist nicht bekannt.
   *[other] Bei { $count } Saiten bleibt die Temperatur außen vor: ihr Wandern ist nicht bekannt.
}

## Ein Aufbau auf Probe

overall = Gesamtdurchmesser
core = Kern
mass = Masse je Meter
breaking-load = Bruchlast
tension-at-pitch = Zugkraft in Stimmung
load-share = Auslastung
stiffness = Zupfhärte
frame = Rahmen
opens-loads = { $frame } Öffnet die Lasten.
summary = Überblick
strings = Saiten
compass = Umfang
total = Gesamtzug
tightest = Am stärksten ausgelastet
