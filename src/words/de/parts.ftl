# Die Teile der Harfe für die Säge: wie jedes heißt, und was dazu zu sagen ist.

## Was jedes ist

neck = Hals
pillar = Säule
capital = Backe des Kapitells
base = Sockel
front-foot = vorderer Fuß
rear-foot = hinterer Fuß
soundboard = Decke
strip = Deckleiste
string-rib = Saitenleiste
cross-bar = Querbalken
long-bar = Längsbalken
side = Zarge
back = Boden
front-liner = Reifchen an der Decke
back-liner = Reifchen am Boden
side-brace = Zargenstrebe
back-brace = Bodenstrebe
foot-block = Fußklotz
knee-block = Knieklotz

## Warum es keine gibt

no-neck = ohne Hals gibt es keine Teile (mindestens drei Saiten eine Länge geben)
no-box = der Korpus hat noch keine Maße (Tiefe, Zargen und Boden in der Zeichnung unter „Hölzer“ angeben)
too-flat = die Decke liegt zu flach für eine Harfe, die auf dem unteren Ende ihres Korpus steht (sie steiler stellen)
crossed = die Flächen eines Teils überkreuzen sich: { $part } (die Maße von Säule, Decke und Korpus ansehen)

## Was dazu zu sagen ist

tuning-pin = Stimmwirbel
bridge-pin = Stegstift
strings-at-neck = Die Saiten kommen der Fläche des Halses bis auf { $gap } mm nahe. Sie weiter von seiner Mitte wegrücken, oder ihn dünner machen.
string-at-pin = Saite { $string } kommt bis auf { $gap } mm an den { $pin } der Saite { $other } heran. Wirbel oder Stifte weiter zur Seite setzen, oder dünnere nehmen.
levers-close = Die Halbtonklappen der Saiten { $one } und { $other } lassen { $gap } mm zwischen sich, bei 11 mm Breite. Schmalere Klappen nehmen, oder einen größeren Abstand.
pin-at-edge = Saite { $string }, { $pin }: { $off } mm von der Kante des Halses; bei diesem Durchmesser sollten es { $asked } mm sein. Das Holz kann dort reißen.
hole-on-brace = Schallloch { $hole } liegt über Strebe { $brace } des Bodens. Das Loch kürzer machen, oder die Streben weiter auseinander setzen.
hole-narrowed = Schallloch { $hole } wird { $to } mm breit geschnitten und nicht { $from } mm, weil die Reifchen nur so viel Platz lassen.
back-lower = Der Boden steigt am unteren Ende { $to } mm und nicht { $from } mm: über einem so schmalen Korpus wäre er an den Kanten zu steil.
hand-too-wide = Die Schalllöcher messen { $length } mm mal { $width } mm. Eine große flache Hand braucht { $hand-long } mm mal { $hand-wide } mm.
out-of-reach = { $count ->
    [one] Der Knoten der Saite { $first } liegt
   *[other] { $count } Knoten, von Saite { $first } bis { $last }, liegen
} bis zu { $far } mm vom nächsten Schallloch; die Hand reicht { $reach } mm weit. Mehr oder größere Löcher nehmen.
in-foot-block = { $count ->
    [one] Saite { $first } läuft in den Fußklotz oder so nah an ihm vorbei, dass ihr Knoten keinen Platz hat.
   *[other] Die Saiten { $first } bis { $last } laufen in den Fußklotz oder so nah an ihm vorbei, dass ihre Knoten keinen Platz haben.
} Den Klotz kürzen oder die Saiten weiter oben beginnen lassen. Die Festigkeit der Decke ist gerechnet, als ginge die Saitenleiste dort weiter.
in-knee-block = { $count ->
    [one] Saite { $first } läuft in den Knieklotz oder so nah an ihm vorbei, dass ihr Knoten keinen Platz hat.
   *[other] Die Saiten { $first } bis { $last } laufen in den Knieklotz oder so nah an ihm vorbei, dass ihre Knoten keinen Platz haben.
} Den Klotz niedriger oder den Zapfen darin kürzer machen, oder die Decke weiter nach oben reichen lassen. Die Festigkeit der Decke ist gerechnet, als ginge die Saitenleiste dort weiter.
board-thin = An Saite { $string } ist die Decke { $at-string } mm dick, von dort zu ihrem Ende hin wird sie bis auf { $at-end } mm dünner. Die Decke an dieser Saite dicker machen oder weniger verjüngen.
face-across = quer zur Harfe
face-high = in der Ebene der Saiten
face-too-large = { $joint }: als Leimfläche sind { $given } mm { $way } angegeben, die Teile treffen sich aber nur auf { $drawn } mm. Unter „Lasten“ ist die Verbindung mit der größeren Fläche beurteilt. { $drawn } mm eingeben oder das Teil größer machen.
neck-beside = Der Hals steht { $by } mm über die Seite des Korpus hinaus. Eine Decke von { $wanted } mm Breite am oberen Ende trüge ihn ganz.
rib-narrowed = Die Saitenleiste wird zum Diskant hin von { $from } mm auf { $to } mm schmaler geschnitten, weil die Reifchen nur so viel Platz lassen. Die Festigkeit der Decke ist mit der vollen Breite gerechnet.
bar-at-rib = Paar { $pair } der Längsbalken läuft in die Saitenleiste. Es nach außen setzen, oder eine schmalere Leiste nehmen.
neck-in-box = Der Hals reicht { $deep } mm in ein anderes Teil: { $part }. Ihn dort zurückschneiden, oder die Form der Schulter ändern.
no-shoulder-tenon = Der Zapfen des Halses findet im Knieklotz keinen Platz und ist nicht gezeichnet.
no-shoulder-fastener = Nicht jede Schraube und nicht jeder Dübel der Schulter liegt im Knieklotz; was herauskäme, ist nicht gezeichnet.
no-neck-fastener = Nicht jede Schraube und nicht jeder Dübel der Schulter bleibt im Hals, der sich dort wegbiegt; was herauskäme oder nahe an die Kante, ist nicht gezeichnet.
no-head-tenon = Der Zapfen oben an der Säule käme durch den Hals oder fast hindurch und ist nicht gezeichnet.
no-foot-tenon = Der Fuß der Säule lässt keinen Platz für seinen Zapfen; er ist nicht gezeichnet.
to-front = nach vorn
to-player = zum Spieler hin
aside = zur Seite
tips = Die Harfe kippt { $way }, wenn man sie um { $angle }° neigt. Den Sockel dorthin weiter hinausreichen lassen, oder das Gewicht tiefer legen.
falls = Die Harfe steht nicht: sie fällt { $way }. Den Sockel dorthin weiter hinausreichen lassen.
not-judged = Nicht betrachtet: schwingende Saiten, das Spiel der Wirbel und wie die Teile gespannt und geleimt werden. Metall, Saiten, Leim und Lack sind nicht mitgewogen. Vor dem Sägen nachmessen und prüfen, ob jedes Teil an das daneben passt.
neck-grain = Nicht beurteilt: Faser, die aus dem Hals ausläuft. Seine Bretter sind gerade, und seine Linie weicht bis zu { $angle }° von ihnen ab; die Schätzung unter „Lasten“ rechnet mit Fasern, die dem Hals folgen. Wo sie auslaufen, ist der Hals viel schwächer als gezeigt: bei 11° bleibt wenig mehr als die Hälfte seiner Biegefestigkeit (Wood Handbook, Tabelle 5-12, aus dem Gedächtnis), darüber weniger. Ihn aus Lagen verleimen, deren Fasern sich kreuzen, oder Sperrholz nehmen; beides trägt weniger als Holz, dessen Faser dem Hals folgt, ihn also dicker machen.
neck-layers-turn = Nicht beurteilt: was die Biegung seiner Linie für die Lagen des Halses heißt. Die Schätzung unter „Lasten“ rechnet ihre Winkel von dieser Linie aus; die Lagen sind gerade, und die Linie weicht bis zu { $angle }° ab. Wo sie das tut, tragen sie weniger als gezeigt.
held = Geschätzt: Die Saiten ziehen den Korpus mit bis zu { $pull } vom Sockel nach oben. Der Leim unter dem Fußklotz ist mit { $glue } % des Zulässigen belastet; der Sockel, der sich zwischen Säule und Fußklotz biegt, mit { $base } %. Schrauben und Leim auf Hirnholz zählen nicht mit. Wie der Zug vom Fußklotz in Decke und Zargen weitergeht, ist nicht beurteilt.
held-unjudged = Geschätzt: Die Saiten ziehen den Korpus mit bis zu { $pull } vom Sockel nach oben. Ob Leim und Sockel das aushalten, ist nicht beurteilt: die Festigkeit des Holzes von Sockel und Fußklotz ist nicht bekannt.
base-opens = Der Leim unter dem Fußklotz, der den Korpus auf dem Sockel hält, ist mit geschätzt { $share } % des Zulässigen belastet. Den Fußklotz längs des Sockels länger machen.
base-bends = Der Sockel, der sich zwischen Säule und Fußklotz biegt, ist mit geschätzt { $share } % des Zulässigen belastet. Ihn dicker machen.
block-longer = Der Fußklotz ist längs des Sockels { $to } mm lang und nicht { $from } mm, damit das, was innen an der Decke sitzt, über dem Sockel endet.
bolts-close = Bolzen der Schulter stehen { $gap } mm auseinander, Muttern und Unterlegscheiben brauchen { $asked } mm. Die Bolzen weiter auseinander setzen, oder dünnere nehmen.
bent-not-judged = Nicht beurteilt: ob sich der Boden so weit biegen lässt, ohne zu brechen, und was sein Bogen zur Festigkeit des Korpus beiträgt, die mit einem flachen Boden gerechnet ist.

