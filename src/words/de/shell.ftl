# Gesagt, bevor das Programm läuft und wenn es stehen geblieben ist: von den Skripten in src/shell, in dieser Reihenfolge.

about = Die Saiten einer Harfe entwerfen: Längen, Stärken, Zugkräfte und die Papiere für die Werkbank.
opening = Die Werkstatt wird geöffnet …
old = Dieser Browser ist zu alt für Stringloft, oder er verbietet WebAssembly. Bitte aktualisieren oder einen anderen nehmen.
newest-failed = Die neueste Fassung von Stringloft ist nicht angelaufen. Die Seite neu laden: dann öffnet sich die Fassung davor. Die gespeicherten Entwürfe sind unberührt.
stopped-opening = Stringloft ist beim Öffnen stehen geblieben. Die Seite neu laden. Die gespeicherten Entwürfe sind unberührt.
part-missing = Ein Teil von Stringloft ist nicht angekommen. Die Verbindung prüfen, dann die Seite neu laden.
part-damaged = Ein Teil von Stringloft ist beschädigt angekommen, vielleicht mitten in einer Aktualisierung: eine Minute warten, dann die Seite neu laden. Die gespeicherten Entwürfe sind unberührt.
stopped = Stringloft ist stehen geblieben. Die Seite neu laden. Die gespeicherten Entwürfe sind unberührt.
kept-at = Der Entwurf wurde in diesem Browser zuletzt um { $clock } gespeichert. Was danach getan wurde, kann fehlen.
kept-as-opened = Der Entwurf ist in diesem Browser so gespeichert, wie er geöffnet wurde. Was auf dieser Seite getan wurde, kann fehlen.
kept-nothing = Dieser Browser hat keine Kopie des Entwurfs, der offen war.
open-kept = Gespeichertes öffnen
save-kept = Gespeichertes als Datei speichern
copy-report = Bericht kopieren
copied = Kopiert. Der Bericht enthält die Fassung, den Browser und den Fehler, aber nichts vom Entwurf.
copied-with-design = Kopiert. Der Bericht enthält die Fassung, den Browser, den Fehler und den Entwurf.
not-copied = Dieser Browser lässt den Bericht nicht kopieren.
open-empty = Mit leerer Tabelle öffnen
with-design = mit dem Entwurf im Bericht
fault-head = Stringloft ist stehen geblieben
fault = Ein Fehler im Programm: der letzte Schritt hat nicht geklappt, und diese Seite kann nichts mehr tun.
fault-again = Geschieht dasselbe noch einmal: mit leerer Tabelle öffnen und von dort die gespeicherte Datei öffnen. Alle Entwürfe bleiben unter „Entwürfe“.
