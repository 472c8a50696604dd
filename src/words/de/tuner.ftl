# Das Stimmgerät: was es zeigt und was es nicht lesen kann.

title = Stimmgerät
hint = Die Harfe mit dem Mikrofon dieses Geräts stimmen.
private = Nach dem Mikrofon wird gefragt, wenn Sie „Zuhören“ drücken; „Anhalten“ oder das Schließen des Fensters gibt es wieder frei. Nichts wird aufgenommen, nichts wird gesendet.
listen = Zuhören
stop = Anhalten
recording = Aufnahme anhören…

## How the harp is gone through

order = Reihenfolge
any = Beliebige Saite
one = Eine nach der anderen
as-planned = Nach dem Plan
plan-hint = Der Plan, seine Reihenfolge und seine ersten Runden stehen unter „Einstimmen“. In dieser Reihenfolge geht das Stimmgerät von selbst weiter, wenn eine Saite eine halbe Sekunde lang ihr Soll hielt: auf 10 Cent genau in Runden, die unter der Tonhöhe enden. Übliche Praxis, ohne Quelle.
round-done = Das war die letzte Saite der Runde. Die nächste Runde wählen.
now-sharp = Für diese Runde: { $cents } Cent über der Tonhöhe
now-flat = Für diese Runde: { $cents } Cent unter der Tonhöhe
back = Zurück
next = Weiter
lever = Klappen
open = Offen
raised = Geschlossen
discs = Pedale
discs-flat = Oben
discs-natural = Mitte
discs-sharp = Unten
each = Klappen oder Pedale, Saite für Saite
tone = Vergleichston
note-each = Jede gehörte Saite eintragen
note-hint = Eingetragen wird in die Aufzeichnung unter „Einstimmen“; sie bleibt mit dem Entwurf in diesem Browser. Wird eine Saite mehrmals nacheinander gezupft, bleibt nur ihr letzter Wert.

## What is heard

off = Hört nicht zu
asking = Wartet auf das Mikrofon
listening = Hört zu
reading = Hört die Aufnahme
heard-all = Die Aufnahme ist zu Ende: { $count ->
    [one] ein Ton gehört
   *[other] { $count } Töne gehört
}.
pluck-any = Eine Saite zupfen
pluck-one = Saite { $string } zupfen
unknown = Keine Saite dieser Harfe
cents = { $cents } Cent
flat = Zu tief
sharp = Zu hoch
in-tune = Stimmt
tighten = Spannen: Wirbel um { $degrees }° drehen
let-down = Nachlassen: Wirbel um { $degrees }° drehen
target = Soll { $hz } Hz
fit = Erster Teilton nach allen Teiltönen: { $hz } Hz
first = Erster Teilton für sich: { $hz } Hz
first-weak = Erster Teilton für sich: zu leise
strings = Alle Saiten
not-heard = noch nicht gehört
of-string = { $string }: { $cents }
heard-in-tune = stimmt ({ $cents } Cent)
meaning = Die Cent zählen ab der Saite, wie sie im Entwurf steht: mit Ton, Temperierung und Klappen. Wie weit der Wirbel zu drehen ist, folgt aus dem Entwurf, für eine Saite, die sich gesetzt hat. Innerhalb von { $cents } Cent gilt eine Saite als gestimmt.

## What goes wrong

refused = Das Mikrofon wurde nicht erlaubt. Es im Browser für diese Seite erlauben oder eine Aufnahme anhören.
no-microphone = Kein Mikrofon zu hören. Eines anschließen oder eine Aufnahme anhören.
not-here = Das Stimmgerät ist nicht angekommen. Die Verbindung prüfen, dann noch einmal „Zuhören“ drücken.
unread = { $name } lässt sich nicht anhören: dieser Browser liest die Datei nicht. Als WAV speichern.
no-strings = keine Saite hat einen Ton, auf den sie gestimmt werden kann (den Saiten ihre Töne geben)
no-wav = das ist keine WAV-Aufnahme (die Aufnahme als WAV mit 16 oder 24 Bit speichern oder exportieren)
wav-form = eine WAV-Aufnahme muss ganze Zahlen mit 8 bis 32 Bit oder Gleitkommazahlen enthalten, hier sind es { $bits } Bit in anderer Form (als WAV mit 16 Bit exportieren)
rate = eine Aufnahme muss { $least } bis { $most } Abtastwerte je Sekunde haben, hier sind es { $got } (mit 44100 oder 48000 exportieren)
