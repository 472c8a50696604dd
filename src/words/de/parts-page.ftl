# The view of the parts of the harp.

nothing = Noch sind keine Teile zu zeigen: { $why }.
give-sizes = Maße in der Zeichnung angeben
take-usual = Übliche Maße für den Korpus nehmen
usual-hint = Übliche Maße folgen aus der längsten Saite und der Breite der Decke: übliche Praxis, ohne Quelle. Vor dem Sägen prüfen.
usual-taken = Der Korpus hat jetzt übliche Maße: übliche Praxis, ohne Quelle. Vor dem Sägen prüfen; sie stehen in der Zeichnung unter „Hölzer“.
shown = Zeigen
in-space = Im Raum
three-sides = Von drei Seiten
template = Schablone
planks = Bretter und Platten
space-of = Die Harfe im Raum
space-help = Links und rechts drehen die Harfe, auf und ab neigen sie, plus und minus machen sie größer und kleiner, 0 zeigt sie wieder ganz.
space-hint = Ziehen dreht; ein Druck auf ein Teil wählt es in der Liste. Rollen oder zwei Finger vergrößern.
sides-hint = Eins zu zehn. Gestrichelt: was im Korpus liegt.
template-hint = So wird es in voller Größe geschnitten; die Dateien enthalten dasselbe eins zu eins.
planks-hint = So liegen die roh gesägten Stücke auf Brettern und Platten der Größen, die unter „Maße, Säge und Preise“ stehen.
list = Teile
list-hint = Ein Teil wählen, um seine Schablone zu sehen.
nothing-chosen = Daneben in der Liste ein Teil wählen.
head-mass = Gewicht
no-mass = nicht bekannt
grams = { $mass } g
worth = Einen Blick wert ({ $count })
worth-and-unjudged = Einen Blick wert ({ $count }), nicht beurteilt ({ $unjudged })
nothing-found = Nichts gefunden, was zu ändern wäre.
files = Dateien
files-of = Schablone von: { $part }
table = Alle Zahlen als Tabelle (CSV)
table-hint = Teile mit ihren Maßen, ihre Lage auf den Brettern, was außer dem Holz nötig ist, Gewicht und Gleichgewicht
save-sides = Drei Seiten als Bild (SVG)
dxf = DXF für die Fräse
svg = SVG in Millimetern
a4 = PDF auf A4-Blättern
letter = PDF auf Letter-Blättern
one-sheet = PDF auf einem Blatt
board-number = { $wood }, { $thick } mm: { $number } von { $count }
stands = Das Holz wiegt { $mass } kg. Die Harfe lässt sich { $front }° nach vorn, { $player }° zum Spieler und { $aside }° zur Seite neigen, bevor sie fällt. Auf dem hinteren Fuß im Gleichgewicht liegt ihre Schulter { $shoulder } mm über dem Fußboden.
stands-unknown = { $count ->
    [one] Wie schwer die Harfe ist und wie sie steht, lässt sich nicht sagen: die Dichte des Holzes eines Teils ist nicht bekannt.
   *[other] Wie schwer die Harfe ist und wie sie steht, lässt sich nicht sagen: die Dichte des Holzes von { $count } Teilen ist nicht bekannt.
}
sizes-of = { $long } × { $wide } × { $thick } mm, { $wood }
head-part = Teil
sizes = Maße, Säge und Preise
print = Schnittliste und Reihenfolge des Baus drucken
print-hint = Teile, Bretter und Platten, was außer dem Holz nötig ist, Gewicht
all-a4 = Alle Schablonen auf A4-Blättern (PDF)
all-letter = Alle Schablonen auf Letter-Blättern (PDF)
all-hint = Eine Seite mit allen Teilen verkleinert, dann jedes Teil in voller Größe
guides = Bohrhilfen (PDF)
guides-hint = Klötze, die den Bohrer im richtigen Winkel halten, mit seinem Anschlag
no-guides = In die Fläche dieses Teils wird nichts gebohrt.
