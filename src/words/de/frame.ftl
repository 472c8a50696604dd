# Was der Rahmen trägt: Teile, Urteile, Kräfte, und was zu tun ist.

## How a part stands

not-judged = nicht beurteilt
within = innerhalb
may-be-over = vielleicht darüber
over = darüber
gives-way = gibt nach
or-gives-way = { $low } % oder gibt nach
percents = { $low } bis { $high } %
from-to = { $low } bis { $high }
from-to-degrees = { $low } bis { $high }°

## Parts, by themselves and within a sentence

part-neck = Hals
part-pillar = Säule
part-shoulder = Schulter
part-head = Verbindung Säule–Hals
part-foot = Verbindung Säule–Sockel
part-soundbox = Korpus
board-with-rib = Decke mit ihrer Saitenleiste
board-without-rib = Decke ohne Saitenleiste
in-neck = Hals
in-pillar = Säule
in-shoulder = Schulter
in-head = Verbindung Säule–Hals
in-foot = Verbindung Säule–Sockel
in-soundbox = Korpus
in-board-with-rib = Decke mit ihrer Saitenleiste
in-board-without-rib = Decke ohne Saitenleiste

## What of a part was looked at

bending-push = Biegung mit dem Druck längs
bending-pull = Biegung mit dem Zug längs
shear-twist = Schub und Verdrehung zusammen
across-curve = Zug quer zur Faser, wo sich eine Biegung öffnet
buckling = Knicken
beside-middle = außermittige Last
pressed-along = Druck längs der Faser
pressed-across = Druck quer zur Faser
sliding = Gleiten und Verdrehung
opening = Biegung, die eine Kante der Verbindung öffnet
opening-glue = Öffnen, gehalten vom Leim der Flächen
opening-tenon = Öffnen, gehalten vom Zapfen
opening-dowels = Öffnen, gehalten von den Dübeln
opening-bolts = Öffnen, gehalten von den Bolzen
opening-screws = Öffnen, gehalten von den Schrauben
opening-plates = Öffnen, gehalten von den Platten
sliding-glue = Gleiten und Verdrehung, gehalten vom Leim der Flächen
sliding-tenon = Gleiten und Verdrehung, gehalten vom Zapfen
sliding-dowels = Gleiten und Verdrehung, gehalten von den Dübeln
sliding-bolts = Gleiten und Verdrehung, gehalten von den Bolzen
sliding-screws = Gleiten und Verdrehung, gehalten von den Schrauben
sliding-plates = Gleiten und Verdrehung, gehalten von den Platten
splitting = Spalten neben dem, was die Verbindung hält
sides-bent = Biegung der Zargen mit der Kraft längs
back-bent = Biegung des Bodens mit der Kraft längs
board-pulled = Zug quer zur Faser der Decke durch die Biegung des Korpus
sides-sheared = Schub und Verdrehung in den Zargen
back-sheared = Schub und Verdrehung im Boden
bowing-sides = Ausbeulen der Zargen zwischen den Streben
rolling = Rollschub in den gekreuzten Lagen
metal-bent = Biegung des Metalls neben dem Hals
metal-glue = Schub im Leim des Metalls neben dem Hals
metal-screws = Kraft auf die Schrauben des Metalls neben dem Hals
board-bent = Biegung quer, mit dem Zug der gehobenen Decke
rib-bent = Biegung ihrer Saitenleiste
rib-glue = Schub im Leim ihrer Saitenleiste
bars-bent = Biegung ihrer Balken
bars-glue = Schub im Leim ihrer Balken
bars-sheared = Schub und Verdrehung ihrer Balken
edge-peel = Aufreißen des Leims an ihren Rändern
bars-ends = Aufreißen des Leims an den Enden ihrer Balken
board-bows = Ausbeulen unter dem Druck längs, nach zehn Jahren
of-board-bent = Biegung der Decke
of-rib-bent = Biegung der Saitenleiste
of-rib-glue = Schub im Leim der Saitenleiste
of-bars-bent = Biegung der Balken der Decke
of-bars-glue = Schub im Leim der Balken der Decke
of-bars-sheared = Schub und Verdrehung der Balken der Decke
of-edge-peel = Aufreißen des Leims an den Rändern der Decke
of-bars-ends = Aufreißen des Leims an den Enden der Balken der Decke

## What may be done

