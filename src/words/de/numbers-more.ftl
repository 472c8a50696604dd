# Die Zahlen, erklärt: Toleranz, Materialien, Befunde, Töne.

tolerance-lead = Wie weit ein Wert danebenliegen kann, weil keine Saite ganz so dick, so schwer, so lang, so gut gestimmt oder so warm ist, wie der Entwurf sagt.
formula-everything-worst-once = alles zugleich am ungünstigsten
tolerance-each-thing-moved-tolerance = Jede Größe wird um ihre Toleranz nach beiden Seiten verschoben, alles andere bleibt, und die ganze Saite wird neu gerechnet. Wie weit sich der Wert bewegt, ist ihre Wirkung.
tolerance-effects-combined-root-sum = Die Wirkungen werden als Wurzel aus der Summe der Quadrate zusammengefasst, da sie voneinander unabhängig sind.
tolerance-unless-you-set-others = Wenn nichts anderes eingestellt ist, weichen Längen um { $off-length } mm ab, die Tonhöhe um { $off-pitch } Cent, die Temperatur seit dem Stimmen um { $off-kelvins } °C und der Druck einer Klappe um { $off-push } mm. Wo ein Material nichts angibt, weicht sein Durchmesser um { $off-diameter } mm ab und seine Dichte um { $off-density } %.
tolerance-poor-where-figure-steps = Ungenau, wo ein Wert springt, wie eine Tabelle von Festigkeiten, und wo eine Toleranz ein guter Teil der Größe selbst ist.
tolerance-tells-nothing-wrong-formula = Sie sagt nichts darüber, was an einer Formel, einem Modul oder einer Festigkeit falsch ist.
tolerance-strings-harp-not-independent = Die Saiten einer Harfe sind nicht unabhängig voneinander: ist ein Material schwerer, so ist es das in allen.
tolerance-question-safety-take-worst = Wo es um Sicherheit geht, den ungünstigsten Fall nehmen.
materials-lead = Was über jedes Material bekannt ist, und wie gut. Was aus dem Gedächtnis ist, vor Gebrauch prüfen.
formula-modulus-under-stress = Modul unter einer Spannung
formula-breaking-load = Bruchlast
materials-nylon-fluorocarbon-gut-have = Nylon, Fluorcarbon und Darm haben drei Moduln: bei Schwingung (Millisekunden), über Minuten (Klappen, Stimmwirbel) und über Wochen, Kriechen eingerechnet (Dehnung). Metalle haben einen für alles.
materials-strength-least-source-gives = Die Festigkeit ist die niedrigste, die eine Quelle für neues Material nennt.
materials-you-enter-yourself-marked = Was selbst eingegeben wird, ist so gekennzeichnet und bleibt beim Entwurf.
materials-batches-differ-string-weighed = Lieferungen unterscheiden sich. Eine gewogene und gemessene Saite ist mehr wert als jede Tabelle.
materials-nylon-settles-about-density = Nylon setzt sich bei etwa 97 % der Dichte, die es vor dem ersten Dehnen hat.
findings-lead = Wonach die Befunde suchen, und mit welchen Grenzen. Die Grenzen setzt jeder selbst: unter „Instrument“.
formula-breaks = sie reißt
formula-heard = ln Bₕ = { $slope } ln f − { $offset }
findings-grave-tension-over-breaking = Ernst: die Zugkraft liegt über der Bruchlast.
findings-overworked-over-breaking-load = Überlastet: über { $working } % der Bruchlast, oder über { $creeping } %, wenn der Kern aus Darm oder Kunststoff ist, der unter dauernder Last eher nachgibt als im kurzen Versuch. Schlaff: unter { $slack } %; dann klingt eine Saite dumpf und unrein. Geringe Zugkraft: unter { $least } N.
findings-inharmonic-partial-more-than = Inharmonisch: Teilton 8 ist mehr als { $sharp } Cent zu hoch, und die Inharmonizität ist mehr als { $times }-mal so groß wie die, die man bei dieser Tonhöhe zu hören beginnt. Beides muss gelten.
findings-thin-core-gauge-more = Dünner Kern: die Stärke ist mehr als { $thin }-mal so groß wie der Kern.
findings-feel-pluck-stiffness-outside = Spielgefühl: eine Zupfhärte außerhalb von { $soft } bis { $hard } N/mm. Sprung: sie ändert sich um mehr als { $jump } %, wo der Aufbau wechselt.
findings-tight-lever-or-first = Eng: eine Klappe oder Auflösungsscheibe näher als { $least-raise } mm an ihrem Stegstift. Umdrehungen: bis zur Tonhöhe braucht eine Saite mehr Umdrehungen ihres Wirbels, als die Zuschnittlänge vorsieht; genannt wird nur die Saite, die am meisten braucht.
findings-out-line-string-shorter = Aus der Reihe: eine Saite ist kürzer als die nächsthöhere; oder sie ist dünner als die höhere desselben Aufbaus, oder klingt höher. Von beiden wird die genannt, die gerade geändert wurde; sonst die, ohne die die übrigen in einer Linie weiterlaufen, oder die weiter von der Linie ihrer Nachbarn liegt.
findings-finding-hint-no-verdict = Ein Befund ist ein Hinweis, kein Urteil. Dass es keinen gibt, heißt nicht, dass die Harfe hält: Decke, Hals und Verbindungen werden dabei nicht betrachtet.
findings-threshold-hearing-average-listeners = Die Hörschwelle ist ein Mittel über Hörer im Labor. Bei wirklichen Saiten mit ihrem natürlichen Klangbeginn hören die meisten weniger.
pitch-lead = Das mittlere C ist C4, und die Zahl der Oktave wechselt zwischen H und C. Harfenisten zählen die Oktaven von oben, jede von E hinab bis F.
formula-pitch = Tonhöhe
formula-harpist-octave-c-d = die Oktave der Harfenisten für C, D und E
formula-f-g-b = und für F, G, A und H
pitch-pythagorean-meantone-flat-sharp = In pythagoreischer und mitteltöniger Temperierung unterscheiden sich ein Be und ein Kreuz zwischen denselben zwei Tönen. Die anderen Temperierungen haben zwölf Tonhöhen in der Oktave.
pitch-octaves-pure-not-stretched = Oktaven sind rein: sie werden nicht wegen der Inharmonizität der Saiten gespreizt.
pitch-cents-given-tenth-tuning = Cent werden auf ein Zehntel angegeben; ein Stimmgerät hält bei A4 ein halbes Hertz, das sind 2 Cent.
