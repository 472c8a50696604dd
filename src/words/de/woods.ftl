# Die Hölzer: ihre Namen, Werte und Quellen.

## Namen

sitka-spruce = Sitkafichte
engelmann-spruce = Engelmannfichte
sugar-maple = Zuckerahorn
red-maple = Rotahorn
black-walnut = Schwarznuss
black-cherry = Amerikanische Kirsche
yellow-poplar = Tulpenbaum
white-oak = Weißeiche
yellow-birch = Gelbbirke
paper-birch = Papierbirke
sweet-birch = Zuckerbirke
american-beech = Amerikanische Buche
mahogany = Echtes Mahagoni
european-spruce = Europäische Fichte, fehlerfrei
c24 = Europäisches Nadelholz, Klasse C24
own = eigenes Holz
conifers = Nadelhölzer
birch-plywood = Birkensperrholz
own-named = Eigenes Holz ({ $key })

## Ein Stab eines eigenen Holzes

give-sizes = Die drei Maße und das Gewicht des Stabs angeben.
give-test = Dichte { $density }. Den Stab zwischen zwei Auflagern belasten oder anklopfen und seinen Ton angeben: daraus folgt sein Elastizitätsmodul.
own-class = Dichte { $density }, Biege-Elastizitätsmodul { $modulus }. Seine Festigkeiten sind die der Klasse { $class }, der höchsten, die es in Dichte und Elastizitätsmodul erreicht.
own-no-class = Dichte { $density }, Biege-Elastizitätsmodul { $modulus }. In Dichte und Elastizitätsmodul erreicht es keine Klasse, daher werden seine Teile nicht beurteilt.
own-not-known = Dichte { $density }, Biege-Elastizitätsmodul { $modulus }. Seine Festigkeiten sind nicht bekannt, daher werden seine Teile nicht beurteilt.

## Werte

plies-thick = { $plies } Furniere, { $mm } mm
plies = { $plies } Furniere
about = { $name } ({ $botanical }). { $basis }
about-own = { $name }. { $words }
basis-clear = Mittelwerte kleiner fehlerfreier Proben bei 12 % Holzfeuchte.
basis-graded = Was 95 von 100 Stücken sortierten Holzes tragen.
bending = Biegefestigkeit
modulus = Biege-Elastizitätsmodul
compression-along = Druck längs der Faser
compression-across = Druck quer zur Faser
shear = Schub längs der Faser
tension-across = Zug quer zur Faser
density = Dichte
bending-flat = Biegefestigkeit, flach
bending-edge = Biegefestigkeit, hochkant
modulus-flat = Elastizitätsmodul, flach
modulus-edge = Elastizitätsmodul, hochkant
compression = Druck
shear-through = Schub durch die Dicke
about-plywood = Birkensperrholz, { $plies }, Deckfaser längs des Teils. Furnier für Furnier aus den Werten eines Furniers gerechnet: Handbook of Finnish Plywood, aus dem Gedächtnis.

## Quellen

from-copies = Wood Handbook, USDA Forest Products Laboratory, FPL-GTR-190, Tabellen 5-3 und 5-5, in Kopien
from-bound = nicht in der Tabelle; der Wert von Silberahorn, dem leichtesten der Ahorne, als untere Grenze: Wood Handbook, USDA Forest Products Laboratory, FPL-GTR-190, Tabelle 5-3
from-copy = Wood Handbook, USDA Forest Products Laboratory, Tabelle 5-1, in einer Kopie
from-class = EN 338:2016, Festigkeitsklasse, die Dichte und Elastizitätsmodul erreichen
from-own-bar = eigener Probestab
from-shares = EN 338, übliche Anteile
from-quoted = EN 1995-1-1, Tabelle 3.2, nach Zitat
