# Die Seite für Kunden, die einen Link öffnen.

## The page

title = Wie der Kunde es sieht
open = Im Entwurfsprogramm öffnen
open-hint = Saiten und Längen ändern; für niemand anderen ändert sich etwas
card = Saitenkarte
card-hint = Die Saiten einzeln, zum Drucken
what = Was es ist
drawing = Die Harfe von der Seite
curves = Wie sich die Saiten vom Diskant zum Bass ändern
remarks = Bemerkungen des Harfenbauers
looking = Das ist ein Entwurf, der als Link geschickt wurde. Hier lässt sich nichts kaputtmachen.

## What it is

made-by = gebaut von { $maker }
made-for = für { $client }
strings = Sie hat { $count ->
    [one] 1 Saite
   *[other] { $count } Saiten
}.
strings-from-to = Sie hat { $count } Saiten, von { $low } bis { $high }.
levers = { $count ->
    [one] Eine davon hat eine Halbtonklappe.
   *[other] { $count } davon haben eine Halbtonklappe.
}
levers-all = Jede davon hat eine Halbtonklappe.
discs = Pedale drehen Scheiben, die { $count } davon erhöhen.
tuning = Grundstimmung: { $tuning }.
pitch = Tonhöhe: { $pitch }.
plain-nylon = { $count } aus Nylon oder Ähnlichem
plain-gut = { $count } aus Darm oder Seide
plain-wire = { $count } aus Draht
wound = { $count } mit Draht umsponnen
unknown = { $count } noch offen
materials = Ihre Saiten: { $list }.
feel-like = Unter dem Finger fühlt sie sich an wie die meisten Harfen ihrer Größe (übliche Praxis, ohne Quelle).
feel-firmer = Unter dem Finger ist sie fester als die meisten Harfen ihrer Größe, um etwa { $percent } % (übliche Praxis, ohne Quelle).
feel-softer = Unter dem Finger ist sie weicher als die meisten Harfen ihrer Größe, um etwa { $percent } % (übliche Praxis, ohne Quelle).
total = Alle Saiten zusammen haben eine Zugkraft von { $newtons } ({ $other }).
total-of-some = Die Saiten mit bekannter Zugkraft, { $with } von { $all }, haben zusammen { $newtons } ({ $other }).
