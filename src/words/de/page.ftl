# Die Seite als Ganzes: Kopf, Ansichten und Menüs, und was sie meldet.

## Der Kopf

undo-hint = Rückgängig (Strg+Z)
undo = Rückgängig
redo-hint = Wiederholen (Strg+Y)
redo = Wiederholen
skip = Direkt zur Ansicht
title = Name des Instruments
acts = Menüs des Entwurfs
instrument = Instrument
share = Drucken und weitergeben
help = Hilfe
new = Neu
restring-hint = Nach ihren Maßen, eingetippt oder eingefügt
restring = Harfe neu bespannen
open-hint = Eine Entwurfsdatei oder eine Tabelle öffnen; sie lässt sich auch auf die Seite ziehen
open = Datei öffnen
shelf = Entwürfe in diesem Browser
save-hint = Den Entwurf als Datei speichern (Strg+S)
save = Als Datei speichern
designs = Entwürfe
setup-hint = Tonhöhe, Kunde, Grenzen, Zugaben
setup = Tonhöhe, Einheiten, Grenzen
materials-hint = Werte der Materialien, eigene Materialien, Wäge- und Reißversuche
materials = Materialien
stock-hint = Saiten und Drähte, die zu kaufen sind: Stärken, Bestellnummern, Preise
stock = Lager
card = Saitenkarte
report-hint = Für die Akten, zum Drucken: Saiten, Kurven, Zeichnung, Lasten, Befunde, Quellen
report = Entwurfsbericht
templates-hint = Schablonen in voller Größe: DXF, SVG, PDF, und die Stiftliste
templates = Schablonen
table-hint = Die Tabelle aller Werte als CSV speichern, für eine Tabellenkalkulation
table = Tabelle der Werte
link = Link zu diesem Entwurf
light = Helle Farben
dark = Dunkle Farben
numbers = Die Zahlen erklärt
about = Über Stringloft
shortcuts = Tastenkürzel
colours-forgotten = Dieser Browser merkt sich die Farben nicht: { $why }.
language-not-kept = Dieser Browser merkt sich die Sprache nicht: { $why }.

## Die Ansichten

chart = Saitentabelle
chart-hint = Jede Saite: eingeben und sehen, was daraus folgt
drawing = Zeichnung
drawing-hint = Die Harfe im Maßstab: Form, Hölzer, Lasten, Dateien für Drucker und Fräse
parts = Teile
parts-hint = Die ganze Harfe Teil für Teil, für die Säge
choose = Saiten wählen
choose-hint = Der beste Satz Saiten aus einem Lager, und bessere Längen
order = Bestellung
order-hint = Was zu bestellen ist und was es kostet
versions = Fassungen
versions-hint = Fassungen des Entwurfs behalten und vergleichen
views = Ansichten
strings = Saiten
chart-help = Pfeiltasten bewegen, Eingabe beginnt zu tippen, Esc und dann Tab verlassen die Tabelle, F6 führt zu den Befunden.

## Teile und das Programm

not-printed = Stringloft kann das noch nicht drucken, weil ein Teil noch nicht da ist. Dies schließen, dann Strg+P drücken.
link-missed = Der Link wurde nicht geöffnet: ein Teil von Stringloft ist nicht angekommen. Die Verbindung prüfen, dann die Seite neu laden.
newer = Eine neuere Version von Stringloft ist bereit. Sie öffnet sich beim nächsten Laden der Seite.
curves = Kurven
opening = Wird geöffnet …
not-here = Noch nicht da
close = Schließen
missed = Dieser Teil von Stringloft ist nicht angekommen. Die Verbindung prüfen, dann noch einmal versuchen. Alles andere arbeitet weiter.
try-again = Noch einmal versuchen
not-done = Das wurde nicht getan: ein Teil von Stringloft ist nicht angekommen. Die Verbindung prüfen, dann noch einmal versuchen.

## Meldungen

