# Kurze Antworten auf die Fragen, die eine Zahl, ein Feld oder ein Befund weckt: jede hinter einem kleinen Knopf daneben.

clear = Verstanden, ausblenden
again = Alle Hinweise wieder zeigen
again-done = Die Hinweise sind wieder da: ein kleines ? neben Zahl, Feld oder Befund.

## Figures

feel = Was ist das Spielgefühl?
feel-is = Die Kraft, die der Finger für jeden Millimeter spürt, um den er die Saite auslenkt. Ein gleichmäßiger Verlauf zählt mehr als die Zahl selbst: an einem Sprung wirkt eine Saite hart oder weich neben der nächsten.
load-share = Was ist die Auslastung?
load-share-is = Die Zugkraft als Anteil der Last, bei der die Saite reißt: bei 100 % reißt sie. Eine dickere blanke Saite trägt mehr, zieht aber auch fast im selben Maß stärker: über die Auslastung entscheiden Länge, Ton und Material.
margin = Was ist die Reserve?
margin-is = Um wie viele Halbtöne die Saite höher gestimmt werden könnte, bevor sie reißt. Es ist die Auslastung in anderen Worten: 12 Halbtöne sind eine Auslastung von 25 %, 6 sind 50 %, 2 etwa 80 %.
stretch = Warum ist die Dehnung wichtig?
stretch-is = Um so viel wird die Saite von schlaff bis zur Tonhöhe länger, und der Wirbel muss das aufwickeln. Vorher von Hand straff ziehen. Neues Nylon und neuer Darm dehnen sich noch tagelang: immer wieder nachstimmen (übliche Praxis, ohne Quelle).
turns = Was sagen die Umdrehungen des Wirbels?
turns-is = Diese Umdrehungen nehmen nur die Dehnung auf. Sind es mehr, als die Zuschnittlänge vorsieht: mehr Saite von Hand durchziehen, einen dickeren Wirbel nehmen oder länger zuschneiden.
partial = Was machen zu hohe Teiltöne?
partial-is = Bei einer steifen Saite klingen die höheren Töne zu hoch. Ein wenig ist Farbe; viel davon klingt unrein, und die Saite lässt sich schwer stimmen. Dünner, länger oder auf dünnem Kern umsponnen klingt sie reiner.
tolerance = Was heißt ±?
tolerance-is = Wie weit die Zahl abweichen kann, weil Stärke, Dichte, Länge und Tonhöhe nie genau so sind wie eingegeben. Es ist das, womit zu rechnen ist, nicht der schlimmste Fall.

## The frame

range = Warum stehen hier zwei Zahlen?
range-is = Holz, Leim und Verbindungen sind verschieden. Die erste Zahl nimmt den günstigsten Fall an, die zweite den strengsten. Liegt nur die zweite über 100 %, mehr über dieses Teil herausfinden: die Maße seiner Verbindungen machen den Bereich enger.
joint = Was ändern die Maße einer Verbindung?
joint-is = Jede Verbindung gibt unter Last ein wenig nach. Wie viel, folgt aus Zapfen, Dübeln, Bolzen oder Schrauben und aus den Platten. Eine steife gibt die Biegung an Säule und Korpus weiter; eine weiche lässt sie im Hals, und die Saiten sinken beim Stimmen stärker. Ohne Maße wird sie einmal als starr und einmal als Gelenk angenommen.
falls = Warum sinken Saiten, während andere hochkommen?
falls-is = Der Rahmen ist eine Feder: jede Saite, die hochgestimmt wird, biegt ihn ein wenig, und die schon gestimmten werden tiefer. Darum braucht eine neue Harfe mehrere Durchgänge. Gleichmäßig hochstimmen, über Tage.

## Choosing and ordering

target = Was ist die Sollkurve?
target-is = Wie sich jede Saite anfühlen soll, vom Bass zum Diskant. Mit dem beginnen, was auf der Harfe ist, dann Sprünge glätten. Die Suche kommt der Kurve so nahe, wie es das Lager und die Grenzen erlauben.
weights = Wozu sind die Gewichte da?
weights-is = Kein Lager erfüllt jeden Wunsch. Wo zwei Wünsche einander im Weg sind, gewinnt der mit mehr Gewicht.
spares = Welche Saiten brauchen Ersatz?
spares-is = Die dünnen im Diskant und die mit hoher Auslastung reißen am häufigsten (übliche Praxis, ohne Quelle).
standing = Was heißt „aus dem Gedächtnis“?
standing-is = Niemand hat diese Zahl bisher in ihrer Quelle nachgesehen. Bevor eine Harfe von ihr abhängt, ein Stück der eigenen Saite wiegen und zerreißen und eintragen, was dabei herauskommt.

