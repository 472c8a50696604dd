# L’ordre de la construction en une feuille : ce qui est taillé, collé et percé, quand, ce qu’il faut vérifier et à quoi prendre garde.

## La feuille

building = Ordre de construction
running = Ordre de construction de { $harp }
steps = Étapes
head-check = À vérifier
head-should-be = Prévu, mm
head-found = Trouvé
step = { $number }. { $title }
practice = L’ordre du travail et les mises en garde sont d’usage courant, sans source. Toutes les mesures sont celles des pièces finies, d’après le projet tel qu’il est.
how-to-check = Mesurez des mêmes coins des deux côtés. Deux diagonales qui doivent être égales en disent plus que toute équerre.

## Les étapes

wood = Le bois
wood-rests = Laissez le bois dans la pièce où il sera collé, jusqu’à ce que son poids ne change plus.
wood-print = Imprimez les gabarits en grandeur réelle et mesurez l’échelle de contrôle de chacun. Écrivez sur chaque morceau le nom de sa pièce et marquez sa face extérieure.
neck = La console
neck-runs-out = Avant de choisir son bois, lisez à la fin de cette feuille ce que des planches droites valent pour une console dont la ligne s’en écarte de { $angle }° : ce n’est pas jugé.
neck-piece = Rabotez la console à { $thick } mm.
neck-layers = Collez la console en { $count } couches, { $thick } mm en tout, et laissez-la à plat sous les serre-joints.
neck-turned = Le fil des couches, depuis le côté des cordes, tourne par rapport à la longueur de la console de : { $angles }.
neck-drill = Percez du côté des cordes, d’équerre à la face, avant de scier le contour : { $tuning } trous de chevilles et { $bridge } de pointes de sillet.
neck-pins = Choisissez les chevilles et les pointes d’après leur longueur : { $bridge } mm d’une pointe de sillet et { $tuning } mm d’une cheville entrent dans la console, et les cordes passent à { $out } mm de sa face. Ajoutez ce qu’il faut pour les tours de corde et la clé d’accord, et alésez les trous des chevilles coniques.
neck-levers = Tracez les places des { $count } leviers, et percez comme le dit leur fabricant.
neck-discs = Tracez les places des { $count } fourchettes, et percez comme le dit leur fabricant.
neck-outline = Sciez le contour et coupez le siège de la colonne d’équerre à celle-ci ; à cet endroit, la console descend de { $heel } mm.
neck-mortise = Taillez dans le siège la mortaise du tenon de la colonne, tant que la console se laisse serrer.
neck-tenon = Laissez le tenon destiné au talon et taillez-le d’après le gabarit.
pillar = La colonne
pillar-cut = Rabotez la colonne à { $wide } mm sur { $deep } mm et coupez d’équerre les bouts qui portent.
pillar-tenons = { $count ->
    [one] Taillez son tenon et ajustez-le
   *[other] Taillez ses { $count } tenons et ajustez-les
} avant tout collage.
tenon-head = En haut, le tenon a { $thick } mm d’épaisseur en travers de la harpe et { $deep } mm de long.
tenon-foot = Au pied, le tenon a { $thick } mm d’épaisseur en travers de la harpe et { $deep } mm de long.
pillar-capital = Une fois la colonne rabotée, collez-y les deux joues du chapiteau, devant et derrière, le fil dans le sens de la colonne, avant d’en couper le bout du haut et les tenons. La console se colle à la fois sur la colonne et sur les joues.
sides = Les éclisses
sides-cut = Sciez deux éclisses de { $thick } mm, en miroir. Leurs chants sont en biais : le gabarit montre l’arête arrière en tirets.
blocks = Les tasseaux
blocks-cut = Sciez le tasseau du bas, le fil en travers de la harpe pour que la colle tienne sur le socle et la table, et le talon, le fil comme le montre son gabarit.
blocks-mortise = Taillez maintenant dans le talon la mortaise du tenon de la console, tant qu’on peut le serrer.
mortise-knee = Cette mortaise a { $thick } mm de large en travers de la harpe et { $deep } mm de profondeur. Son milieu est à { $off } mm du milieu de la harpe, du côté de la console.
blocks-drill-through = Percez { $count } trous de { $wide } mm pour les fixations à travers le talon, d’équerre à sa face supérieure.
blocks-drill = Percez { $count } trous de { $wide } mm pour les fixations dans le talon, à { $deep } mm de profondeur et d’équerre à sa face supérieure.
frame = Le cadre de la caisse
frame-glue = Collez les éclisses aux deux tasseaux sur un établi plan, après un essai sans colle, et vérifiez avant que la colle prenne.
liners = Contre-éclisses et traverses
liners-glue = Collez { $liners } contre-éclisses, puis { $braces } traverses sur les éclisses et le fond. Rabotez ce qui dépasse.
back = Le fond
back-cut = Sciez le fond avec { $count ->
    [one] son ouïe, arrondissez le bord de l’ouïe
   *[other] ses { $count } ouïes, arrondissez les bords des ouïes
} pour ne pas vous y écorcher la main, et collez le fond.
back-bend = Avant de le coller, cintrez-le sur ses traverses ou sur une forme, à l’intérieur à un rayon de { $low } mm en bas et de { $high } mm en haut, et laissez-le sécher serré ainsi.
back-arched = Les traverses du fond ont son arc sur le chant qui le porte : sciez-les d’après leurs gabarits. Rabotez le talon au même arc, et biseautez éclisses et contre-éclisses dans son prolongement.
soundboard = La table
soundboard-plane = Joignez la table et rabotez-la, de { $bass } mm en bas à { $treble } mm en haut.
soundboard-bars = Collez { $count } morceaux de barres.
soundboard-rib = Collez le filet de table à l’intérieur, entre les tasseaux, et la baguette extérieure par-dessus, à l’extérieur.
soundboard-drill = Percez { $count } trous de cordes à { $angle }° de la face extérieure, dans le sens des cordes, la rangée dans le plan des cordes. Leur diamètre en mm, par corde : { $widths }.
closing = La table sur la caisse
closing-glue = Signez l’intérieur, ôtez la colle, puis collez la table, les serre-joints du milieu de chaque bord vers les bouts.
closing-drill = Prolongez le trou de la corde { $string } dans le sens de la corde, à travers les { $deep } mm de talon derrière la table.
base = Socle et pieds
base-cut = Sciez le socle et les deux pieds, taillez la mortaise de la colonne dans tout ce que le tenon rencontre, et collez les pieds.
trial = Essai sans colle
trial-build = Assemblez la caisse, la colonne et la console sans colle. Tendez un fil de chaque trou de corde à sa pointe de sillet et regardez le long de la console : aucun fil ne touche la cheville ou la pointe d’une autre corde.
shoulder = L’épaule
shoulder-drill = Reportez les trous du talon sur le bout de la console, pendant que tout tient comme à l’essai, et percez-les là à { $deep } mm de profondeur.
shoulder-bolts = Les boulons traversent { $block } mm de talon et entrent de { $neck } mm dans la console, jusqu’à un écrou sur rondelle logé là par le côté : c’est ainsi que les charges sont jugées. Ajoutez la rondelle sous la tête pour avoir leur longueur.
shoulder-glue = Collez la caisse sur le socle et vissez-la par-dessous, à travers le socle, dans le tasseau du bas. Collez ou boulonnez colonne et console aux deux, et vérifiez comme à l’essai avant que la colle prenne.
shoulder-pull = Estimation : les cordes tirent la caisse vers le haut avec une force allant jusqu’à { $pull } ; cet assemblage tient la harpe ensemble.
finish = Finition
finish-coat = Faites la finition avant de poser chevilles et pointes. D’après les densités des tableaux, le bois pèse { $mass } kg ; si le vôtre pèse bien plus ou bien moins, vérifiez sa densité dans Dessin, sous Bois : les estimations en dépendent.
stringing = Pose des cordes
stringing-up = Posez les chevilles, le mécanisme et les cordes, et accordez peu à peu la harpe sur quelques jours, dans l’ordre de pose. Regardez chaque jour la console et les assemblages.