## Ihre Schablonen

title = { $harp }: { $part }
numbered = { $part } { $number }
of-side = { $part }, { $side }
of-side-numbered = { $part } { $number }, { $side }
strings-side = Saitenseite
other-side = andere Seite
corner = linke untere Ecke des Rechtecks um das Teil
sizes = Fertig: { $long } mm längs der Faser, { $wide } mm quer dazu, { $thick } mm dick.
wood-is = Holz: { $wood }. Der Pfeil zeigt die Faser.
wood-across = Holz: { $wood }. Der Kreis mit Punkt heißt: die Faser steht senkrecht zu dieser Fläche.
seen-from-outside = Von außen gesehen.
seen-from-above = Von oben gesehen, das Ende mit der Säule links.
pair-mirrored = Das andere Teil des Paars ist sein Spiegelbild.
far-edge-is = Gestrichelt: die Kante der hinteren Fläche, wo die Kanten schräg sind.
planed = Zu den Seiten hin dünner: außen von der Mittellinie zu den Rändern hin abhobeln, dort bis zu { $deep } mm. Innen bleibt es eben.
tapers = Es verjüngt sich von { $thick } mm auf { $thin } mm.
mechanism = Halbtonklappe oder Scheibe
fastener = Verbindung von Hals und Korpus
drill-through = { $what }: { $wide } mm durchbohren, senkrecht zur Fläche.
drill-deep = { $what }: { $wide } mm bohren, { $deep } mm tief, senkrecht zur Fläche.
drill-slanting = Saitenlöcher: mit { $angle }° zur Fläche bohren, in Richtung der Saite, die Lochreihe in der Ebene der Saiten.

