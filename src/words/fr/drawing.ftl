# Le dessin : l’image de la harpe et les groupes à côté.

## Le panneau

beside = Forme, bois, charges et fichiers
shape = Forme
woods = Bois
loads = Charges
stringing = Cordage
keys = Tonalités
drills = Perçage
files = Fichiers
not-drawn = Cela ne peut pas être dessiné : { $why }.

## L’image

larger = Agrandir
larger-hint = Agrandir le dessin (+)
smaller = Réduire
smaller-hint = Réduire le dessin (-)
fit = Tout
fit-hint = La harpe entière (0)
details = Détails
details-hint = Toutes les valeurs de la corde marquée (Entrée)
overlay = Superposer
pin-hint = Tirez une pointe de sillet pour allonger ou raccourcir sa corde. La molette agrandit ; glisser déplace le papier.
finger-hint = Touchez une corde, puis tirez sa pointe de sillet pour l’allonger ou la raccourcir. Deux doigts agrandissent et déplacent le papier, deux touches rapides montrent toute la harpe.
curve-drives = La courbe harmonique fixe les longueurs : déplacez ses points, les pointes suivent.
missing = { $caption } { $count ->
    [one] Une corde est omise, faute de longueur utilisable.
   *[other] { $count } cordes sont omises, faute de longueurs utilisables.
}
key-help = Page précédente et suivante choisissent une corde, Alt avec la flèche haut ou bas l’allonge ou la raccourcit. Plus, moins et 0 agrandissent, réduisent et montrent toute la harpe, les flèches déplacent le papier, Entrée ouvre les détails.
node = Point { $number } sur { $count } : { $across } depuis la corde la plus grave, { $along } le long d’elle
node-hint = Tirez-le, ou déplacez-le avec les flèches (Maj dix fois plus loin, Alt un dixième)

## Ce qui donne la forme

start-from = Partir de
typed-or-drawn = Vous fixez
lengths-drive = Les longueurs : les pointes suivent
pins-drive = La courbe harmonique : les longueurs suivent
no-curve = Une courbe harmonique demande au moins deux cordes avec longueur. Saisissez-en d’abord.
no-more-nodes = Un point ne peut être ajouté que là où la courbe se dessine et en a moins de { $most }.
nodes = Points de la courbe harmonique
node-column = Point
add-node = Ajouter un point
nodes-hint = « En travers » se compte d’équerre aux cordes depuis la plus grave, « en long » vers le haut depuis le point où elle rejoint la table. Les longueurs saisies dans le tableau attendent que vous fixiez de nouveau les longueurs.

## Espacement

spacing = Espacement des cordes
from-string-to-string = De corde à corde
spacing-alike = Tous égaux
spacing-zones = Par zones, à pas réguliers entre elles
spacing-each = Corde par corde
measured = Mesuré
measured-square = D’équerre aux cordes
measured-board = Le long de la table
numbers-converted = Les nombres ont été convertis : les cordes restent où elles étaient.
numbers-stayed = Les nombres sont restés, la harpe a donc une autre largeur.
convert = Les convertir, pour que la harpe reste telle quelle
now-alike = Tous les espaces font maintenant { $width } mm, la moyenne de ce qu’ils étaient.
now-zones = L’espacement a maintenant { $count ->
    [one] { $count } zone
   *[other] { $count } zones
}.
now-each = Chacun des { $count } espaces a maintenant sa propre largeur.
strings-stay = { $now } Les cordes restent où elles étaient.
strings-move = { $now } La corde la plus décalée bouge de { $moved } mm.
all-zoned = Chaque espace a déjà sa propre zone.
zones = Zones de l’espacement des cordes
between = Entre
add-zone = Ajouter une zone
zones-hint = L’espace 1 se trouve entre la corde la plus grave et la suivante. Entre deux zones, les largeurs changent à pas réguliers.
widths = Largeurs des espaces, depuis les graves
gap = Espace
widths-hint = Des graves vers les aigus. Une colonne copiée d’un tableur peut être collée.
string-number = corde { $number }
no-strings = aucune corde
least-room = Plus petit jeu entre deux cordes pincées toutes deux : { $room } mm, cordes { $first } et { $second }.
gap-above = { $string } : { $square } mm jusqu’à la suivante plus aiguë d’équerre aux cordes, { $along } mm le long de la table.
is-highest = { $string } est la plus aiguë : aucun espace au-dessus.

## Bois