## Ce qu’il faut vérifier

check-bridge = De la pointe de sillet la plus grave à la plus aiguë, d’axe en axe
check-tuning = De la cheville la plus grave à la plus aiguë, d’axe en axe
check-neck-long = Console, au plus long dans le fil, sans tenons
check-pillar-long = Colonne, au plus long, sans tenons
check-fastener-front = Du bord avant du talon à ses trous de fixation, rangée { $row }
check-fastener-middle = Du milieu de la harpe aux trous de fixation, du côté de la console, ligne { $row }
check-side-one = Éclisse, coin avant bas au coin arrière haut
check-side-other = Éclisse, coin avant haut au coin arrière bas
check-front = Diagonales de la face avant, les deux
check-low = Largeur de la face avant en bas
check-high = Largeur de la face avant en haut
check-back = Diagonales du fond, les deux
check-rise = Flèche du fond en bas, à l’intérieur, sous une règle posée sur ses bords
check-lowest-hole = Du bas de la table au trou de corde le plus grave
check-holes = Du trou de corde le plus grave au plus aigu
check-shoulder-front = Avant de l’épaule au-dessus du socle, des deux côtés
check-shoulder-back = Arrière de l’épaule au-dessus du socle, des deux côtés
check-seat = Siège de la colonne au-dessus du socle
check-lowest-string = Corde la plus grave, de la table à la pointe de sillet
check-middle-string = Corde { $number }, de la table à la pointe de sillet
check-highest-string = Corde la plus aiguë, de la table à la pointe de sillet
check-base = Socle, d’avant en arrière
check-shoulder-floor = Haut du fond au-dessus du sol

