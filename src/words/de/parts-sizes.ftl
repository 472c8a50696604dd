# Maße für die Säge, die der Rahmen nicht sagt, und was Hölzer kosten.

## Köpfe und Hinweise des Formulars

base-and-blocks = Sockel, Klötze und Verbindungen
base-hint = Die Füße werden höher, wo der Zapfen der Säule es braucht, und der Knieklotz, wo der Zapfen des Halses es braucht.
sawing = Säge und Leim
sawing-hint = Rohmaße sind um so viel größer als Fertigmaße. Die Leimfuge macht ein Zapfenloch weiter und tiefer als seinen Zapfen.
planks-and-sheets = Bretter und Platten, die man kauft
planks-hint = Ein Teil, das breiter ist als ein Brett, wird aus Streifen verleimt, eines, das dicker ist, aus Lagen.
prices = Was Hölzer kosten
price-of-planks = ein Kubikmeter Bretter
price-of-sheets = ein Quadratmeter Platte

## Die Maße

base = Dicke des Sockels
base-beyond = Überstand des Sockels
base-behind = Hinter dem Boden mehr Überstand
feet = Höhe der Füße, mindestens
foot-block = Fußklotz längs des Sockels
knee-block = Höhe des Knieklotzes, mindestens
brace = Breite der Streben
tenon-shoulder = Brüstung der Zapfen
under-tenon = Holz, das unter einem Zapfen bleibt
back-rise = Wölbung eines gebogenen Bodens am unteren Ende; 0, wenn er flach ist
glue-room = Leimfuge um einen Zapfen
kerf = Was die Säge nimmt
on-length = Zugabe in der Länge
on-width = Zugabe in der Breite
on-thickness = Zugabe in der Dicke
plank-length = Länge eines Bretts
plank-width = Breite eines Bretts
plank-thickness = Dickstes Brett
sheet-length = Länge einer Platte
sheet-width = Breite einer Platte

## Kosten

head-cost = Kosten
all-woods = Alles, was einen Preis hat
left-out = { $count ->
    [one] Ein Holz hat keinen Preis.
   *[other] { $count } Hölzer haben keinen Preis.
}
cost-hint = Ganze Bretter und ganze Platten, in der Währung der Preise.