mend-pillar = Die Säule breiter und tiefer machen.
mend-neck = Den Hals dort tiefer machen, oder dicker, oder ein festeres Holz wählen.
mend-twist = Den Hals dicker machen, die Saiten näher an seine Mittellinie rücken, und ihn fest mit einer steifen Säule verbinden.
mend-curve = Die Biegung weiter machen, oder den Hals aus Lagen leimen, die ihr folgen.
mend-sides = Die Zargen dicker oder den Korpus tiefer machen, oder größere Reifchen nehmen.
mend-back = Den Boden dicker machen, oder seine Löcher kleiner.
mend-board-pulled = Den Korpus tiefer machen, oder Zargen und Reifchen steifer.
mend-bowing = Die Streben enger setzen, oder die Zargen dicker machen.
mend-rolling = Den Hals dicker machen, oder weniger Lagen kreuzen.
mend-metal-glue = Die Platten dünner oder höher machen, oder dort enden lassen, wo der Hals sich weniger biegt.
mend-metal-screws = Die Schrauben enger setzen, oder dicker und tiefer wählen.
mend-metal = Die Platten dicker oder höher machen, oder den Hals steifer.
mend-held = Was die Verbindung hält, größer, tiefer oder weiter auseinander machen.
mend-joint = Die Verbindung größer machen, oder verstärken.
mend-rib = Die Saitenleiste breiter oder höher machen, oder die Decke dicker.
mend-rib-glue = Die Saitenleiste breiter machen, oder die Decke dicker.
mend-bars = Die Balken höher machen, oder die Decke dicker.
mend-bars-glue = Die Balken breiter machen, oder mehr davon einleimen.
mend-edges = Die Reifchen breiter machen, oder die Decke schmaler oder dicker.
mend-bars-ends = Die Decke an den Enden der Balken dicker machen, oder die Balken höher.
mend-board-bows = Decke oder Saitenleiste dicker machen, Längsbalken geben, oder den Korpus tiefer machen.
mend-board = Die Decke dicker oder schmaler machen, oder ihr eine steifere Saitenleiste geben.

## What leads

leads-gives-way = { $what }: das Teil gibt nach
leads-sum = { $what }: { $share } in Summe, der größte Anteil { $stress } von { $limit } MPa
leads-of = { $what }: { $stress } von { $limit } MPa
leads-unlimited = { $what }: { $stress } MPa, keine Grenze bekannt
share-of = { $what }: { $share }
shares-list = { $what }: { $stress } von { $limit } MPa, { $share }
shares-unlimited = { $what }: { $stress } MPa, { $share }
none-of = { $what }: keine
stress-unjudged = { $what }: { $stress } MPa, nicht beurteilt
there = Dort: { $list }.
no-limit-known = keine Grenze bekannt
near = bei { $string }
in-the-neck = im Hals

## The neck

neck-no-strength = Die Festigkeit dieses Holzes ist nicht bekannt.
neck-where = { $lead }, { $place }, wo der Hals { $thick } dick und { $deep } tief ist.
neck-drilled = Die Stiftlöcher sind mitgerechnet.
neck-range = Die niedrigere Zahl gilt, wenn { $least }, die höhere, wenn { $most }.
case-pushes = die Säule nur drückt
case-joints-give = die Verbindungen nachgeben
case-no-joint = keine Verbindung nachgibt
case-nothing = weder Verbindungen noch Korpus nachgeben
neck-across = Wo sich eine Biegung öffnet, zieht es das Holz mit bis zu { $stress } MPa quer zur Faser; dafür ist von diesem Holz keine Grenze bekannt.
neck-rims = Am Rand eines Lochs sammelt sich die Spannung: bis zu { $along } MPa längs der Faser und bis zu { $across } MPa quer dazu, was einen kurzen Riss beginnen kann. Das wird für sich nicht beurteilt.

## The pillar

pillar-pulled = Die Säule wird mit { $force } gezogen, nicht gedrückt: die Form des Rahmens prüfen.
pillar-no-strength = Festigkeit oder Modul dieses Holzes ist nicht bekannt.
pillar-bears = Sie trägt { $push }. Mit dem Modul für das Knicken würde eine gerade bei { $plane } in der Ebene der Saiten und bei { $square } quer dazu knicken.
pillar-also = Gibt keine Verbindung nach, wird sie auch gebogen, mit bis zu { $plane } in der Ebene der Saiten und { $sideways } quer dazu, und mit { $torque } verdreht.

## Joints and soundbox