## À quoi prendre garde

saws = Scies : protecteur et couteau diviseur en place, un poussoir près de la lame, les mains hors de sa ligne, pas de gants, yeux et oreilles protégés. N’étendez jamais la main au-dessus d’une lame qui tourne encore.
drills = Perceuse à colonne : serrez la pièce, ni gants ni manches larges, cheveux attachés, un martyr derrière le trou.
planers = Raboteuse et défonceuse : pas de pièces courtes ou minces sans support, peu de passe, avancez contre la fraise, les deux mains à distance.
dust = La poussière des bois feuillus nuit aux poumons et à la peau : aspiration à la machine et masque.
glue = Colle : gants, air frais, les temps et températures de son fabricant. La colle chaude brûle ; l’époxy et son durcisseur nuisent à la peau. Essayez d’abord : un assemblage qui glisse sous les serre-joints est perdu.
clamps = Les serre-joints gardent de la force : les doigts à l’écart, et desserrez lentement.
bending = Cintrage : vapeur, eau bouillante et fers chauds brûlent. Gants et manches longues ; tenez-vous à côté d’une pièce tendue, elle peut rompre. Essayez d’abord sur une chute.
rags = Les chiffons huilés peuvent s’enflammer tout seuls : séchez-les étalés dehors, ou gardez-les sous l’eau dans une boîte fermée.

## Guides de perçage, et toutes les pièces sur une page

jig = { $harp } : guides de perçage, { $part }
jig-note = Vues de côté de blocs de bois dur hauts de { $high } mm, en grandeur réelle. Serrez un bloc sur la face, son côté dans la ligne des trous, et percez à travers.
jig-origin = coin inférieur gauche du premier bloc
jig-square = { $what } { $wide } mm, d’équerre
jig-slanting = { $what }, { $angle }° de la face
jig-stop = butée à { $stop } mm de la pointe du foret
jig-through = de part en part, avec un martyr derrière
string-hole = trou de corde
overview = { $harp } : toutes les pièces, 1:{ $scale }
overview-note = Chaque pièce porte sa longueur dans le fil, sa largeur et son épaisseur en mm. D’une paire une seule est dessinée.

## Un fond cintré

bent = { $harp } : { $part }, développé
bent-radius = À l’intérieur il monte de { $rise } mm en bas. Sur éclisses et contre-éclisses il monte droit en biais ; entre elles, son intérieur est cintré à un rayon de { $low } mm en bas et de { $high } mm en haut, d’équerre à la ligne de ses bords.
bent-sheet = La feuille plate de l’extérieur, plus grande que l’intérieur. Ses bouts sont courbes ; sur le socle et l’épaule ils portent à plat une fois la feuille cintrée. Coupez-la quelques millimètres trop grande et affleurez-la après collage.
bent-notches = Une contre-éclisse cintrée le long du bas prend { $count } entailles larges de { $wide } mm et profondes de { $deep } mm, une tous les { $apart } mm ; elles se ferment au cintrage.
