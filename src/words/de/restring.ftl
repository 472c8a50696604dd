# Die Harfe eines anderen: was gemessen wurde, und Saiten aus anderem Material.

## Die Liste der Längen

too-large = eine Liste von Längen darf höchstens { $most } MB haben (weniger Zeilen einfügen)
empty = die Liste ist leer (eine Länge in jede Zeile schreiben, von der höchsten Saite abwärts)
count = von { $highest } bis { $lowest } sind es { $wanted } Saiten, die Liste hat aber { $got } Zeilen (einen Ton ändern, oder die fehlenden Zeilen hinzufügen)
no-string = darin ist keine Saite (für jede eine Zeile schreiben: Ton und Länge)
too-many = eine Liste von Längen darf höchstens { $most } Saiten haben (weniger Zeilen einfügen)

## Was fehlt

note-missing = der Ton fehlt (schreiben wie A4)
length-missing = die klingende Länge ist nicht gemessen (von der Decke zum Stegstift messen)
material-missing = woraus die Saite ist, ist nicht bekannt (nachsehen, oder ein Stück wiegen)
gauge-missing = die Stärke ist nicht gemessen (an mehreren Stellen messen)

## Ein anderes Material

same-tension = gleiche Zugkraft
same-force = gleiche Zupfkraft
same-mass = gleiche Masse
material-unknown = das Material „{ $name }“ ist nicht bekannt (ein anderes wählen)
stock-lacks = das Lager hat für diesen Ton keine blanke Saite aus diesem Material: { $material }
nearest-thicker = die nächstliegende Stärke ist { $percent } % dicker als gewünscht
nearest-thinner = die nächstliegende Stärke ist { $percent } % dünner als gewünscht
not-there = diese Saite gibt es nicht
not-plain = tauschen lassen sich nur blanke Saiten, und diese ist keine
not-known = woraus die Saite ist, ist nicht bekannt
no-tension = ihre Zugkraft lässt sich nicht ausrechnen (Länge, Ton, Material und Stärke angeben)
no-gauge = keine Stärke dieses Materials passt
total = Gesamtzug: vorher { $before }, nachher { $after }.
total-change = Gesamtzug: vorher { $before }, nachher { $after } ({ $change } %).
totals-lack = In den Summen fehlen Saiten: { $count }.
share-of = { $string } mit { $share } % der Bruchlast
tightest = Am stärksten ausgelastet vorher: { $before }. Nachher: { $after }.
margin-of = { $margin } Halbtöne ({ $string })
margin = Niedrigste Reserve der geänderten Saiten: vorher { $before }, nachher { $after }.
