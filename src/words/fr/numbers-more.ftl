# Les nombres, expliqués : tolérance, matériaux, constats, notes.

tolerance-lead = De combien une valeur peut s’écarter, car aucune corde n’est tout à fait aussi grosse, lourde, longue, bien accordée ou chaude que le dit le projet.
formula-everything-worst-once = tout au pire à la fois
tolerance-each-thing-moved-tolerance = Chaque grandeur est déplacée de sa tolérance de chaque côté, le reste ne bougeant pas, et toute la corde est recalculée. Son effet est le déplacement de la valeur.
tolerance-effects-combined-root-sum = Les effets sont combinés par la racine de la somme des carrés, car ils sont indépendants.
tolerance-unless-you-set-others = Sauf autre réglage, les longueurs s’écartent de { $off-length } mm, la hauteur de { $off-pitch } cents, la température depuis l’accord de { $off-kelvins } °C et la poussée d’un levier de { $off-push } mm. Quand un matériau n’indique rien, son diamètre s’écarte de { $off-diameter } mm et sa densité de { $off-density } %.
tolerance-poor-where-figure-steps = Peu fiable là où une valeur saute, comme un tableau de résistances, et là où une tolérance est une bonne part de la grandeur elle-même.
tolerance-tells-nothing-wrong-formula = Elle ne dit rien de ce qui est faux dans une formule, un module ou une résistance.
tolerance-strings-harp-not-independent = Les cordes d’une harpe ne sont pas indépendantes : un matériau plus lourd l’est dans toutes.
tolerance-question-safety-take-worst = Pour une question de sécurité, prenez le pire cas.
materials-lead = Ce que l’on sait de chaque matériau, et avec quelle certitude. Vérifiez ce qui vient de mémoire avant de vous y fier.
formula-modulus-under-stress = module sous une contrainte
formula-breaking-load = charge de rupture
materials-nylon-fluorocarbon-gut-have = Le nylon, le fluorocarbone et le boyau ont trois modules : en vibration (millisecondes), sur des minutes (leviers, cheville) et sur des semaines, fluage compris (allongement). Les métaux n’en ont qu’un.
materials-strength-least-source-gives = La résistance est la plus basse qu’une source donne pour un matériau neuf.
materials-you-enter-yourself-marked = Ce que vous saisissez vous-même est marqué comme tel et reste avec le projet.
materials-batches-differ-string-weighed = Les lots diffèrent. Une corde pesée et mesurée vaut mieux que tout tableau.
materials-nylon-settles-about-density = Le nylon se stabilise à environ 97 % de la densité qu’il a avant d’être étiré une première fois.
findings-lead = Ce que cherchent les constats, et à quelles limites. Les limites sont les vôtres : réglez-les sous Instrument.
formula-breaks = elle casse
formula-heard = ln Bₕ = { $slope } ln f − { $offset }
findings-grave-tension-over-breaking = Grave : la tension dépasse la charge de rupture.
findings-overworked-over-breaking-load = Surchargée : au-dessus de { $working } % de la charge de rupture, ou de { $creeping } % si l’âme est en boyau ou en plastique, qui cèdent sous une charge durable plus tôt que dans un essai bref. Lâche : au-dessous de { $slack } %, où une corde sonne sourd et faux. Tension faible : moins de { $least } N.
findings-inharmonic-partial-more-than = Inharmonique : le partiel 8 est trop haut de plus de { $sharp } cents, et l’inharmonicité dépasse { $times } fois celle que l’on commence à entendre à cette hauteur. Il faut les deux.
findings-thin-core-gauge-more = Âme mince : le diamètre dépasse { $thin } fois celui de l’âme.
findings-feel-pluck-stiffness-outside = Toucher : une raideur au pincement hors de { $soft } à { $hard } N/mm. Saut : elle change de plus de { $jump } % là où la composition change.
findings-tight-lever-or-first = Serré : un levier ou une fourchette bécarre à moins de { $least-raise } mm de sa pointe de sillet. Tours : amener une corde à la hauteur demande plus de tours de cheville que n’en prévoit la longueur de coupe ; seule la corde qui en demande le plus est nommée.
findings-out-line-string-shorter = Hors ligne : une corde est plus courte que la suivante vers l’aigu ; ou plus mince que celle-ci à composition égale, ou plus haute. Des deux, on nomme celle qui vient d’être changée ; sinon celle sans laquelle la suite est régulière, ou qui s’écarte le plus de la ligne de ses voisines.
findings-finding-hint-no-verdict = Un constat est un indice, pas un verdict. Qu’il n’y en ait pas ne dit pas que la harpe tient : table, console et assemblages n’y sont pas examinés.
findings-threshold-hearing-average-listeners = Le seuil d’audition est une moyenne d’auditeurs en laboratoire. Avec de vraies cordes et leur attaque naturelle, la plupart des gens entendent moins.
pitch-lead = Le do du milieu est do3 (C4 en lettres), le numéro change entre si et do, et il n’y a pas d’octave 0. Les harpistes comptent les octaves depuis l’aigu, chacune de mi en descendant à fa.
formula-pitch = hauteur
formula-harpist-octave-c-d = l’octave du harpiste pour C, D et E
formula-f-g-b = et pour F, G, A et B
pitch-pythagorean-meantone-flat-sharp = En pythagoricien et en mésotonique, un bémol et un dièse entre les deux mêmes notes diffèrent. Les autres tempéraments ont douze hauteurs par octave.
pitch-octaves-pure-not-stretched = Les octaves sont pures : elles ne sont pas élargies pour l’inharmonicité des cordes.
pitch-cents-given-tenth-tuning = Les cents sont donnés au dixième ; un accordeur tient un demi-hertz sur le la3, soit 2 cents.
