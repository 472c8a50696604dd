# Pourquoi une valeur manque, et pourquoi ce qui est donné ne peut être calculé.

## Une corde sans valeur

no-pitch = pas de hauteur : la note manque ou ne peut être lue
no-length = pas de longueur vibrante : elle manque ou ne peut être lue
off-curve = la courbe harmonique ne laisse aucune longueur à cette corde (déplacez ses points)
no-make-up = pas de composition : le matériau ou le diamètre manque ou ne peut servir
bare-ends-too-long = l’âme nue en bout est plus longue que la corde (raccourcissez-la)
too-stiff = cette corde est si raide pour sa longueur qu’elle sonnerait trop haut même sans tension
no-strength = aucune charge de rupture n’est connue pour ce matériau à ce diamètre
no-modulus = aucun module d’élasticité n’est connu pour cette corde
no-intermediate-modulus = aucun module sur quelques minutes (pour les leviers et l’accord) n’est connu pour ce matériau
no-slow-modulus = aucun module sur quelques semaines (pour l’allongement) n’est connu pour ce matériau
no-loss-factor = aucun facteur de perte n’est connu pour ce matériau
wound-damping = pas de valeur pour les cordes filées : elles perdent surtout par frottement dans le filage, et aucun chiffre publié n’a été trouvé
no-expansion = aucun coefficient de dilatation n’est connu pour ce matériau
polymer-drift = pas de valeur pour les polymères : ils s’assouplissent à la chaleur, ce qui compense ou inverse la dérive, et aucun chiffre publié n’a été trouvé
natural-drift = pas de valeur pour le boyau et la soie : l’humidité agit sur eux plus que la température, et aucun chiffre publié n’a été trouvé
no-lever = cette corde n’a pas de levier
no-disc = cette corde n’a pas cette fourchette
too-much-push = pousser cette corde aussi loin de côté la hausse plus que demandé, où qu’on la touche (indiquez une poussée plus faible)
no-core = le diamètre d’âme de cette corde pesée n’est pas donné
no-gauge = le diamètre total de cette corde pesée n’est pas donné
out-of-reach = une valeur derrière celle-ci est trop grande ou trop petite pour le calcul (vérifiez-la)

## Une corde qui ne peut être faite

diameter = { $part } : de { $least } à { $most } mm d’épaisseur, reçu { $got } mm
part-string = corde
part-core = âme
part-wire = fil d’une couche
part-ribbon = largeur d’un fil plat
packing = les spires d’une couche doivent couvrir de { $least } à { $most } % de la corde, reçu { $got } %
no-layer = une corde filée demande au moins une couche (sinon choisissez une corde nue)
bare-end = l’âme nue en bout doit être de 0 mm ou plus, reçu { $got } mm
mass = la masse par mètre doit être de { $least } à { $most } g/m, reçu { $got } g/m
core-too-thick = l’âme ({ $core } mm) doit être plus mince que la corde entière ({ $gauge } mm)
breaking-load = la charge de rupture doit dépasser 0 N, reçu { $got } N

## Coupe

allowance = { $part } : de 0 à { $most } mm, reçu { $got } mm
part-after = longueur du sillet à la cheville
part-pin = diamètre de la cheville
part-knot = supplément pour la table et le nœud
part-tail = bout à tirer
allowance-turns = les tours autour de la cheville doivent être de 0 à { $most }, reçu { $got }

## Courbe, console et hauteur

curve-count = une courbe harmonique doit avoir de 2 à { $most } points, il y en a { $got } (ajoutez-en ou ôtez-en)
curve-number = le point { $number } de la courbe harmonique doit être un nombre (corrigez-le)
curve-order = le point { $number } doit être au moins { $least } mm plus loin vers l’aigu que le précédent, il l’est de { $got } mm (déplacez-le)
no-neck = une console demande au moins trois cordes de longueur connue (donnez leurs longueurs aux cordes)
reference = la hauteur du la3 doit être de { $least } à { $most } Hz, reçu { $got } Hz
note-empty = une note manque (écrivez son nom et son octave, comme la3 ou mib2)
note-letter = une note commence par do, ré, mi, fa, sol, la ou si, ou par une lettre de A à G, reçu « { $got } » (écrivez la3 ou mib2)
note-octave = il manque à « { $got } » le numéro d’octave (le do du milieu est do3)
note-range = l’octave doit être de { $least } à { $most }, reçu { $got }
note-accidental = « { $got } » a des altérations illisibles (écrivez #, b, x ou bb)

## Leviers et fourchettes

lever-push = un levier ou une fourchette doit hausser la corde de { $asked } cents, une poussée de { $push } mm fait davantage partout (poussez la corde moins loin de côté)
lever-natural = la fourchette bécarre doit laisser quelque chose à hausser à la fourchette dièse, à sa propre place les deux donnent { $got } cents sur { $asked } (placez-la plus près du sillet)
lever-semitones = un levier ou une fourchette doit hausser la corde de 1 à { $most } demi-tons, reçu { $got }
lever-fixings = la corde entre ses attaches doit être au moins aussi longue que sa longueur vibrante ({ $length } mm), reçu { $between } mm (ajoutez ce qui se trouve au-delà du sillet et dans la caisse)
lever-above = { $figure } : un nombre au-dessus de 0, reçu { $got }
lever-from = { $figure } : un nombre à partir de 0, reçu { $got }
lever-within = { $figure } : un nombre au-dessus de 0 et au-dessous de la longueur vibrante, reçu { $got }
figure-natural = distance de la fourchette bécarre en millimètres
figure-length = longueur vibrante en millimètres
figure-tension = tension en newtons
figure-rigidity = raideur à l’allongement en newtons
figure-push = poussée de côté en millimètres
figure-bending = raideur en flexion en N m²
