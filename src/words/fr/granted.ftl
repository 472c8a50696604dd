# Ce que supposent les charges.

## Loads and woods

permanently = Chaque corde est en permanence à sa hauteur. Les limites sont celles d’une charge durable, avec la sécurité des normes ; chocs et coups n’y sont pas.
made-plywood = { $part } : contreplaqué de bouleau, manuel du contreplaqué finlandais ({ $standing }).
made-plywood-plies = { $part } : contreplaqué de bouleau de { $plies } plis, manuel du contreplaqué finlandais ({ $standing }).
made-own = { $part } : { $wood }, d’après votre barreau. { $told }
made-unknown = { $part } : le bois usuel, celui nommé n’étant pas connu ici.
made-of = { $part } : { $wood }.
made-of-source = { $part } : { $wood }, { $source } ({ $standing }).
neck = Console
pillar = Colonne
board = Table
rib = Filet de table
bars = Barres
sides = Éclisses
back = Fond

## The neck

grain-plies = La moitié des plis de la console, à peu près, la suit d’un bout à l’autre, même dans les courbes.
grain-slants = Le fil de la console est incliné de { $slope } %. Là où il l’est davantage, comme dans une console sciée dans une planche droite, elle est plus faible qu’il n’est dit ici.
grain-follows = Le fil de la console suit sa ligne. Une console sciée dans une planche droite est plus faible qu’il n’est dit ici là où le fil sort.
sound = Le bois est sain : pas de nœuds.
off-centre = La poussée dans la colonne est aussi jugée à { $offset } de son centre, quoi qui la fléchisse par ailleurs. Usage courant, sans source.
one-thickness = La console a sa hauteur dessinée et une seule épaisseur.
sections = La console a les sections que vous avez données, et des passages égaux entre elles.
layers-unusable = La console compte comme une seule pièce, ses couches étant inutilisables : à chacune il faut une épaisseur, et un bois qui ne soit pas un contreplaqué.
layer = { $thick } mm { $wood }
layer-turned = { $thick } mm { $wood } à { $angle }°
layers = La console est collée de { $layers }, en proportion de son épaisseur, selon la théorie classique des stratifiés. Les couches à moins de 45° d’une charge la portent seules, et la plus faible fait la limite : ainsi les couches croisées portent ce qui tire en travers. Le cisaillement sur leurs faces fait rouler les couches croisées : il peut valoir deux fois leur traction en travers du fil, comme dans EN 1995-1-1, 6.1.7 (de mémoire), et la torsion compte comme dans une console d’une pièce. La colle entre elles compte aussi forte que le bois.

## The metal beside it

metal-steel = acier (S235 : 235 MPa à la limite élastique, de mémoire)
metal-brass = laiton (150 MPa de limite conventionnelle, la tôle douce a 125, la dure davantage)
metal-aluminium = aluminium (EN AW-6082 T6 : 250 MPa de limite conventionnelle, de mémoire)
one-side = un côté
both-sides = les deux côtés
metal = Métal à côté de la console : plaques de { $thick } d’épaisseur et { $high } de hauteur, en { $metal }, sur { $sides }. Deux tiers de cette contrainte sont admis. Bois et métal fléchissent comme un tout ; cisaillement et torsion restent au bois. Le métal est jugé avec du bois qui a flué, ce qui lui en laisse davantage. { $held }
metal-screws = Ses vis glissent comme dans EN 1995-1-1, 7.1 et annexe B (de mémoire), si bien qu’il aide moins en long et de côté. Elles sont en une rangée au milieu de la plaque, de { $thick } et une tous les { $gap }, et entrent de { $deep } dans le bois. Elles sont en acier et portent ce qu’admet EN 1995-1-1, 8.2.3, à côté d’une plaque mince (de mémoire).
metal-screws-unjudged = Ses vis glissent comme dans EN 1995-1-1, 7.1 et annexe B (de mémoire), si bien qu’il aide moins en long et de côté. Elles sont en une rangée au milieu de la plaque, de { $thick } et une tous les { $gap }, et ne sont pas jugées, leur profondeur n’étant pas donnée. Elles sont en acier et portent ce qu’admet EN 1995-1-1, 8.2.3, à côté d’une plaque mince (de mémoire).
metal-glue = Sa colle couvre toute la face et compte en cisaillement aussi forte que le bois voisin. Cela demande un métal propre et dépoli, et une colle pour métal. Usage courant, sans source.

## Holes

