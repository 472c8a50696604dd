# Die Entwürfe, die dieser Browser aufbewahrt, der Papierkorb und die Sicherung.

gone = er ist nicht mehr in diesem Browser
spoilt = { $name } lässt sich nicht lesen ({ $why }); er bleibt unverändert unter Entwürfe
name-lost = ein Entwurf, dessen Name verloren ist
quoted = „{ $title }“
unopened = lässt sich nicht öffnen: { $why }
day-and-time = { $day } um { $time }
states-refused = dieser Browser hat die früheren Stände darin nicht angenommen
for-client = { $title }, für { $client }
empty-chart = Leere Tabelle
harp-of = Harfe mit { $strings }
strings = { $count ->
    [one] { $count } Saite
   *[other] { $count } Saiten
}
strings-between = { $strings }, { $low } bis { $high }
not-opened = Dieser Entwurf wurde nicht geöffnet: { $why }.
not-done = Das ging nicht: { $why }.
copy-of = { $title } (Kopie)
not-saved = Er wurde nicht gespeichert: { $why }.
title = Entwürfe in diesem Browser
on-this-device = Sie bleiben auf diesem Gerät. Um sie auf Dauer zu behalten oder mitzunehmen: einen Entwurf als Datei speichern, oder alle als Sicherung.
find = Nach Namen suchen
none-yet = Noch keine. Ein Entwurf wird hier aufbewahrt, sobald er geändert wird.
changed-on = { $strings }, geändert am { $day }
new-name = Neuer Name
rename = Umbenennen
leave-it = Abbrechen
duplicate = Verdoppeln
save-as-is = Speichern, wie er ist
open-now = jetzt offen
delete = Löschen
delete-hint = Legt ihn in den Papierkorb darunter
bin = Papierkorb
bin-days = Ein Entwurf bleibt hier { $days } Tage.
left-unchanged = Die neue Harfe, an der nichts geändert wurde, liegt jetzt unter Entwürfe im Papierkorb.
delete-for-good-asked = Diesen Entwurf endgültig löschen?
put-here-on = { $strings }, hier seit { $day }
put-back = Zurücklegen
delete-for-good = Endgültig löschen
no-backup = Keine Sicherung gemacht: { $why }.
taken-in = { $new ->
    [one] Aus der Sicherung geladen: { $new } Entwurf.
   *[other] Aus der Sicherung geladen: { $new } Entwürfe.
} { $known ->
    [one] { $known } war schon hier.
   *[other] { $known } waren schon hier.
}
not-taken-in = Die Sicherung wurde nicht geladen: { $why }.
backup = Sicherung
backup-hint = Eine Datei mit allen Entwürfen und ihren früheren Ständen, dem Papierkorb und den Lagerlisten. Beim Laden ändert sich nichts, was hier ist: was abweicht, kommt daneben.
save-backup = Sicherung speichern
take-in = Sicherung laden
room = Stringloft und was es aufbewahrt brauchen { $used } MB von den { $most } MB, die dieser Browser zulässt.
little-room = Es ist nur noch wenig frei: eine Sicherung speichern und den Papierkorb leeren.
room-runs-out = Der Platz für Entwürfe wird in diesem Browser knapp. Unter Entwürfe eine Sicherung speichern, dann den Papierkorb leeren und löschen, was hier nicht mehr gebraucht wird: ohne Platz lässt sich nichts mehr behalten.

sort-by = Sortieren nach
by-date = letzter Änderung
by-name = Name

## Frühere Zustände eines Entwurfs

states = Frühere Stände
states-hint = Wie dieser Browser ihn von selbst aufbewahrt hat
no-states = Noch keine früheren Stände.
open-new = Als neuen Entwurf öffnen
open-new-of = Als neuen Entwurf öffnen, wie er am { $when } war
opened = Geöffnet, wie er am { $when } war, als neuer Entwurf. Der andere bleibt, wie er ist.
unread = Dieser Stand lässt sich nicht lesen: { $why }.
