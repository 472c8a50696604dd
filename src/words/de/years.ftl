# Was die Jahre mit einer Harfe machen.

nothing = über die Jahre lässt sich nichts sagen: der Rahmen braucht Maße (in der Zeichnung unter „Hölzer“), die Saiten Längen, Aufbau und Zugkräfte, der Hals drei Saiten oder mehr, und die Hölzer Werte dafür, wie sie nachgeben und kriechen. Wie Sperrholz kriecht, ist nur für geheizte Räume bekannt
meaning = Geschätzt: was die Harfe sofort nachgibt, mal das Kriechen des Holzes; mindestens mit Verbindungen und Deckenrändern, die nicht nachgeben, höchstens mit solchen, die es tun. Der Faktor ist der aus EN 1995-1-1, Tabelle 3.2, aus zweiter Hand, für fünfzig Jahre; bis dahin wächst er mit einer Potenz der Zeit, von 0,2 bis 0,3 (dass es eine Potenz ist, wurde gelesen, ihr Bereich ist aus dem Gedächtnis). Gerechnet ist, dass die Saiten auf Tonhöhe gehalten werden. Verbindungen, die sich setzen, Leim, der kriecht, Holz, das verdreht oder quer zur Faser gedrückt wird, und Holzfeuchte, die unter Last schwankt, kommen dazu. Quellmaße: Wood Handbook, Tabelle 13-5, zum Teil aus dem Gedächtnis.
head-what = Zusätzlich zu dem, was sofort nachgibt
head-one-year = Nach 1 Jahr
head-ten-years = Nach 10 Jahren
belly = Decke hebt sich (Wölbung), bei { $string }
roll = Hals neigt sich zu den Saiten
sway = Kopf der Säule geht zur Seite
shorter = Saite wird kürzer, am meisten { $string }
contact = Klappe oder Scheibe, die stehen bleibt, erhöht zu viel, am meisten { $string }
cents = { $range } Cent
months = Eine Saite, die nicht nachgestimmt wird, fällt, weil das Holz nachgibt, am meisten { $string }: um { $first } Cent im ersten Monat und um { $later } in einem Monat nach einem Jahr. Das Kriechen der Saite selbst kommt dazu.
seasons = Im Lauf der Jahreszeiten, von { $dry } % Holzfeuchte in der trockenen bis { $damp } % in der feuchten, quillt der Hals quer zur Faser: die Stimmwirbel entfernen sich höchstens um { $pins } von seiner Mitte, und die Saiten steigen, am meisten { $string }, um { $cents } Cent.
damp-share = Saiten, die in der trockenen Jahreszeit gestimmt und dann nicht nachgestimmt werden, kommen dem Riss näher, am meisten { $string }: von { $now } auf { $then } % der Last, bei der sie reißt. Sie vor der feuchten Jahreszeit entspannen.
board = Die Decke würde in ihrer Länge um { $grows } wachsen, von { $dry } % Holzfeuchte in der trockenen Jahreszeit bis { $damp } % in der feuchten, wenn nichts sie hielte: weil sie gehalten wird, wölbt sie sich stattdessen und drückt. Aufgeleimt wird sie, wenn ihr Holz in der trockeneren Hälfte dieses Bereichs ist (übliche Praxis, ohne Quelle).
kept-heated = Die Harfe steht in geheizten Räumen: danach richten sich Kriechen und Holzfeuchte; gewählt wird das unter „Hölzer“. Die Holzfeuchte ist übliche Praxis, ohne Quelle.
kept-covered = Die Harfe steht unter Dach, ungeheizt: danach richten sich Kriechen und Holzfeuchte; gewählt wird das unter „Hölzer“. Die Holzfeuchte ist übliche Praxis, ohne Quelle.
kept-outdoors = Die Harfe steht im Freien: danach richten sich Kriechen und Holzfeuchte; gewählt wird das unter „Hölzer“. Die Holzfeuchte ist übliche Praxis, ohne Quelle.
