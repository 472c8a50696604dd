# Die Zahlen, erklärt: was mehrere dieser Seiten sagen.

all-stretch-stays-within = Alle Dehnung bleibt in der klingenden Länge: die Saite rutscht nicht über den Stegstift.
string-pulled-mm-aside = Die Saite wird { $pluck } mm zur Seite gezogen, wenn nichts anderes eingestellt ist, aber nie um mehr als { $most-pluck } % ihrer Länge: kurze Saiten werden weniger weit gezupft. Übliche Praxis, ohne Quelle.
a4-hz-unless-you = A4 ist { $a4 } Hz, wenn keine andere Tonhöhe eingestellt ist ({ $a4s }).
inharmonicity-listeners-begin-hear = Inharmonizität, die man zu hören beginnt
vibrating-length = klingende Länge