neck = Console
pillar = Colonne
soundboard = Table d’harmonie
string-rib = Filet de table
wood-neck = Bois de la console
wood-pillar = Bois de la colonne
wood-board = Bois de la table
wood-rib = Bois du filet de table
wood-bars = Bois des barres
wood-sides = Bois des éclisses
wood-back = Bois du fond
plies = Plis
wood-figures = Ses valeurs et leurs sources
most-sections = Une console a au plus { $most } sections.
sections = Sections mesurées de la console
number = N°
add-section = Ajouter une section
sections-hint = Sections mesurées, de l’épaule à 0 % à la colonne à 100 %. Si rien n’est donné, la hauteur est celle du dessin et l’épaisseur celle donnée plus haut.

## Barres de la table

bars = Barres
bars-of-board = Barres de la table
how-many = Nombre
wide = Largeur
high = Hauteur
first-at = Première à
last-at = Dernière à
bars-across = En travers
bars-along = En long, paires
board-sides = Épaisseur de la table sur ses côtés
of-the-middle = Part du milieu
at-the-sides = Sur les côtés
bars-hint = 0 : il n’y en a pas. Sur ses côtés, la table est aussi épaisse qu’au milieu, ou cette part du milieu. Les barres en travers vont d’un côté à l’autre : donnez la première et la dernière en pour cent de la longueur de la table depuis son bas. Les barres en long sont de part et d’autre du filet de table : donnez la première et la dernière paire en pour cent du chemin du milieu au côté. Avec 0 pour les deux, elles sont réparties également.
board-map = Épaisseur de la table d’un endroit à l’autre
map-row = Ligne
map-middle = Milieu
map-half = À mi-chemin des côtés
map-side = Côtés
map-at = Le long
add-map-row = Ajouter une ligne
most-map-rows = Une table a au plus { $most } lignes d’épaisseurs.
map-hint = Chaque ligne traverse la table, à tant pour cent de sa longueur depuis son bout inférieur. Dès qu’il y a une ligne, seules ces épaisseurs comptent, avec des passages réguliers. Sur le papier et parmi les pièces, le bois est raboté à l’extérieur.
map-unusable = Ces épaisseurs sont illisibles : { $text }. Une nouvelle ligne les remplace.

## Assemblages

joints = Assemblages
joint = Assemblage
neck-on-box = Épaule
pillar-on-neck = Colonne et console
pillar-on-base = Colonne et socle
neck-on-box-by = Épaule, tenue par
pillar-on-neck-by = Colonne et console, tenues par
pillar-on-base-by = Colonne et socle, tenus par
tenons = Tenons et faces collées des assemblages
tenon = Tenon
deep = Profondeur
face-wide = Largeur de face
fasteners = Tourillons, boulons ou vis des assemblages
thick = Épaisseur
apart = Entraxe
rows-apart = Entre rangées
joint-plates = Plaques des deux côtés des assemblages
plate = Plaque
held-unknown = Inconnu
held-dowels = Tourillons collés
held-bolts = Boulons
steel = Acier
brass = Laiton
aluminium = Aluminium
plates-of = Plaques en
joints-hint = 0 : il n’y en a pas, ou ce n’est pas connu. Un assemblage dont rien n’est donné n’est pas jugé. L’épaule est là où la console rejoint le talon de la caisse. Les tenons sont dans le plan des cordes et aussi hauts que la pièce ; tourillons, boulons et vis entrent autant dans les deux pièces, sur une rangée dans ce plan ou sur deux. Avec des plaques, des vis traversent chaque plaque dans chaque pièce.

## Caisse

soundbox = Caisse
part = Pièce
box-walls = Profondeur de la caisse et épaisseur de ses parois
deep-bass = Profondeur, graves
treble = Aigus
side = Éclisse
back = Fond
walls = Parois
box-inside = Contre-éclisses et traverses de la caisse
braces-every = Écart des traverses
liners = Contre-éclisses
box-holes = Ouïes dans le fond
long = Longueur
sound-holes = Ouïes
back-is = Le fond est
back-closed = Fermé, sauf ses ouïes
back-open = Ouvert sur toute la longueur
soundbox-hint = La caisse est aussi large que la table. Elle est jugée quand profondeur, éclisses et fond ont leurs mesures, et le voilement des éclisses quand l’écart des traverses est donné. Un fond ouvert l’est de la largeur d’une ouïe.

## Couches de la console

layers = Couches de la console
layer = Couche
turned = Angle
wood-of-layer = Bois de la couche { $number }
that-of-neck = Celui de la console
most-layers = Une console a au plus { $most } couches.
add-layer = Ajouter une couche
layers-hint = Couches d’une console lamellée, côte à côte dans son épaisseur : seul compte le rapport de leurs épaisseurs. À 0°, le fil suit la console, à 90° il la croise. Si rien n’est donné, la console est d’une seule pièce.

## Métal sur la console

