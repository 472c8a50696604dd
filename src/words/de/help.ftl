# Die Hilfe: erste Schritte, Ausmessen, was Zahlen heißen, Vorsicht, und die Wörter des Fachs.

## The window

title = Hilfe
find = In der Hilfe suchen
nothing-found = Dazu steht hier nichts. Ein anderes Wort versuchen, oder unter „Die Zahlen erklärt“ nachsehen.
found = { $count ->
    [one] { $count } Stelle
   *[other] { $count } Stellen
} gefunden

## A first harp

first = Die erste Harfe in fünf Schritten
first-1 = „Entwürfe“, „Neu“ öffnen. Angeben, welche Art Harfe es ist, wie viele Saiten sie hat und wie sie gestimmt wird. Sie kommt so bespannt, wie es bei ihrer Art üblich ist, auf einem Rahmen, der sie trägt.
first-2 = Eigene Längen und Saiten in die Tabelle tippen. Die Kurven folgen sofort: gesucht ist eine Linie ohne Sprünge, innerhalb ihres Sollbands.
first-3 = Die Befunde lesen, der ernsteste zuerst; das ? daneben sagt, was er bedeutet. Wo es eine Abhilfe gibt, führt ein Knopf daneben sie aus, und Rückgängig nimmt sie zurück.
first-4 = Unter „Lager“ eintragen, was zu kaufen ist, dann unter „Saiten wählen“ den besten Satz daraus suchen lassen.
first-5 = In der „Zeichnung“ ansehen, was der Rahmen trägt. Wenn alles stimmt, Schablonen und Saitenkarte drucken und den Entwurf als Datei speichern.

## Restringing

restring = Eine Harfe in fünf Schritten neu bespannen
restring-1 = Jede Saite messen, wie die Zeichnung unten zeigt, mit offenen Klappen, und Ton, Länge, Material und Stärke aufschreiben.
restring-2 = „Entwürfe“, „Harfe neu bespannen“ öffnen und die Tabelle tippen oder einfügen. Die Spalten dürfen in beliebiger Reihenfolge stehen.
restring-3 = Zuerst die Befunde zu Tönen und Längen lesen: dort zeigt sich ein Messfehler.
restring-4 = Behalten, was auf der Harfe war, oder einen Satz aus dem Lager wählen. Nicht über den alten Gesamtzug gehen, wenn nicht bekannt ist, dass der Rahmen ihn trägt.
restring-5 = Die Bestellung drucken und für den Besitzer die Saitenkarte. Bei anderen Saiten die Regulierung der Klappen oder Drehscheiben prüfen.

## Measuring

measure = Eine Harfe ausmessen
measure-drawing = Eine Harfe von der Seite: 1 ist die klingende Länge einer Saite, von der Decke bis zum Stegstift; 2 ist ihre Stärke; 3 ist die Länge vom Stegstift bis zum Stimmwirbel; 4 ist der Winkel zwischen Saiten und Decke.
measure-1 = Klingende Länge: von dort, wo die Saite die Decke verlässt, bis zum Stegstift, auf einen halben Millimeter genau, das Maßband gerade neben der Saite.
measure-2 = Stärke: mit der Messschraube an drei Stellen, jedes Mal etwas weitergedreht; den mittleren Wert aufschreiben. Eine alte Saite ist dünner, wo sie gezupft wurde.
measure-3 = Vom Stegstift bis zum Stimmwirbel, für den Zuschnitt.
measure-4 = Der Winkel zwischen Saiten und Decke, an einer Saite in der Mitte. Von ihm hängt ab, wie stark die Saiten die Decke heben.
measure-5 = Eine umsponnene Saite: den Gesamtdurchmesser und den des Kerns, wo er frei liegt. Eine Saite unbekannten Aufbaus lässt sich wiegen: „Materialien“ sagt, wie.

## What the figures mean

