# Die mitgelieferten Materialien: ihre Namen und die Quellen ihrer Werte.

## Namen

nylon-named = Nylon, Monofil
gut-named = Darm
fluorocarbon-named = Fluorcarbon (PVDF)
steel-named = Klavierdraht aus Stahl
bronze-named = Phosphorbronze C51000
yellow-brass-named = Messing 70/30, C26000, federhart
red-brass-named = Tombak 85/15, C23000, hart
copper-named = Kupfer, weicher Draht
silver-named = Sterlingsilber 92,5/7,5, federharter Draht
iron-named = Eisendraht, historisch (mit Phosphor, ohne Kohlenstoff)
silk-named = Seide (Bombyx mori)
polyester-named = Polyesterfaser (PET)

## Quellen

a228 = ASTM A228/A228M, Zolltabelle, wie ein Drahthändler sie wiedergibt
b159 = ASTM B159, Federdraht (H08), Mindestwerte, wie ein Drahthändler sie wiedergibt
en-sm = EN 10270-1, Sorte SM, wie ein Federnhersteller sie wiedergibt
polymer-modulus = J. Woodhouse und N. Lynch-Aird, Choosing strings for plucked musical instruments, Acta Acustica united with Acustica 105 (2019) 516: 4,5 GPa + 39-mal die Spannung
norton = M. Norton und D. Karczub, Fundamentals of Noise and Vibration Analysis, 2. Aufl., Anhang 4A, nach einer Abschrift
as-fast = als Modul bei Schwingung angenommen; über Minuten ist er etwas kleiner, sodass das Ergebnis eine obere Schätzung ist. Quelle: noch zu finden
gut-one-modulus = als Modul bei Schwingung angenommen: N. Lynch-Aird und J. Woodhouse, Materials 11 (2018) 2160, Zusammenfassung, finden alle drei Moduln unabhängig von der Spannung. Quelle der Zahl: noch zu finden
micrometer = Ablesung einer Bügelmessschraube auf 0,01 mm, wie N. Lynch-Aird und J. Woodhouse sie annehmen (Materials 10 (2017) 497)
woodhouse-2004 = J. Woodhouse, Plucked guitar transients, Acta Acustica united with Acustica 90 (2004) 945, Tabelle I: 0,020 und 0,024 für zwei blanke Nylonsaiten
specific-strength = eine Tabelle der spezifischen Festigkeit in einer Enzyklopädie, Kupfer
nylon-slow = Quelle: noch zu finden (2 bis 3 GPa über Wochen, Kriechen eingerechnet)
settled = gesetzt beträgt die Dichte etwa 97 % der ungedehnten (N. Lynch-Aird und J. Woodhouse, Materials 10 (2017) 497)
gut-maker = die Notiz eines Darmsaitenmachers über das Produkt aus Tonhöhe und Länge
gut-modulus = J. Woodhouse und N. Lynch-Aird, Acta Acustica united with Acustica 105 (2019) 516
gut-spread = 1300 bis 1320 kg/m³ in den vorliegenden Quellen
pvdf-article = ein Enzyklopädieartikel über Polyvinylidenfluorid
as-nylon = wie für Nylon angenommen: bei gleicher Spannung sind die schnellen Moduln der beiden fast gleich (N. Lynch-Aird und J. Woodhouse, Materials 11 (2018) 2160, Zusammenfassung); das Gesetz für Nylon ist aus zweiter Hand
stiffer-than-nylon = Quelle: noch zu finden (durchweg steifer als Nylon, Materials 11 (2018) 2160)
steel-density = eine Werkstoffdatenbank, ASTM A228; T. Rossing (Hrsg.), The Science of String Instruments, 2010, S. 379 hat dasselbe
steel-loss = M. Norton und D. Karczub, Fundamentals of Noise and Vibration Analysis, 2. Aufl., Tabelle 6.1: 1 bis 6e-4 für Baustahl; das obere Ende angenommen
steel-spread = 7800 bis 7850 kg/m³ in den vorliegenden Quellen
b103 = ASTM B103, Datenblatt der Legierung C51000
c26000 = das Datenblatt eines Drahtwerks für Runddraht aus C26000
c26000-modulus = das Datenblatt eines Drahtwerks für Runddraht aus C26000 (110 bis 112 GPa)
c26000-strength = das Datenblatt eines Drahtwerks für Runddraht aus C26000, federhart
to-be-found = Quelle: noch zu finden
red-brass-strength = Quelle: noch zu finden (600 bis 725 MPa; das Datenblatt eines Lieferanten nach ASTM B134 hat 455 bis 530 MPa für halbharten Draht von 1,5 bis 6 mm)
c23000 = das Datenblatt eines Lieferanten für C23000, 20 bis 300 °C
sterling = Angaben eines Edelmetallhändlers zu Sterlingsilber
silver-modulus = Quelle: noch zu finden (75 bis 83 GPa)
sterling-hard = Angaben eines Edelmetallhändlers zu Draht aus Sterlingsilber, federhart
iron-density = Quelle: noch zu finden (7700 bis 7870 kg/m³)
iron-modulus = Quelle: noch zu finden (190 bis 200 GPa)
iron-strength = Quelle: noch zu finden (700 bis 1100 MPa, bei dünnerem Draht höher)
iron-expansion = eine Tabelle von Ausdehnungszahlen, reines Eisen, 0 bis 100 °C
silk-sheet = das Datenblatt einer Seidenspinnerei
silk-strength = das Datenblatt einer Seidenspinnerei (500 bis 600 MPa)
polyester-modulus = aus Morton und Hearle, Tabelle 13.2: 10,6 N/tex, mit 1390 kg/m³ gerechnet
polyester-strength = aus Morton und Hearle, Tabelle 13.2: 0,47 N/tex, mit 1390 kg/m³ gerechnet
nylon-falls = bis 1,0 mm aus den Reißlängen einer Saite in einem Aufsatz über Harfensaiten und Entwurf (2020), mit 1150 kg/m³ gerechnet; darüber ohne Quelle: vorsichtige Grenze, fallend wie die Mindestwerte einer Pharmakopöe für Catgut (aus dem Gedächtnis)
gut-falls = bis 0,7 mm das kleinste der gemessenen Produkte aus Tonhöhe und Länge, 240 m/s an Darm von 0,40 mm (Notiz eines Darmsaitenmachers); darüber vorsichtige Grenze, fallend wie die Mindestwerte einer Pharmakopöe für Catgut (aus dem Gedächtnis)
fluorocarbon-falls = ohne Quelle: vorsichtige Grenze, unter den Proben einer Fluorcarbonschnur (626 bis 848 MPa bei 0,29 bis 0,75 mm, Seite eines Prüfers); über 0,75 mm fallend wie die Mindestwerte einer Pharmakopöe für Catgut (aus dem Gedächtnis)
nylon-flat = aus den Reißlängen einer Saite in einem Aufsatz über Harfensaiten und Entwurf (2020), mit 1150 kg/m³ gerechnet
gut-flat = das kleinste der gemessenen Produkte aus Tonhöhe und Länge, 240 m/s an Darm von 0,40 mm (Notiz eines Darmsaitenmachers)
by-hand = von Hand eingetragen

## Materialien kurz, wie eine Zelle sie nennt

nylon = Nylon
gut = Darm
fluorocarbon = Fluorcarbon
steel = Stahl
bronze = Bronze
yellow-brass = Messing
red-brass = Tombak
copper = Kupfer
silver = Silber
iron = Eisen
silk = Seide
polyester = Polyester
