# Maße, die an den drei Seiten der Harfe gezogen werden.

pillar-width = Breite der Säule, längs der Harfe
pillar-depth = Tiefe der Säule, quer zur Harfe
neck-thickness = Dicke des Halses
board-low = Breite der Decke an der tiefsten Saite
board-high = Breite der Decke an der höchsten Saite
depth-low = Tiefe des Korpus an der tiefsten Saite
depth-high = Tiefe des Korpus an der höchsten Saite
back-rise = Wölbung des Bodens am unteren Ende
hole-length = Länge der Schalllöcher
hole-width = Breite der Schalllöcher
feet = Höhe der Füße
knee-block = Höhe des Knieklotzes
size = { $what }: { $size } mm
hint = Ein Quadrat ziehen ändert das Maß, auf dem es steht; mit der Alt-Taste in Schritten von 0,1 mm. Mit der Tastatur: Tab dorthin, dann die Pfeiltasten, mit Umschalt 10 mm.
stops = Nicht weiter: { $why }.
