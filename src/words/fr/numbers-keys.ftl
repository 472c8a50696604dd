# Les nombres, expliqués : tons.

keys-lead = Dans quelles tonalités joue une harpe à partir de son accord à vide, ce que ses leviers ou pédales haussent pour chacune, et quelles cordes y font obstacle.
formula-letter-raised = une note est haussée de
formula-every-string-can-follow = et chacune de ses cordes peut suivre si
keys-lever-or-single-disc = Un levier ou une seule fourchette hausse une corde d’un demi-ton, deux fourchettes de deux.
keys-each-string-sounds-own = Chaque corde garde son nom de note. Fa dièse majeur et sol bémol majeur sont deux tonalités, car leurs noms de notes diffèrent.
keys-levers-set-discs-letter = Les leviers se règlent un par un. Les fourchettes d’une même note tournent ensemble, car une pédale les meut.
keys-minor-key-natural-notes = La tonalité mineure est le mineur naturel, avec les notes de la tonalité majeure voisine. D’autres gammes demandent plus de leviers.
keys-string-without-lever-or = Une corde sans levier ni fourchette peut être réaccordée à la main pour un morceau ; le tableau dit lesquelles.
keys-says-nothing-tension-much = Cela ne dit rien de la tension : ce qu’une corde supporte quand elle est haussée figure aux constats.