tuning-pins = chevilles d’accord
bridge-pins = pointes de sillet
levers-or-discs = leviers ou fourchettes
hole-deep = { $row } de { $wide } et { $deep } de profondeur
hole-through = { $row } de { $wide }, traversants
holes-none = Aucun trou de cheville ou de pointe n’est compté, aucun n’étant percé.
holes = Les trous de la console sont comptés : { $holes }. Flexion, poussée, cisaillement et torsion agissent sur la section qu’ils laissent, et ce qui tire en travers du fil passe entre les trous d’une rangée : EN 1995-1-1, 5.2 (de mémoire). La contrainte qui se concentre au bord d’un trou est indiquée, par la formule de S. G. Lekhnitskii pour un trou ouvert (de mémoire), et n’est pas jugée à part : elle s’éteint en un demi-diamètre, le bois s’en défait par de courtes fentes dans le fil, et les règles du bois jugent la section restante. Les pointes qui fendent le bois à l’enfoncement, et l’aide d’une pointe serrée, sont négligées.

## The board

board-plate = La table est une plaque au fil en travers et aux cernes debout. Largeur et épaisseur changent régulièrement d’une corde à l’autre, et du milieu vers les côtés là où ceux-ci ont les leurs. En se soulevant, elle est aussi suspendue entre ses bords.
board-map = La table a les épaisseurs que vous avez données d’un endroit à l’autre, avec des passages réguliers. Sa plus forte contrainte est cherchée du milieu aux bords.
board-map-unusable = Les épaisseurs données d’un endroit à l’autre sont inutilisables : { $text }. On prend donc celles de la corde la plus longue et de la plus courte. Chaque ligne demande un endroit en pour cent et trois épaisseurs.
string-holes = Les trous de corde sont retirés du filet de table et de la baguette, ou d’une table sans eux ; ce qui se concentre à leurs bords est négligé.
rib-as-one = Filet de table, table et baguette extérieure sont collés au milieu et fléchissent comme un tout.
bars-as-one = Les barres sont collées sur toute leur longueur et fléchissent comme un tout avec la table sous elles, entre éclisses et bouts qui les tiennent comme ils tiennent la table. Elles tournent avec la table et sont jugées en cisaillement et en torsion ; des charges à côté de leur milieu sont laissées de côté. À leurs bouts, aux tasseaux et aux contre-éclisses, elles sont prises comme coupées d’équerre sur toute leur hauteur. C’est là que la colle s’ouvre d’abord, amincissez-les donc vers les bouts (usage courant, sans source) ; cela n’est pas compté.
liners = Contre-éclisses et éclisses tiennent les bords de la table : au moins avec une éclisse qui tourne au fond, au plus avec des traverses qui tiennent la contre-éclisse. Leur colle est aussi forte que le bois le plus faible en travers du fil. De mémoire.

## Where the harp is kept

heated = La harpe est gardée dans des pièces chauffées : cela fixe de combien le bois flue et ce qu’il porte.
covered = La harpe est gardée sous un toit : le bois flue davantage. Ses résistances sont celles de pièces sèches, comme dans EN 1995-1-1, tableau 3.1 (de mémoire).
outdoors = La harpe est gardée en plein air : le bois flue bien davantage, et cinq sixièmes des résistances de pièces sèches sont admis, comme dans EN 1995-1-1, tableau 3.1 (de mémoire). Les modules sont ceux du bois sec.

## Joints and soundbox

joints-free = À un bout de l’estimation, la colonne ne fait que pousser, et l’épaule tourne librement dans le plan des cordes et tient seule la console contre la torsion. À l’autre, aucun assemblage ne cède.
joints-springs = À un bout de l’estimation, les assemblages cèdent deux fois plus que ne le disent leurs mesures, à l’autre ils ne cèdent pas. Glissement des organes selon EN 1995-1-1, dans leur axe selon les agréments de vis, tenons par le cisaillement de leur colle (de mémoire).
joints-borne = Un assemblage est pressé sur la moitié de ses faces au moins ; le reste de sa flexion, et tout glissement et torsion, est porté par un seul moyen, celui dont la part est la plus basse. La colle sur bois de bout compte pour un dixième du bois. Organes selon les formules d’EN 1995-1-1 (de seconde main et de mémoire), en bois de bout avec ce qu’il en reste.
box-tube = La caisse est un tube à parois minces du pied à l’épaule, large comme la table, aux contre-éclisses du bois de ses éclisses. Entre les ouïes, le fond tient comme une échelle. Le contreplaqué a les plis que demande son épaisseur.
box-none = La caisse n’a pas de mesures : elle ne cède pas, ou c’est un tube profond de 0,6 fois sa largeur, aux parois d’un cinquantième de sa largeur. Usage courant, sans source.