meaning = Was die Zahlen an der Werkbank heißen
meaning-feel = Spielgefühl oder Zupfhärte ist die Kraft, die der Finger für jeden Millimeter spürt, um den er eine Saite auslenkt. Eine Harfe fühlt sich gleichmäßig an, wo sie sich von Saite zu Saite wenig ändert; ein Sprung ist als harte oder weiche Saite zu spüren.
meaning-share = Auslastung ist die Zugkraft als Anteil der Last, bei der die Saite reißt. Über dem Erlaubten reißt sie früh; weit darunter klingt sie dumpf und verstimmt sich. Eine dünnere Saite ändert daran kaum etwas: bei gegebenem Ton folgt die Auslastung aus Länge und Material.
meaning-margin = Die Reserve bis zum Riss sagt, um wie viele Halbtöne eine Saite höher gestimmt werden könnte, bevor sie reißt.
meaning-frame = Das Urteil über den Rahmen sagt, welchen Anteil des Zulässigen sein schwächstes Teil trägt, von den günstigsten bis zu den strengsten Annahmen. Ein Teil ohne Maße wird nicht beurteilt, und das wird gesagt.

## Materials

materials = Materialien im Vergleich
materials-nylon = Nylon: günstig, gutmütig, dehnt sich wochenlang. Die übliche Wahl in Diskant und Mitte von Hakenharfen.
materials-gut = Darm: voller und fester unter dem Finger bei gleicher Länge, empfindlich gegen feuchte Luft, nutzt sich an der Zupfstelle ab.
materials-fluorocarbon = Fluorcarbon: dichter als Nylon, bei gleicher Zugkraft also dünner und heller; Feuchte stört es am wenigsten.
materials-wire = Stahl, Messing und Bronze: dünn, lange klingend, wenig Dehnung, sodass eine kleine Drehung des Wirbels viele Cent ausmacht. Stahl ist auch der Kern von Basssaiten.
materials-wound = Umsponnene Saiten: Gewicht ohne Steifigkeit für den Bass. Auf Nylon fühlen sie sich weich an, auf Stahl fest.
materials-standing = Übliche Praxis, ohne Quelle. Die Werte jedes Materials stehen mit ihren Quellen unter „Materialien“.

## Care

care = Vorsicht
care-1 = Beim Bespannen, Hochstimmen und Abnehmen eine Schutzbrille tragen. Das Gesicht aus der Ebene der Saiten halten.
care-2 = Die Zugkraft langsam nachlassen, ein paar Umdrehungen je Saite, reihum; nie eine gespannte Saite durchschneiden.
care-3 = Einen neuen Rahmen über Tage hochstimmen. Aufhören, wenn eine Verbindung aufgeht, eine Leimfuge knackt oder die Decke sich mehr hebt als vorausgesehen.
care-4 = Alle Lastzahlen sind Schätzungen und keine Abnahme einer Konstruktion. Örtliche Vorschriften und fachkundige Praxis gehen vor.

## Where it is kept

kept = Wo die Entwürfe liegen
kept-1 = In diesem Browser, auf diesem Gerät. Nichts wird gesendet; nach dem ersten Besuch geht es ohne Netz.
kept-2 = Ein Link enthält den ganzen Entwurf in seiner Adresse: wer ihn hat, kann die Harfe öffnen, und kein Server sieht sie.
kept-3 = Wer die Daten des Browsers löscht, löscht die Entwürfe. Wichtiges als Datei speichern, oder unter „Entwürfe“ alles sichern.

## The glossary

