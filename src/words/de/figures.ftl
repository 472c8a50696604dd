# Was von jedem Wert gezeigt und gesagt wird.

## Die Werte: Spaltenkopf, Bedeutung, voller Name

frequency-word = Tonhöhe
frequency-meaning = Die Frequenz, die der Ton in dieser Stimmung hat.
frequency = Tonhöhe in Hertz
length-word = Länge
length-meaning = Klingende Länge, von der Decke (oder Saitenleiste) bis zum Stegstift.
length = Klingende Länge
gauge-word = Stärke
gauge-meaning = Durchmesser einer blanken Saite, Gesamtdurchmesser einer umsponnenen.
gauge = Stärke
core-word = Kern
core-meaning = Durchmesser dessen, was die Zugkraft trägt: bei einer umsponnenen Saite der Kern.
core = Kern
linear-density-word = Masse
linear-density-meaning = Masse je Meter.
linear-density = Masse je Meter
tension-word = Zugkraft
tension-meaning = Die Zugkraft, die den ersten Teilton der steifen Saite auf Tonhöhe bringt.
tension = Zugkraft
stress-word = Spannung
stress-meaning = Zugkraft durch Querschnitt des Kerns.
stress = Spannung
breaking-load-word = Bruchlast
breaking-load-meaning = Niedrigste Last, bei der der Kern reißt. Eine Schätzung aus der Festigkeit seines Materials.
breaking-load = Bruchlast
load-share-word = Auslastung
load-share-meaning = Zugkraft durch Bruchlast.
load-share = Auslastung
semitones-to-break-word = Reserve
semitones-to-break-meaning = Wie weit der Ton noch steigen könnte, bevor die Saite reißt.
semitones-to-break = Reserve bis zum Riss
pluck-stiffness-word = Zupfhärte
pluck-stiffness-meaning = Zupfhärte, das Maß des Spielgefühls: die Kraft, die der Finger je Millimeter oder Zoll spürt.
pluck-stiffness = Zupfhärte
inharmonicity-word = Inharm. B
inharmonicity-meaning = Koeffizient der Inharmonizität, freie Kernenden eingerechnet.
inharmonicity = Inharmonizität
partial-8-word = Teilton 8
partial-8-meaning = Um wie viel der achte Teilton höher liegt als das Achtfache des ersten.
partial-8 = Teilton 8
impedance-word = Impedanz
impedance-meaning = Kennimpedanz: die Wurzel aus Zugkraft mal Masse je Meter.
impedance = Impedanz
damping-word = Dämpfung
damping-meaning = Verlustfaktor der Biegung bei dem Teilton, der unter „Instrument“ gewählt ist: je niedriger, desto länger klingt die Saite. Auch Luft und Decke nehmen ihren Teil.
damping = Dämpfung
stretch-word = Dehnung
stretch-meaning = Um wie viel die Saite vom schlaffen Zustand bis zur Tonhöhe länger wird, wenn sie sich gesetzt hat.
stretch = Dehnung
pin-turns-word = Umdrehungen
pin-turns-meaning = Umdrehungen des Stimmwirbels, die die Dehnung aufnehmen.
pin-turns = Umdrehungen des Stimmwirbels
cents-per-pin-degree-word = Cent je Grad
cents-per-pin-degree-meaning = Um wie viel ein Grad am Stimmwirbel den Ton verändert.
cents-per-pin-degree = Cent je Grad am Stimmwirbel
cents-per-kelvin-word = Temperatur
cents-per-kelvin-meaning = Um wie viel sich der Ton ändert, wenn die Luft ein Grad Celsius wärmer ist. Unter null fällt er.
cents-per-kelvin = Cent je Kelvin
lever-word = Klappe
lever-meaning = Vom Stegstift bis dorthin, wo die Halbtonklappe aufliegt, für einen Halbton.
lever = Halbtonklappe
disc-natural-word = Scheibe Auflösung
disc-natural-meaning = Vom Stegstift bis zur Auflösungsscheibe, für den ersten Halbton: von Be auf Auflösung.
disc-natural = Auflösungsscheibe
disc-sharp-word = Scheibe Kreuz
disc-sharp-meaning = Vom Stegstift bis zur Kreuzscheibe, für den zweiten Halbton: von Auflösung auf Kreuz, während auch die Auflösungsscheibe drückt.
disc-sharp = Kreuzscheibe
lift-word = Hub
lift-meaning = Der Teil der Zugkraft, der die Decke anhebt, senkrecht zu ihr.
lift = Hub an der Decke
along-board-word = Längs
along-board-meaning = Der Teil der Zugkraft längs der Decke, zu ihrem Diskantende hin.
along-board = Kraft längs der Decke
cut-length-word = Zuschnitt
cut-length-meaning = Die Länge zum Abschneiden: klingende Länge, Knoten, Wicklung am Stimmwirbel und ein Ende zum Ziehen.
cut-length = Zuschnittlänge
pluck-force-word = Zupfkraft
pluck-force-meaning = Die Kraft des Fingers, der die Saite so weit auslenkt, wie der Entwurf es angibt.
pluck-force = Zupfkraft
glide-word = Anstieg
glide-meaning = Um wie viel ein solches Zupfen zu hoch beginnt, bevor sich der Ton setzt.
glide = Anstieg beim Zupfen
nominal-error-word = Fehler an der Nennstelle
nominal-error-meaning = Um wie viel der erste Halbton zu hoch ist, wenn Klappe oder Scheibe dort steht, wo eine nur verkürzte Saite sie bräuchte.
nominal-error = Fehler an der Nennstelle

## Gruppen

group-pull = Zugkraft und Spielgefühl
group-tone = Klang
group-tuning = Stimmung und Halbtöne
group-ordering = Maße und Bestellung
group-more = Weiteres

## Die Worte neben einem Band

least-tension = mindestens { $low }
working-share = schlaff unter { $low }, üblich bis { $high }
working-semitones = üblich ab { $low }
feel = Soll { $low } bis { $high }
sharpest-partial = Grenze { $high }, wo man es hört

## Units beside a figure

unit-cents = Cent
unit-cents-degree = Cent/°
unit-cents-celsius = Cent/°C
unit-semitones = Halbt.
unit-turns = Umdr.
