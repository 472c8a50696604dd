# Was die Lasten voraussetzen.

## Loads and woods

permanently = Jede Saite ist dauernd auf Tonhöhe. Die Grenzen sind die für eine dauernde Last, mit der Sicherheit der Normen; Stöße und Schläge sind nicht enthalten.
made-plywood = { $part }: Birkensperrholz, Handbuch für finnisches Sperrholz ({ $standing }).
made-plywood-plies = { $part }: Birkensperrholz aus { $plies } Furnieren, Handbuch für finnisches Sperrholz ({ $standing }).
made-own = { $part }: { $wood }, nach einem eigenen Probestab. { $told }
made-unknown = { $part }: das übliche Holz, da das genannte hier nicht bekannt ist.
made-of = { $part }: { $wood }.
made-of-source = { $part }: { $wood }, { $source } ({ $standing }).
neck = Hals
pillar = Säule
board = Decke
rib = Saitenleiste
bars = Balken
sides = Zargen
back = Boden

## The neck

grain-plies = Etwa die Hälfte der Furniere des Halses läuft durchgehend in seiner Richtung, auch in den Biegungen.
grain-slants = Die Faser des Halses läuft um { $slope } % schräg. Wo sie schräger läuft, wie in einem Hals aus einer geraden Bohle, ist der Hals schwächer als hier gesagt.
grain-follows = Die Faser des Halses folgt seiner Linie. Ein Hals aus einer geraden Bohle ist dort schwächer als hier gesagt, wo die Faser ausläuft.
sound = Das Holz ist gesund: keine Äste.
off-centre = Der Druck in der Säule wird auch { $offset } neben ihrer Mitte beurteilt, was immer sie sonst biegt. Übliche Praxis, ohne Quelle.
one-thickness = Der Hals hat seine gezeichnete Tiefe und überall dieselbe Dicke.
sections = Der Hals hat die angegebenen Querschnitte und dazwischen gleichmäßige Übergänge.
layers-unusable = Der Hals zählt als ein Stück, da seine Lagen nicht verwendbar sind: jede braucht eine Dicke und ein Holz, das kein Sperrholz ist.
layer = { $thick } mm { $wood }
layer-turned = { $thick } mm { $wood } unter { $angle }°
layers = Der Hals ist aus { $layers } geleimt, im Verhältnis zu seiner Dicke, nach der klassischen Laminattheorie. Die Lagen, die höchstens 45° von einer Last abweichen, tragen sie allein, und die schwächste von ihnen bestimmt die Grenze: so tragen gekreuzte Lagen, was quer am Hals zieht. Schub über ihre Flächen rollt gekreuzte Lagen: er darf das Doppelte ihres Zugs quer zur Faser betragen, wie in EN 1995-1-1, 6.1.7 (aus dem Gedächtnis), und die Verdrehung zählt wie in einem Hals aus einem Stück. Der Leim dazwischen gilt als so fest wie das Holz.

## The metal beside it

metal-steel = Stahl (S235: 235 MPa Streckgrenze, aus dem Gedächtnis)
metal-brass = Messing (150 MPa Dehngrenze, weiches Blech hat 125, hartes mehr)
metal-aluminium = Aluminium (EN AW-6082 T6: 250 MPa Dehngrenze, aus dem Gedächtnis)
one-side = einer Seite
both-sides = beiden Seiten
metal = Metall neben dem Hals: Platten, { $thick } dick und { $high } hoch, aus { $metal }, auf { $sides }. Zwei Drittel dieser Spannung sind zulässig. Holz und Metall biegen sich wie ein Stück; Schub und Verdrehung bleiben beim Holz. Das Metall wird mit gekrochenem Holz beurteilt, weil es dann mehr tragen muss. { $held }
metal-screws = Seine Schrauben geben nach wie in EN 1995-1-1, 7.1 und Anhang B (aus dem Gedächtnis), sodass es längs und seitwärts weniger hilft. Sie stehen in einer Reihe in der Mitte der Platte, { $thick } dick und alle { $gap } eine, und gehen { $deep } tief ins Holz. Sie sind aus Stahl und tragen, was EN 1995-1-1, 8.2.3, neben einem dünnen Blech zulässt (aus dem Gedächtnis).
metal-screws-unjudged = Seine Schrauben geben nach wie in EN 1995-1-1, 7.1 und Anhang B (aus dem Gedächtnis), sodass es längs und seitwärts weniger hilft. Sie stehen in einer Reihe in der Mitte der Platte, { $thick } dick und alle { $gap } eine, und sind nicht beurteilt, da nicht angegeben ist, wie tief sie gehen. Sie sind aus Stahl und tragen, was EN 1995-1-1, 8.2.3, neben einem dünnen Blech zulässt (aus dem Gedächtnis).
metal-glue = Sein Leim bedeckt die ganze Fläche und gilt im Schub als so fest wie das Holz daneben. Das verlangt sauberes, aufgerautes Metall und einen Kleber für Metall. Übliche Praxis, ohne Quelle.

## Holes