dismiss = Ausblenden
not-kept = Nicht gesichert: dieser Browser nimmt nichts an ({ $why }). Den Entwurf als Datei speichern, bevor Sie die Seite verlassen.
keep-mine = Meinen als Kopie behalten
load-it = Den anderen laden
elsewhere-changed = Dieser Entwurf wurde in einem anderen Tab geändert. Hier steht er, wie er vorher war; wird er hier geändert, wird daraus eine Kopie.
elsewhere-gone = Dieser Entwurf wurde in einem anderen Tab in den Papierkorb gelegt. Hier steht er, wie er war.
from-link = Eine Kopie aus einem Link, hier noch nicht gespeichert. Mit der ersten Änderung wird eine eigene Kopie gespeichert.
keep-copy = Kopie hier speichern
a-sample = Eine Beispielharfe. Sie lässt sich beliebig ändern. Einen eigenen Entwurf beginnt Neu unter Entwürfe: eine neue Harfe, eine nach Maßen oder eine andere Beispielharfe.
handed = An die Downloads dieses Browsers übergeben als { $name }.
not-handed = dieser Browser hat { $name } nicht als Download angenommen (noch einmal versuchen, oder die Seite in einem anderen Browser öffnen)
file-too-large = { $name } hat { $mb } MB; ein Entwurf oder eine Tabelle hat höchstens 5 MB. Eine andere Datei wählen.
file-unread = { $name } ließ sich nicht lesen. Die Datei noch einmal wählen, oder eine andere.
storage-full = sein Speicher ist voll
storage-shut = sein Speicher ist abgeschaltet oder nimmt nichts an
backup-too-large = sie ist größer, als eine Sicherung sein kann
backup-unread = sie ließ sich nicht lesen (die Datei noch einmal wählen)

## Was gespeichert und was geöffnet wurde

refused = Das wurde nicht angenommen: { $why }.
frame-not-yet = noch nicht berechnet
frame-later = Das berechnet ein Teil von Stringloft, der nach der Tabelle geladen wird.
columns-forgotten = Dieser Browser merkt sich die Spalten nicht: { $why }.
link-not-opened = Dieser Link wurde nicht geöffnet: { $why }.
not-opened = { $name } wurde nicht geöffnet: { $why }.
opened = { $name } ist geöffnet.
and-more = Und { $more } weitere.
not-read = { $name } wurde nicht gelesen: { $errors }
columns-left-out = Weggelassene Spalten: { $columns }.
read-strings = { $count ->
    [one] { $count } Saite
   *[other] { $count } Saiten
} aus { $name } gelesen.
copied = Dieser Entwurf wurde auch in einem anderen Tab geändert. Beide bleiben: was in diesem Tab geändert wurde, ist eine eigene Kopie.
keeping = wird gespeichert …
not-kept-here = in diesem Browser nicht gespeichert: { $why }
kept-at = Gespeichert { $time }
copy-of = { $name } (Kopie)
kept-here = In diesem Browser gespeichert.
list-clash = Dieser Entwurf wurde zuerst in einem anderen Tab geändert, darum wurde die Änderung in der Liste nicht angenommen.
design-not-opened = Dieser Entwurf wurde nicht geöffnet: { $why }.
let-go = Dieser Browser sichert den offenen Entwurf nicht, er wird also weg sein. Den anderen trotzdem öffnen?
last-not-opened = Der zuletzt offene Entwurf wurde nicht geöffnet: { $why }.
change-not-kept = Dieser Browser hat die letzte Änderung nicht gespeichert: { $why }. Den Entwurf als Datei speichern.
declined = Nichts anderes wurde geöffnet: der Entwurf bleibt, wie er ist.
given-back = Was beim Verlassen der Seite gerade getippt wurde, steht wieder in seiner Zelle. Eingabe übernimmt es, Esc lässt die Zelle, wie sie war.

## Felder

write-or-empty = Erlaubt: { $asked }, oder leer.
write-such = Erlaubt: { $asked }, etwa { $value }.
write = Erlaubt: { $asked }.
back-to = Wieder { $value }.
back-empty = Wieder leer.
remove-row = Entfernen: { $of } { $row }
remove = Entfernen
no-room = Nichts eingefügt: { $lines } Zeilen wurden kopiert, und Platz ist für { $room }.
no-number = Nichts eingefügt: „{ $got }“ in Zeile { $line } des Kopierten ist keine Zahl, die hierher passt.
