# Die Formulare eines Entwurfs: Überschriften, Hinweise, Textfelder.

## Das ganze Instrument

on-the-card = Auf der Karte
instrument = Instrument
maker = Hersteller
client = Kunde
serial = Seriennummer
date = Datum
open-tuning = Grundstimmung
open-tuning-example = Es-Dur, Klappen unten
remarks = Bemerkungen
levers = Klappen, Drehscheiben und Rahmen
push-hint = Eine Saite, die davon abweicht, unter „Details“ einstellen. Der Druck ist übliche Praxis, ohne Quelle: am eigenen Instrument messen.
expansion-hint = Für das Wandern mit der Wärme. 0: der Rahmen ist der Luft noch nicht gefolgt. Holz längs der Faser: 3 bis 5 (aus dem Gedächtnis).
pitch-and-pluck = Tonhöhe und Zupfen
pluck-hint = Übliche Praxis, ohne Quelle: Harfen werden bei etwa 40 % der Länge gezupft. Eine Saite wird um höchstens 2 % ihrer Länge ausgelenkt.
cut-length = Zuschnittlänge
measure-hint = Übliche Praxis, ohne Quelle. Am eigenen Instrument messen.
findings = Befunde und Sollbänder
tolerances = Toleranzen (±)
tolerances-hint = Durchmesser und Dichte gelten, wo das Material keine nennt. Übliche Praxis, ohne Quelle; die Tonhöhe nach ISO 16.
units = Einheiten
unit-of-tension = Einheit der Zugkraft
units-of-lengths = Einheiten der Längen und Stärken
unit-inches = Zoll
unit-mm-inches = mm, Stärken in Zoll
unit-inches-mm = Zoll, Stärken in mm
note-names = Tonnamen
note-names-usual = wie im Deutschen üblich
note-names-english = englisch: C4, E♭3, B♭3, B3
note-names-german = deutsch: C4, Es3, B3, H3
note-names-syllables = do ré mi: do3, mi♭2, si♭2, si2
note-names-hint = Die Tonnamen merkt sich dieser Browser, nicht der Entwurf. Das mittlere C ist C4, bei Silben do3; 440 Hz sind dort la3. Gelesen werden alle, gleich welche angezeigt sind; nur ein B allein ist bei deutschen Namen das B und sonst H. Dateien, Links und CSV behalten englische Namen.
note-names-not-kept = Dieser Browser merkt sich die Tonnamen nicht: { $why }.

## Die Form und woraus sie ist

strings = Saiten
around = Hals, Säule und Decke
around-hint = Übliche Praxis, aus dem Gedächtnis. Am eigenen Instrument messen. Wie dick und breit jedes Teil ist, steht unter „Hölzer“.
rib-hint = Die Saitenleiste läuft innen unter den Saiten, die Deckleiste liegt außen darüber; beide sind aufgeleimt, die Faser längs. 0 heißt keine.
stands = Wo sie steht
stands-hint = Feuchtes Holz kriecht unter dauernder Last stärker.
drills-hint = 0 heißt nicht gebohrt oder nicht bekannt. Wo die Tiefe 0 ist, geht der Stift durch den Hals; die Löcher schwächen den Hals, und die Lasten rechnen das mit. Mit Hülse ist jedes Saitenloch so weit wie die Hülse. Der Durchmesser der Stimmwirbel steht unter „Instrument“: für einen konischen Wirbel am dünnen Ende bohren und aufreiben. Übliche Praxis, aus dem Gedächtnis; ein Loch ist oft 0,3 bis 0,5 mm weiter als seine Saite.
sizes = Wessen Maße
sizes-hint = Eine neue Harfe kommt mit Maßen, die das Programm für ihre Saiten vorschlägt. Sie werden zu Ihren eigenen, sobald Sie eines ändern, oder hier.

## Saiten, die gewählt werden

no-limit-hint = Ein leeres Feld ist keine Grenze.
family-hint = Ein leeres Feld nimmt, was für diese Saiten üblich ist: übliche Praxis, ohne Quelle. Arten, die unten aufgeführt sind, gehen der Familie vor.
breaking-hint = Bruchlasten desselben Materials sind von Hersteller zu Hersteller verschieden: Spielraum lassen.
usual = { $number }, wie üblich
usual-soft = { $metal }, Darm und Kunststoff { $soft }
any = beliebig
any-number = beliebig viele