metal = Métal sur la console
neck-plates = Plaques sur la console
plates = Plaques
from = De
to = À
neck-screws = Vis des plaques
screws = Vis
one-every = Une tous les
deep-in-wood = Profondeur dans le bois
plates-on = Plaques sur
both-sides = Les deux côtés
one-side = Un côté
of = En
metal-hint = Plaques à mi-hauteur de la console, de 0 % à l’épaule à 100 % à la colonne ; 0 mm : il n’y en a pas. Sans vis, elles sont collées sur toute leur face. Les vis sont en une rangée au milieu de la plaque ; elles glissent, si bien que les plaques aident moins contre la flexion latérale. Sans leur profondeur, elles ne sont pas jugées : des vis de 4 mm enfoncées de 25 mm, une tous les 60 mm, sont courantes (usage courant, sans source).

## Bois à soi

own-woods = Vos propres bois
own-bars = Barreaux de vos bois
own-tests = Comment les barreaux fléchissent et sonnent
wood = Bois
weighs = Poids
span = Portée
load = Charge
falls = Fléchit de
tone = Note
most-woods = Un projet a au plus { $most } bois propres.
add-wood = Ajouter un bois
name-of-wood = Nom du bois { $number }
it-is = C’est un
hardwood = Feuillu
softwood = Résineux
its-strengths = Ses résistances
strengths-unknown = Inconnues : non jugé
strengths-by-class = Par classe de résistance
remove-wood = Retirer ce bois
own-hint = Coupez un barreau droit, le fil dans sa longueur. Sa densité est le poids divisé par longueur fois largeur fois hauteur. Posez-le sur deux appuis, pendez une charge au milieu et mesurez de combien il fléchit : E = F l³/(4 b h³ w), où l est la portée et h la hauteur dans le sens de la flexion. Ou faites-le sonner : tenez-le à 22 % d’un bout, frappez le milieu et saisissez la note ; E = 0,9464 ρ f² L⁴/h² avec une correction de cisaillement. Une planche ne parle que d’elle-même. Les classes de résistance sont celles de l’EN 338 (de mémoire) : elles valent pour des planches à petits nœuds, non pour un bois cassant ou à fil incliné.

## Charges

assumptions = Hypothèses
no-loads = Il n’y a pas encore de charges. Donnez aux cordes leurs notes, longueurs et compositions.
formulas-loads = Les formules, et un exemple à la main
how-worked-out = Comment c’est calculé

## Cordage

order = Ordre
strings-up = Cordes montées
up = Montées
up-of = { $up } sur { $count }
tension = Tension
pillar-push = Poussée dans la colonne
bending = Flexion
torque = Couple
share-and-where = Part de la charge admissible, et où
stages = Étapes du cordage
no-frame = Il manque des mesures du cadre.
some-up = { $up } cordes sur { $count } montées
some-up-last = { $up } cordes sur { $count } montées, en dernier la { $string }
stage = { $strings } : tension { $tension }, poussée dans la colonne { $pillar }, flexion { $bending }, couple { $torque }, { $used }, de la charge admissible ; sans la table.
stage-unjudged = { $strings } : tension { $tension }, poussée dans la colonne { $pillar }, flexion { $bending }, couple { $torque }. Quelle part de la charge admissible cela fait n’est pas jugé.
stages-hint = Chaque corde montée est à sa note. La table n’est pas comprise ici : chacune de ses parties ne porte que les cordes proches.

## Céder et années

giving-title = Comment le cadre cède pendant le cordage, estimation
falls-table = De combien chaque corde baisse
formulas-giving = Les formules de ce qui cède
formulas-years = Les formules des années

## Tonalités

keys-title = Tonalités depuis l’accord à vide
key = Tonalité
levers-or-pedals = Leviers ou pédales
key-no = Non :
keys-hint = Chaque corde sonne sous son propre nom de note. Les leviers se mettent un à un, les fourchettes d’une même note ensemble.

## Fichiers

dxf-hint = Pour une découpe ou un logiciel de dessin, en millimètres
svg-hint = Pour un logiciel de dessin, en vraie grandeur
tiled-hint = Sur plusieurs feuilles, à imprimer en vraie grandeur et à coller ensemble
pdf-a4 = PDF en A4
pdf-letter = PDF en Letter
sheet-hint = Une feuille aussi grande que la harpe, pour un traceur
pdf-sheet = PDF sur une feuille
schedule = Table de perçage
schedule-hint = Un tableau de toutes les pointes, chevilles, trous, leviers et fourchettes avec leurs places
picture-hint = Le dessin avec ce qui s’y superpose, pas en vraie grandeur, pour un document
picture-svg = Image, SVG
picture-png = Image, PNG