joint-no-sizes = Nicht beurteilt: es sind keine Maße angegeben für das, was sie hält.
joint-on-neck = { $lead }, am Holz des Halses.
joint-on-pillar = { $lead }, am Holz von Säule oder Sockel. Beurteilt ist, was von der Säule neben der Decke auf dem Sockel steht.
joint-no-limit = Von diesem Holz ist keine Grenze bekannt.
joint-opens = Die Biegung überwiegt den Druck: sie würde eine Kante der Verbindung mit bis zu { $stress } MPa öffnen. Leimfuge und Dübel halten das; Leim auf Hirnholz hält wenig, und die Maße der Dübel sind hier nicht bekannt.
box-no-sizes = Nicht beurteilt: die Maße von Zargen und Boden sind nicht angegeben.
box-no-limit = Von seinen Hölzern ist keine Grenze bekannt.
box-where = { $lead }, { $place }.

## The board

board-at = Bei { $string } ist sie { $wide } breit und { $thick } dick.
board-is = Sie ist { $wide } breit und { $thick } dick.
board-rises-years = Sie hebt sich sofort um { $now }, über die Jahre um { $later }.
board-rises = Sie hebt sich sofort um { $now }; wie weit sie kriecht, ist nicht bekannt.
board-on-liners = Das eine Ende der Spanne gilt für Ränder so fest, wie Reifchen, Zargen und Streben sie machen können, das andere für so weiche, wie diese sein können.
board-edges = Das eine Ende der Spanne gilt für Ränder, die sich weder drehen noch bewegen, das andere für Ränder, die sich frei drehen und nicht ziehen.
board-bows-at = Nach zehn Jahren Kriechen, mit dem Modul für das Knicken, würde sie beim { $times }-fachen des Drucks längs ausbeulen.
board-no-bowing = Der Korpus streckt sie längs, so dass sie nicht ausbeult.
board-bowing-unjudged = Ausbeulen unter dem Druck längs wird nicht beurteilt: dazu braucht es die Maße des Korpus und das Kriechen des Holzes.
board-ends = Wo die Saitenleiste endet, ist nicht beurteilt; wo Balken enden, nur auf einer massiven Decke, deren Moduln, Dichte und Zug quer zur Faser bekannt sind, und bei Balken quer mit den Maßen des Korpus. Stumpf in voller Höhe abgeschnitten geht ihr Leim dort zuerst auf, deshalb zu den Enden hin auslaufen lassen (übliche Praxis, ohne Quelle).

## Forces

force-all = Zugkraft aller Saiten
force-lift = Hub an der Decke, senkrecht zu ihr
force-along = Kraft längs der Decke
force-lift-rib = Hub je Länge der Saitenleiste
force-along-rib = Kraft längs der Saitenleiste, höchstens
force-neck = Resultierender Zug am Hals
force-pillar = Druck in der Säule
force-shoulder = Kraft an der Schulter
force-neck-moment = Hals: höchstes Biegemoment
force-neck-sideways = Hals: höchste Biegung seitwärts
force-neck-torque = Hals: höchstes Drehmoment
force-neck-shear = Hals: höchster Schub
force-neck-along = Hals: höchste Kraft längs
force-neck-twist = Hals: höchste Verdrehung, sofort
force-pillar-plane = Säule: Biegung in der Ebene, wenn keine Verbindung nachgibt
force-pillar-sideways = Säule: Biegung seitwärts, wenn keine Verbindung nachgibt
force-pillar-torque = Säule: Drehmoment, wenn keine Verbindung nachgibt
force-sway = Kopf der Säule: sofort seitwärts, wenn keine Verbindung nachgibt
force-left-out = Saiten weggelassen, da etwas unbekannt ist

## How far from breaking

reserve = Bei der höchsten Zahl bricht ein Stück mittlerer Festigkeit unter etwa dem { $mean }-fachen dieser Last sofort und dem { $mean-later }-fachen in zehn Jahren, das schwächste von zwanzig unter dem { $weak }- und { $weak-later }-fachen.
reserve-weak = Bei der höchsten Zahl bricht das schwächste von zwanzig Stücken unter etwa dem { $weak }-fachen dieser Last sofort und dem { $weak-later }-fachen in zehn Jahren.
reserve-buckles = Bei der höchsten Zahl knickt eines mittlerer Steife unter etwa dem { $mean }-fachen dieser Last sofort und dem { $mean-later }-fachen in zehn Jahren, das weichste von zwanzig unter dem { $weak }- und { $weak-later }-fachen.
reserve-buckles-weak = Bei der höchsten Zahl knickt das weichste von zwanzig unter etwa dem { $weak }-fachen dieser Last sofort und dem { $weak-later }-fachen in zehn Jahren.
reserve-yields = Bei der höchsten Zahl verbiegt sich das Metall bleibend unter etwa dem { $times }-fachen dieser Last, sofort wie in zehn Jahren.
reserve-crushed = Bei der höchsten Zahl wird ein Stück mittlerer Festigkeit unter etwa dem { $mean }-fachen dieser Last bleibend gequetscht, das schwächste von zwanzig unter dem { $weak }-fachen, wie lange sie auch dauert. Das drückt das Holz ein und bricht nichts.
reserve-crushed-weak = Bei der höchsten Zahl wird das schwächste von zwanzig Stücken unter etwa dem { $weak }-fachen dieser Last bleibend gequetscht, wie lange sie auch dauert. Das drückt das Holz ein und bricht nichts.
reserve-unjudged = Wie weit das vom Bruch entfernt ist, ist nicht beurteilt.
reserve-nearer = Näher am Bruch ist dies: { $what }.
reserve-glue = Das ist das Holz neben dem Leim; wie lange der Leim selbst hält, ist nicht beurteilt.

