# Was keinen Querschnitt, keine Platte, kein Schichtholz, keinen Rahmen ergibt.

## Querschnitte und Säulen

section-side = { $side }: muss mehr als 0 mm sein, angegeben { $got } mm (neu messen)
section-radius = der mittlere Radius muss größer sein als die halbe Tiefe ({ $half } mm), angegeben { $got } mm (eine weitere Kurve nehmen)
strut-number = Säule, { $what }: muss größer als 0 sein, angegeben { $got } (das Maß angeben)

## Sperrholz und Schichtholz

panel-plies = Sperrholz muss 1 bis { $most } Furniere haben, angegeben { $got } (an der Kante zählen)
panel-even = Birkensperrholz muss eine ungerade Zahl von Furnieren haben, 3 oder mehr, angegeben { $got } (an der Kante zählen)
panel-ply = Furnier { $number } muss eine Dicke über 0 und keine negativen Werte haben (berichtigen)
panel-limp = mindestens ein Furnier muss einen Elastizitätsmodul über 0 haben (einen angeben)
laminate-layers = ein Laminat muss 1 bis { $most } Lagen haben, angegeben { $got } (zählen)
laminate-layer = Lage { $number } muss eine Dicke über 0 haben und ein Holz, dessen Elastizitätsmoduln bekannt sind

## Rahmen

frame-number = jeder Ort und jede Kraft muss eine Zahl sein, eine ist keine: { $what } (neu angeben)
frame-no-pulls = der Hals muss mindestens eine Saite tragen, es ist keine da (eine Saite mit ihrer Zugkraft angeben)
frame-axis = die Linie des Halses muss zwei oder mehr getrennte Punkte haben, angegeben { $got } (neu zeichnen)
frame-pillar = der Fuß der Säule muss von ihrem oberen Ende entfernt liegen, Abstand { $gap } mm (den Fuß verschieben)
frame-aligned = die Säule darf nicht auf die Schulter zeigen, ihre Linie geht { $gap } mm daran vorbei (Fuß oder Schulter verschieben)

## Was ein Satz nennt

breadth = Breite
depth = Tiefe
area = Fläche
length = Länge
modulus = Elastizitätsmodul
second-moment = Flächenträgheitsmoment
distance-to-edge = Abstand zum Rand
in-line = Linie des Halses
in-supports = Auflager
in-strings = Saiten
in-frame = Rahmen
