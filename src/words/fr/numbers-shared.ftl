# Les nombres, expliqués : ce que disent plusieurs de ces pages.

all-stretch-stays-within = Tout l’allongement reste dans la longueur vibrante : la corde ne glisse pas sur le sillet.
string-pulled-mm-aside = La corde est écartée de { $pluck } mm, sauf autre réglage, mais jamais de plus de { $most-pluck } % de sa longueur : les cordes courtes sont pincées moins loin. Usage courant, sans source.
a4-hz-unless-you = Le la3 (A4) est à { $a4 } Hz, sauf autre réglage ({ $a4s }).
inharmonicity-listeners-begin-hear = inharmonicité que l’on commence à entendre
vibrating-length = longueur vibrante