## Die Ansichten

from-side = Von der Seite
from-front = Von vorn
from-above = Von oben
view = { $wide } mm breit, { $high } mm hoch

## Die Schnittliste auf Papier

cutting-list = Schnittliste
running = Schnittliste von { $harp }
parts = Teile
parts-to-saw = Teile: längs der Faser × quer × dick, in mm
boards-and-sheets = Bretter und Platten
counted = Außer dem Holz nötig
stands = Gewicht des Holzes, und wie die Harfe steht
worth-saying = Einen Blick wert
head-part = Teil und Holz
head-finished = Fertig, mit Zapfen
head-rough = Roh
head-wood = Holz
head-boards = Bretter
head-waste = Verschnitt
head-what = Was
head-count = Wie viele
head-size = Maß
part-of-wood = { $part } ({ $wood })
glued-up = { $size }, aus { $strips } Streifen
glued-of-layers = { $size }, aus { $layers } Lagen, je { $thick } mm dick gesägt
wood-so-thick = { $wood }, { $thick } mm
board-size = { $long } × { $wide } mm
boards-at-least = { $count } zu { $size }; mindestens { $least }
percent = { $number } %
degrees = { $number }°
kilograms = { $number } kg
millimetres = { $number } mm
item-strings = Saiten
item-tuning-pins = Stimmwirbel
item-bridge-pins = Stegstifte
item-levers = Halbtonklappen
item-discs = Scheiben
item-fasteners = Schrauben oder Dübel an Hals und Korpus
mass = Gewicht des Holzes
tips-front = Lässt sich nach vorn neigen um
tips-player = Lässt sich zum Spieler neigen um
tips-aside = Lässt sich zur Seite neigen um
shoulder-high = Oberes Ende des Bodens über dem Fußboden, auf dem hinteren Fuß im Gleichgewicht
not-weighed = Teile, deren Holz keine bekannte Dichte hat
how-laid = Gelegt werden die breitesten Stücke zuerst, jedes auf das erste Brett oder die erste Platte mit Platz, in Streifen der Länge nach; weniger, als hinter „mindestens“ steht, geht auf keine Art. Rohmaße haben { $length } mm mehr in der Länge, { $width } mm in der Breite und bei Brettern { $thickness } mm in der Dicke; die Säge nimmt { $kerf } mm.