words = Wörter
words-standing = Fachwörter: übliche Praxis, aus dem Gedächtnis.
word-back = Boden
word-back-is = die Wand des Korpus gegenüber der Decke
word-bar = Balken
word-bar-is = eine Leiste, innen auf die Decke geleimt
word-bare-end = freier Kern am Ende
word-bare-end-is = das Stück am Ende einer umsponnenen Saite ohne Umspinnung
word-belly = Wölbung
word-belly-is = wie weit sich die Decke unter den Saiten gehoben hat
word-brace = Strebe
word-brace-is = eine Leiste quer im Korpus
word-breaking-load = Bruchlast
word-breaking-load-is = die Last, bei der eine Saite reißt
word-bridge-pin = Stegstift
word-bridge-pin-is = der Stift am Hals, an dem die klingende Länge endet
word-cent = Cent
word-cent-is = ein Hundertstel eines Halbtons
word-compass = Umfang
word-compass-is = von der tiefsten bis zur höchsten Saite
word-core = Kern
word-core-is = der Draht oder Faden, auf den gesponnen wird
word-cover = Deckung
word-cover-is = wie dicht die Windungen liegen: bei 100 % berühren sie sich
word-creep = Kriechen
word-creep-is = langsames Nachgeben unter dauernder Last
word-cut-length = Zuschnittlänge
word-cut-length-is = wie lang eine Saite zugeschnitten wird, mit Knoten, Wicklung und Ende
word-damping = Dämpfung
word-damping-is = wie schnell ein Ton abklingt
word-disc = Drehscheibe
word-disc-is = die drehbare Scheibe einer Pedalharfe, die eine Saite erhöht
word-drift = Wandern
word-drift-is = wie weit sich der Ton mit der Temperatur verändert
word-feel = Spielgefühl
word-feel-is = wie hart sich eine Saite unter dem Finger anfühlt: ihre Zupfhärte
word-finding = Befund
word-finding-is = etwas im Entwurf, das man ansehen sollte
word-frame = Rahmen
word-frame-is = Hals, Säule, Decke und Korpus zusammen
word-gauge = Stärke
word-gauge-is = der Durchmesser einer blanken Saite, der Gesamtdurchmesser einer umsponnenen
word-glide = Anstieg
word-glide-is = wie viel zu hoch eine gezupfte Saite beginnt, bevor sie sich setzt
word-grommet = Hülse
word-grommet-is = das Röhrchen im Saitenloch der Decke
word-harmonic-curve = Harfenkurve
word-harmonic-curve-is = die Kurve der Stegstifte
word-impedance = Impedanz
word-impedance-is = wie schwer sich das Ende einer Saite bewegen lässt
word-inharmonicity = Inharmonizität
word-inharmonicity-is = wie viel zu hoch die Teiltöne einer steifen Saite liegen
word-jump = Sprung
word-jump-is = ein größerer Schritt im Spielgefühl zwischen zwei Nachbarsaiten
word-knee-block = Knieklotz
word-knee-block-is = der Klotz im Korpus, der den Hals aufnimmt
word-lever = Halbtonklappe
word-lever-is = die Klappe, die eine Saite von Hand um einen Halbton erhöht
word-lift = Hub
word-lift-is = der Teil der Zugkraft, der die Decke hebt
word-liner = Reifchen
word-liner-is = die Leiste, auf die der Rand der Decke geleimt ist
word-load-share = Auslastung
word-load-share-is = die Zugkraft als Anteil der Bruchlast
word-make-up = Aufbau
word-make-up-is = woraus eine Saite ist, der Kern zuerst
word-margin = Reserve
word-margin-is = um wie viele Halbtöne eine Saite steigen könnte, bevor sie reißt
word-natural-disc = Auflösungsscheibe
word-natural-disc-is = die obere Scheibe einer Saite: von Be auf Auflösung
word-neck = Hals
word-neck-is = der gebogene Balken, der Stegstifte und Stimmwirbel trägt
word-nominal-place = Nennstelle
word-nominal-place-is = wo Klappe oder Scheibe stünde, wenn das Drücken die Saite nicht dehnte
word-open-tuning = Grundstimmung
word-open-tuning-is = die Töne, wenn alle Klappen oder Scheiben offen sind
word-partial = Teilton
word-partial-is = einer der Töne, die in einer Saite zugleich klingen
word-pillar = Säule
word-pillar-is = die Stütze, die Hals und Sockel auseinanderhält
word-plain = blanke Saite
word-plain-is = eine Saite ohne Umspinnung
word-regulation = Regulierung
word-regulation-is = Klappen oder Scheiben so stellen, dass jeder Halbton stimmt
word-ribbon = Flachdraht
word-ribbon-is = flacher Draht für eine Umspinnung
word-sharp-disc = Kreuzscheibe
word-sharp-disc-is = die untere Scheibe einer Saite: von Auflösung auf Kreuz
word-shoulder = Schulter
word-shoulder-is = wo der Hals oben an den Korpus gefügt ist
word-side = Zarge
word-side-is = eine Seitenwand des Korpus
word-soundboard = Decke
word-soundboard-is = die dünne Platte, die die Saiten heben
word-soundbox = Korpus
word-soundbox-is = der hohle Körper mit der Decke als Vorderseite
word-spare = Ersatzsaite
word-spare-is = eine Saite, die zusätzlich zu denen der Harfe bestellt wird
word-stock = Lager
word-stock-is = die Saiten und Drähte, die zu kaufen sind
word-strength = Festigkeit
word-strength-is = die Spannung, bei der ein Material bricht
word-stress = Spannung
word-stress-is = Kraft durch den Querschnitt, der sie trägt
word-stretch = Dehnung
word-stretch-is = um wie viel eine Saite von schlaff bis zur Tonhöhe länger wird
word-anchor = Saitenanker
word-anchor-is = was den Knoten einer Saite hinter der Decke hält
word-string-rib = Saitenleiste
word-string-rib-is = die Leiste unter den Saiten auf der Decke
word-string-spacing = Saitenabstand
word-string-spacing-is = wie weit Saiten voneinander stehen
word-tail = Ende zum Ziehen
word-tail-is = das Stück Saite hinter dem Stimmwirbel
word-band = Sollband
word-band-is = der Bereich, in dem eine Kurve liegen soll
word-target-curve = Sollkurve
word-target-curve-is = das gewünschte Spielgefühl oder die gewünschte Zugkraft vom Bass zum Diskant
word-temperament = Temperierung
word-temperament-is = wie die Oktave auf ihre zwölf Töne verteilt ist
word-tension = Zugkraft
word-tension-is = die Kraft längs einer Saite, wenn sie auf Tonhöhe ist
word-tolerance = Toleranz
word-tolerance-is = wie weit ein Wert abweichen kann, nach beiden Seiten
word-total-tension = Gesamtzug
word-total-tension-is = die Zugkraft aller Saiten zusammen
word-tuning-pin = Stimmwirbel
word-tuning-pin-is = der Wirbel, um den eine Saite gewickelt ist und mit dem sie gestimmt wird
word-vibrating-length = klingende Länge
word-vibrating-length-is = von der Decke bis zum Stegstift
word-winding = Umspinnung
word-winding-is = der Draht auf einem Kern
word-wound = umsponnene Saite
word-wound-is = ein Kern, mit Draht umsponnen

## About

about = Über Stringloft
about-version = Version { $version }, Stand { $build }.
about-is = Stringloft ist in Rust geschrieben und läuft als WebAssembly ganz in diesem Browser: kein Server rechnet etwas aus, und kein Entwurf verlässt dieses Gerät, es sei denn, Sie verschicken ihn.
about-rests = Worauf die Zahlen beruhen, steht im Menü „Hilfe“ unter „Die Zahlen erklärt“: jede Formel, ihre Quellen und woran sie geprüft wurde.
licences = Lizenzen
licences-are = In Stringloft stecken Pakete anderer. Jedes steht hier mit Version und Lizenz; ein Druck darauf zeigt den vollen Text.
licences-coming = Die Lizenzen werden geholt …
licences-missed = Die Lizenzen sind nicht angekommen. Die Verbindung prüfen, dann noch einmal versuchen.
licences-count = { $count ->
    [one] 1 Paket
   *[other] { $count } Pakete
}
licences-find = Ein Paket oder eine Lizenz suchen