tuning-pins = Stimmwirbel
bridge-pins = Stegstifte
levers-or-discs = Klappen oder Scheiben
hole-deep = { $row } { $wide } weit und { $deep } tief
hole-through = { $row } { $wide } weit und durchgehend
holes-none = Stiftlöcher sind nicht mitgerechnet, da keine gebohrt werden.
holes = Löcher im Hals sind mitgerechnet: { $holes }. Biegung, Druck, Schub und Verdrehung wirken auf den Querschnitt, den sie lassen, und was quer zur Faser zieht, geht zwischen den Löchern einer Reihe durch: EN 1995-1-1, 5.2 (aus dem Gedächtnis). Die Spannung, die sich am Rand eines Lochs sammelt, wird gezeigt, nach der Formel von S. G. Lekhnitskii für ein offenes Loch (aus dem Gedächtnis), und nicht für sich beurteilt: sie klingt innerhalb eines halben Durchmessers ab, Holz baut sie durch kurze Risse längs der Faser ab, und Holzbauregeln beurteilen den verbleibenden Querschnitt. Stifte, die beim Einschlagen das Holz spalten, und was ein strammer Stift hilft, bleiben außer Betracht.

## The board

board-plate = Die Decke ist eine Platte mit querlaufender Faser und stehenden Jahrringen. Breite und Dicke ändern sich gleichmäßig von Saite zu Saite, und von der Mitte zu den Seiten, wo diese eigene Dicken haben. Hebt sie sich, hängt sie auch zwischen ihren Rändern.
board-map = Die Decke hat die von Ort zu Ort angegebenen Dicken und dazwischen gleichmäßige Übergänge. Ihre höchste Spannung wird von der Mitte bis zu den Rändern gesucht.
board-map-unusable = Die Dicken von Ort zu Ort lassen sich nicht verwenden: { $text }. Es gelten die bei der längsten und der kürzesten Saite. Jede Zeile braucht einen Ort in Prozent und drei Dicken.
string-holes = Die Saitenlöcher sind von Saitenleiste und Deckleiste abgezogen, oder von einer Decke ohne sie; was sich an ihren Rändern sammelt, bleibt außer Betracht.
rib-as-one = Saitenleiste, Decke und Deckleiste sind in der Mitte verleimt und biegen sich wie ein Stück.
bars-as-one = Balken sind auf ganzer Länge angeleimt und biegen sich mit der Decke darunter wie ein Stück, zwischen Zargen und Enden, die sie halten wie die Decke. Sie drehen sich mit der Decke und werden auf Schub und Verdrehung beurteilt; Lasten neben ihrer Mitte bleiben außer Betracht. Wo sie enden, an Klötzen und Reifchen, gelten sie als stumpf in voller Höhe abgeschnitten. Dort geht der Leim zuerst auf, deshalb zu den Enden hin auslaufen lassen (übliche Praxis, ohne Quelle); das zählt nicht mit.
liners = Reifchen und Zargen halten die Ränder der Decke: mindestens mit einer Zarge, die sich am Boden dreht, höchstens mit Streben, die das Reifchen halten. Ihr Leim ist so fest wie das schwächere Holz quer zur Faser. Aus dem Gedächtnis.

## Where the harp is kept

heated = Die Harfe steht in geheizten Räumen: das bestimmt, wie weit das Holz kriecht und was es trägt.
covered = Die Harfe steht unter Dach, ungeheizt: das Holz kriecht mehr. Seine Festigkeiten sind die trockener Räume, wie in EN 1995-1-1, Tabelle 3.1 (aus dem Gedächtnis).
outdoors = Die Harfe steht im Freien: das Holz kriecht viel mehr, und fünf Sechstel der Festigkeiten trockener Räume sind zulässig, wie in EN 1995-1-1, Tabelle 3.1 (aus dem Gedächtnis). Die Moduln sind die trockenen Holzes.

## Joints and soundbox

joints-free = Am einen Ende der Schätzung drückt die Säule nur, und die Schulter dreht sich frei in der Ebene der Saiten und hält als einzige den Hals gegen Verdrehung. Am anderen gibt keine Verbindung nach.
joints-springs = Am einen Ende der Schätzung geben die Verbindungen doppelt so viel nach, wie ihre Maße sagen, am anderen geben sie nicht nach. Nachgeben der Verbindungsmittel nach EN 1995-1-1, längs ihrer Achse wie in Zulassungen von Schrauben, Zapfen durch den Schub ihrer Leimfuge (aus dem Gedächtnis).
joints-borne = Eine Verbindung wird auf mindestens der Hälfte ihrer Flächen zusammengedrückt; den Rest ihrer Biegung, und alles Gleiten und Verdrehen, trägt ein einziges Mittel, das mit dem niedrigsten Anteil. Leim auf Hirnholz zählt mit einem Zehntel des Holzes. Verbindungsmittel nach den Formeln von EN 1995-1-1 (aus zweiter Hand und aus dem Gedächtnis), in Hirnholz mit dem, was dort von ihnen bleibt.
box-tube = Der Korpus ist ein Rohr mit dünnen Wänden vom Fuß bis zur Schulter, so breit wie die Decke, mit Reifchen aus dem Holz der Zargen. Zwischen Schalllöchern hält der Boden wie eine Leiter. Das Sperrholz hat die Furniere, die zu seiner Dicke gehören.
box-none = Der Korpus hat keine Maße: entweder gibt er nicht nach, oder er ist ein Rohr, 0,6-mal so tief wie breit, mit Wänden von einem Fünfzigstel seiner Breite. Übliche Praxis, ohne Quelle.