## Findings

breaking = Was heißt es, wenn eine Saite rechnerisch reißt?
breaking-is = Bei diesem Ton und dieser Länge ist ihr Material nicht fest genug. Eine dickere Saite hilft nicht, denn sie zieht auch stärker. Nicht hochstimmen: die Saite kürzen, den Ton tiefer legen oder ein anderes Material wählen.
loaded = Ist eine hohe Auslastung gefährlich?
loaded-is = Je näher eine Saite am Riss ist, desto früher reißt sie: beim Stimmen, oder wenn die Luft feucht oder trocken wird. Dabei schlagen ihre Enden aus. Unter der Grenze hält sie länger; die Grenze ist die eigene, unter Instrument.
slack = Was ist an einer niedrigen Auslastung schlecht?
slack-is = Eine Saite weit unter dem, was sie trägt, klingt dumpf, und jeder kleine Zug verändert ihren Ton. Reißen wird sie nicht: ob sie so bleibt, entscheidet das Ohr.
light = Was ist an wenig Zugkraft schlecht?
light-is = Die Saite gibt unter dem Finger zu sehr nach: sie schwingt weit, schlägt an die Nachbarin und wird zu hoch, wenn sie kräftig gezupft wird.
core = Warum ist ein dünner Kern ungünstig?
core-is = Nur der Kern trägt die Zugkraft; die Umspinnung gibt nur Gewicht. Ein dünner Kern unter einer dicken Umspinnung ist schwer zu spinnen und reißt früh (übliche Praxis, ohne Quelle).
order-of-gauges = Warum sollen die Stärken zum Bass hin wachsen?
order-of-gauges-is = Innerhalb eines Materials ist eine Stärke, die zurückgeht, oft ein Schreibfehler. Ist sie so gemeint, kann sie bleiben.
length = Warum zählt eine Länge außer der Reihe?
length-is = Die Stegstifte folgen einer glatten Kurve, also ist eine Länge außer der Reihe oft ein Messfehler. Diese Saite noch einmal messen, bevor sich ihre Stärke ändert: alle ihre Zahlen folgen aus der Länge.
note = Warum zuerst der Ton?
note-is = Alle Zahlen folgen aus dem Ton: ist er falsch, sagen die übrigen Befunde zu dieser Saite nichts. Zuerst den Ton berichtigen.
feels-off = Muss das Spielgefühl geändert werden?
feels-off-is = Nein. Der Bereich ist der eigene, unter Instrument. Eine Saite außerhalb lässt sich spielen, fühlt sich aber weicher oder härter an als gewünscht.
jump = Was macht ein Sprung im Spielgefühl?
jump-is = Wo Nylon auf Darm trifft oder blanke auf umsponnene Saiten, merkt der Finger eine Stufe. Eine kleine ist normal; eine große stört schnelle Läufe. Eine andere Stärke auf einer der beiden Seiten gleicht sie aus.
raise = Warum kann eine Klappe zu nahe am Stift sein?
raise-is = Klappen und Scheiben brauchen neben dem Stegstift Platz für sich selbst. Auf den kürzesten Saiten liegt der Halbton näher am Stift als das.
part-over = Wird die Harfe brechen?
part-over-is = Mit der Zeit kann sie es. 100 % ist, was ein Teil dauernd und mit Sicherheit tragen darf, nicht wo es bricht; darüber kriecht, öffnet sich oder bricht es am Ende, und eines, das nachgibt, tut es sofort. Vor dem Bau stärker machen oder Zugkraft wegnehmen. Welches Teil es ist, steht unter Lasten.
unread = Warum fehlt hier ein Ergebnis?
unread-is = Etwas fehlt oder lässt sich nicht lesen. Was eingegeben wurde, bleibt in seiner Zelle; bis es berichtigt ist, zählt diese Saite weder im Gesamtzug noch in der Last auf dem Rahmen mit.