## Stringing

order-lowest = Von der längsten Saite aufwärts
order-highest = Von der kürzesten Saite abwärts
order-middle = Von der Mitte nach außen
order-in-turns = Bass und Diskant im Wechsel
stringing-one = Die Saiten einzeln aufziehen. Eine Anleitung beginnt mit der längsten [die eines Saitenmachers, aus zweiter Hand]; die zuerst gezeigte Reihenfolge schont diesen Rahmen am meisten, soweit er beurteilt ist.
stringing-tone = Jede zuerst bis einen Ganzton unter ihre Tonhöhe bringen, dann alle auf Tonhöhe. [Dieselbe Anleitung.] Einen Ton tiefer hat eine Saite etwa 79 % ihrer Zugkraft auf Tonhöhe.
stringing-rounds = In mehreren Runden hochstimmen, und nach jeder Hals, Verbindungen und Decke prüfen. Übliche Praxis, ohne Quelle.
stringing-down = Die Zugkraft langsam und gleichmäßig nachlassen, die längsten Saiten zuerst, wo die ganze Harfe herunter muss. Übliche Praxis, ohne Quelle.
stringing-care = Schutzbrille tragen und das Gesicht aus der Ebene der Saiten halten.

## The verdict

never-judged = der Sockel (unter „Teile“), wie lange Leim selbst hält
grain-of-neck = auslaufende Faser im Hals
ends-of-bars = die Enden von Saitenleiste und Balken
meaning = 100 % ist das Zulässige, nicht der Bruch: die Festigkeit, die 95 von 100 Stücken des Holzes haben, abzüglich dessen, was dauernde Last und Sicherheit davon nehmen. Bei Vollholz ist das etwa ein Drittel der mittleren Festigkeit kleiner, gesunder Stücke. Daneben steht, wann ein Teil voraussichtlich bricht, für gerade Faser und ohne Bohrungen, nach einer Kurve der Ermüdung von Holz, die aus zweiter Hand gelesen ist.
not-given = nicht beurteilt: seine Maße fehlen
not-given-full = Der Rahmen wird nicht beurteilt: Maße und Hölzer von Hals, Säule und Decke sind noch nicht angegeben. Sie in der Zeichnung unter „Hölzer“ angeben.
across-neck = Zug quer zur Faser des Halses
opening-of = Öffnen, { $part }
across-board = Zug quer zur Faser der Decke
edges-glue = der Leim an den Rändern der Decke
board-bowing = Ausbeulen der Decke unter dem Druck längs
lead-gives-way = { $part } gibt nach
lead-may-give-way = { $part } gibt vielleicht nach
lead-over = { $part }: { $share }, darüber
lead-may-be-over = { $part }: { $share }, vielleicht darüber
lead-worst = { $part }: { $share }, das Ungünstigste des Beurteilten
lead-share = { $part }: { $share }
finding = Rahmen, geschätzt: { $lead }. Nicht beurteilt: { $list }.
estimated = { $lead }, geschätzt
estimated-proposed = { $lead }, geschätzt mit vorgeschlagenen Maßen
finding-proposed = Rahmen, geschätzt mit vorgeschlagenen Maßen: { $lead }. Nicht beurteilt: { $list }.
sizes-proposed = Die Maße sind ein Vorschlag dieses Programms. Sie stehen in der Zeichnung unter „Hölzer“: dort prüfen und ändern oder als eigene übernehmen.
no-loads = Keine Lasten: { $why }.
falls = Nach dieser Schätzung gibt nach: { $part }.
may-fall = Nach dieser Schätzung gibt vielleicht nach: { $part }.
share-unjudged = { $part } nicht beurteilt
shares = { $list } des Zulässigen, geschätzt.
is-over = Über dem Zulässigen: { $part }.
is-maybe-over = Vielleicht über dem Zulässigen: { $part }.
not-judged-list = Nicht beurteilt: { $list }.
