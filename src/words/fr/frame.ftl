# Ce que porte le cadre : pièces, verdicts, forces, et ce qu’on peut faire.

## How a part stands

not-judged = non jugé
within = dans la limite
may-be-over = peut-être au-delà
over = au-delà
gives-way = cède
or-gives-way = { $low } % ou cède
percents = de { $low } à { $high } %
from-to = de { $low } à { $high }
from-to-degrees = de { $low } à { $high }°

## Parts, by themselves and within a sentence

part-neck = Console
part-pillar = Colonne
part-shoulder = Épaule
part-head = Assemblage colonne et console
part-foot = Assemblage colonne et socle
part-soundbox = Caisse
board-with-rib = Table avec son filet de table
board-without-rib = Table sans filet de table
in-neck = console
in-pillar = colonne
in-shoulder = épaule
in-head = assemblage colonne et console
in-foot = assemblage colonne et socle
in-soundbox = caisse
in-board-with-rib = table avec son filet de table
in-board-without-rib = table sans filet de table

## What of a part was looked at

bending-push = flexion avec la poussée en long
bending-pull = flexion avec la traction en long
shear-twist = cisaillement et torsion ensemble
across-curve = traction en travers du fil là où la courbe s’ouvre
buckling = flambement
beside-middle = charge décentrée
pressed-along = compression dans le fil
pressed-across = compression en travers du fil
sliding = glissement et torsion
opening = flexion qui ouvre un bord de l’assemblage
opening-glue = ouverture tenue par la colle des faces
opening-tenon = ouverture tenue par le tenon
opening-dowels = ouverture tenue par les tourillons
opening-bolts = ouverture tenue par les boulons
opening-screws = ouverture tenue par les vis
opening-plates = ouverture tenue par les plaques
sliding-glue = glissement et torsion tenus par la colle des faces
sliding-tenon = glissement et torsion tenus par le tenon
sliding-dowels = glissement et torsion tenus par les tourillons
sliding-bolts = glissement et torsion tenus par les boulons
sliding-screws = glissement et torsion tenus par les vis
sliding-plates = glissement et torsion tenus par les plaques
splitting = fente à côté de ce qui tient l’assemblage
sides-bent = flexion des éclisses avec la force en long
back-bent = flexion du fond avec la force en long
board-pulled = table tirée en travers du fil par la flexion de la caisse
sides-sheared = cisaillement et torsion dans les éclisses
back-sheared = cisaillement et torsion dans le fond
bowing-sides = voilement des éclisses entre les traverses
rolling = cisaillement roulant dans les couches croisées
metal-bent = flexion du métal à côté de la console
metal-glue = cisaillement dans la colle du métal à côté de la console
metal-screws = effort sur les vis du métal à côté de la console
board-bent = flexion en travers, avec la traction de la table soulevée
rib-bent = flexion de son filet
rib-glue = cisaillement dans la colle de son filet
bars-bent = flexion de ses barres
bars-glue = cisaillement dans la colle de ses barres
bars-sheared = cisaillement et torsion de ses barres
edge-peel = décollement de ses bords
bars-ends = décollement aux bouts de ses barres
board-bows = voilement sous la poussée en long, après dix ans
of-board-bent = flexion de la table
of-rib-bent = flexion du filet de table
of-rib-glue = cisaillement dans la colle du filet de table
of-bars-bent = flexion des barres de la table
of-bars-glue = cisaillement dans la colle des barres de la table
of-bars-sheared = cisaillement et torsion des barres de la table
of-edge-peel = décollement des bords de la table
of-bars-ends = décollement aux bouts des barres de la table

## What may be done

mend-pillar = Faites la colonne plus large et plus profonde.
mend-neck = Faites la console plus haute à cet endroit, ou plus épaisse, ou prenez un bois plus fort.
mend-twist = Faites la console plus épaisse, rapprochez les cordes de son axe, et assemblez-la fermement à une colonne raide.
mend-curve = Élargissez la courbe, ou lamellez la console de plis qui la suivent.
mend-sides = Faites les éclisses plus épaisses ou la caisse plus profonde, ou de plus grandes contre-éclisses.
mend-back = Faites le fond plus épais, ou ses ouïes plus petites.
mend-board-pulled = Faites la caisse plus profonde, ou éclisses et contre-éclisses plus raides.
mend-bowing = Rapprochez les traverses, ou faites les éclisses plus épaisses.
mend-rolling = Faites la console plus épaisse, ou croisez moins de couches.
mend-metal-glue = Faites les plaques plus minces ou plus hautes, ou arrêtez-les là où la console fléchit moins.
mend-metal-screws = Rapprochez les vis, ou prenez-les plus grosses et plus profondes.
mend-metal = Faites les plaques plus épaisses ou plus hautes, ou la console plus raide.
mend-held = Faites ce qui tient l’assemblage plus grand, plus profond ou plus écarté.
mend-joint = Faites l’assemblage plus grand, ou renforcez-le.
mend-rib = Faites le filet plus large ou plus haut, ou la table plus épaisse.
mend-rib-glue = Faites le filet plus large, ou la table plus épaisse.
mend-bars = Faites les barres plus hautes, ou la table plus épaisse.
mend-bars-glue = Faites les barres plus larges, ou plus nombreuses.
mend-edges = Faites les contre-éclisses plus larges, ou la table plus étroite ou plus épaisse.
mend-bars-ends = Faites la table plus épaisse aux bouts des barres, ou les barres plus hautes.
mend-board-bows = Faites la table ou son filet plus épais, donnez-lui des barres en long, ou faites la caisse plus profonde.
mend-board = Faites la table plus épaisse ou plus étroite, ou donnez-lui un filet plus raide.

## What leads

leads-gives-way = { $what } : la pièce cède
leads-sum = { $what } : { $share } en somme, le plus grand terme { $stress } sur { $limit } MPa
leads-of = { $what } : { $stress } sur { $limit } MPa
leads-unlimited = { $what } : { $stress } MPa, sans limite connue
share-of = { $what } : { $share }
shares-list = { $what } : { $stress } sur { $limit } MPa, { $share }
shares-unlimited = { $what } : { $stress } MPa, { $share }
none-of = { $what } : aucun
stress-unjudged = { $what } : { $stress } MPa, non jugé
there = À cet endroit : { $list }.
no-limit-known = limite inconnue
near = près de { $string }
in-the-neck = dans la console

## The neck

neck-no-strength = La résistance de ce bois n’est pas connue.
neck-where = { $lead }, { $place }, là où la console a { $thick } d’épaisseur et { $deep } de hauteur.
neck-drilled = Les trous de cheville et de pointe sont comptés.
neck-range = Le chiffre bas vaut si { $least }, le haut si { $most }.
case-pushes = la colonne ne fait que pousser
case-joints-give = les assemblages cèdent un peu
case-no-joint = aucun assemblage ne cède
case-nothing = ni assemblages ni caisse ne cèdent
neck-across = Là où une courbe s’ouvre, le bois est tiré en travers du fil jusqu’à { $stress } MPa ; on n’en connaît pas la limite pour ce bois.
neck-rims = Au bord d’un trou, la contrainte se concentre : jusqu’à { $along } MPa dans le fil, et jusqu’à { $across } MPa en travers, de quoi amorcer une courte fente. Ce n’est pas jugé à part.

## The pillar

pillar-pulled = La colonne est tirée, de { $force }, et non poussée : revoyez la forme du cadre.
pillar-no-strength = La résistance ou le module de ce bois n’est pas connu.
pillar-bears = Elle porte { $push }. Avec le module de flambement, une colonne droite flamberait à { $plane } dans le plan des cordes et à { $square } perpendiculairement.
pillar-also = Si aucun assemblage ne cède, elle est aussi fléchie, jusqu’à { $plane } dans le plan des cordes et { $sideways } perpendiculairement, et tordue de { $torque }.

## Joints and soundbox

joint-no-sizes = Non jugé : aucune mesure n’est donnée de ce qui le tient.
joint-on-neck = { $lead }, sur le bois de la console.
joint-on-pillar = { $lead }, sur le bois de la colonne ou du socle. Est jugé ce qui de la colonne repose sur le socle à côté de la table.
joint-no-limit = On ne connaît pas de limite pour ce bois.
joint-opens = La flexion l’emporte sur la poussée : elle ouvrirait un bord de l’assemblage avec jusqu’à { $stress } MPa. Colle et tourillons tiennent cela ; la colle sur bois de bout tient peu, et les mesures des tourillons ne sont pas connues ici.
box-no-sizes = Non jugé : les mesures des éclisses et du fond ne sont pas données.
box-no-limit = On ne connaît pas de limite pour ses bois.
box-where = { $lead }, { $place }.

## The board

board-at = À { $string } elle a { $wide } de large et { $thick } d’épaisseur.
board-is = Elle a { $wide } de large et { $thick } d’épaisseur.
board-rises-years = Soulèvement immédiat : { $now } ; avec les ans : { $later }.
board-rises = Soulèvement immédiat : { $now } ; de combien elle flue n’est pas connu.
board-on-liners = Une borne vaut pour des bords aussi fermes que peuvent les faire contre-éclisses, éclisses et traverses, l’autre pour des bords aussi souples que celles-ci peuvent l’être.
board-edges = Une borne vaut pour des bords qui ne tournent ni ne bougent, l’autre pour des bords qui tournent librement et ne tirent pas.
board-bows-at = Après dix ans de fluage, avec le module de flambement, elle voilerait à { $times } fois la poussée en long.
board-no-bowing = La caisse l’étire en long, si bien qu’elle ne voile pas.
board-bowing-unjudged = Le voilement sous la poussée en long n’est pas jugé : il y faudrait les mesures de la caisse et le fluage du bois.
board-ends = L’endroit où le filet finit n’est pas jugé ; celui où les barres finissent, seulement sur une table massive dont modules, densité et traction en travers du fil sont connus, et pour des barres en travers avec les mesures de la caisse. Coupés droit à pleine hauteur, leur colle s’ouvre là d’abord, amincissez-les donc vers leurs bouts (usage courant, sans source).

## Forces

force-all = Tension de toutes les cordes
force-lift = Levée sur la table, d’équerre avec elle
force-along = Force le long de la table
force-lift-rib = Levée par longueur de filet de table
force-along-rib = Force le long du filet de table, au plus
force-neck = Traction résultante sur la console
force-pillar = Poussée dans la colonne
force-shoulder = Force à l’épaule
force-neck-moment = Console : moment de flexion le plus haut
force-neck-sideways = Console : flexion latérale la plus haute
force-neck-torque = Console : couple le plus haut
force-neck-shear = Console : cisaillement le plus haut
force-neck-along = Console : force en long la plus haute
force-neck-twist = Console : torsion la plus haute, immédiate
force-pillar-plane = Colonne : flexion dans le plan, si aucun assemblage ne cède
force-pillar-sideways = Colonne : flexion latérale, si aucun assemblage ne cède
force-pillar-torque = Colonne : couple, si aucun assemblage ne cède
force-sway = Haut de la colonne : mouvement latéral immédiat, si aucun assemblage ne cède
force-left-out = Cordes laissées de côté, faute d’une donnée

## How far from breaking

reserve = Au chiffre le plus haut, une pièce de résistance moyenne rompt sous environ { $mean } fois cette charge aussitôt et { $mean-later } fois en dix ans, la plus faible de vingt sous { $weak } et { $weak-later }.
reserve-weak = Au chiffre le plus haut, la plus faible de vingt pièces rompt sous environ { $weak } fois cette charge aussitôt et { $weak-later } fois en dix ans.
reserve-buckles = Au chiffre le plus haut, une pièce de raideur moyenne flambe sous environ { $mean } fois cette charge aussitôt et { $mean-later } fois en dix ans, la moins raide de vingt sous { $weak } et { $weak-later }.
reserve-buckles-weak = Au chiffre le plus haut, la moins raide de vingt pièces flambe sous environ { $weak } fois cette charge aussitôt et { $weak-later } fois en dix ans.
reserve-yields = Au chiffre le plus haut, le métal se plie pour de bon sous environ { $times } fois cette charge, aussitôt comme en dix ans.
reserve-crushed = Au chiffre le plus haut, une pièce de résistance moyenne commence à s’écraser pour de bon sous environ { $mean } fois cette charge, la plus faible de vingt sous { $weak }, quelle que soit la durée. Cela marque le bois et ne rompt rien.
reserve-crushed-weak = Au chiffre le plus haut, la plus faible de vingt pièces commence à s’écraser pour de bon sous environ { $weak } fois cette charge, quelle que soit la durée. Cela marque le bois et ne rompt rien.
reserve-unjudged = La distance à la rupture n’est pas jugée.
reserve-nearer = Plus près de la rupture : { $what }.
reserve-glue = C’est le bois à côté de la colle ; combien de temps la colle elle-même tient n’est pas jugé.

## Stringing

order-lowest = De la corde la plus longue vers le haut
order-highest = De la corde la plus courte vers le bas
order-middle = Du milieu vers l’extérieur
order-in-turns = Grave et aigu en alternance
stringing-one = Montez les cordes une à une. Un guide commence par la plus longue [guide d’un fabricant de cordes, de seconde main] ; l’ordre montré d’abord est celui qui ménage le plus ce cadre, pour autant qu’il est jugé.
stringing-tone = Amenez chacune d’abord à un ton sous sa hauteur, puis toutes à leur hauteur. [Même guide.] Un ton plus bas, une corde a environ 79 % de sa tension à sa hauteur.
stringing-rounds = Montez en plusieurs tours, et vérifiez console, assemblages et table après chacun. Usage courant, sans source.
stringing-down = Relâchez la tension lentement et également, les cordes les plus longues d’abord si toute la harpe doit descendre. Usage courant, sans source.
stringing-care = Portez des lunettes de protection et gardez le visage hors du plan des cordes.

## The verdict

never-judged = le socle (sous Pièces), combien de temps la colle elle-même tient
grain-of-neck = le fil qui sort de la console
ends-of-bars = les bouts du filet et des barres
meaning = 100 % est l’admissible, non la rupture : la résistance qu’ont 95 pièces de bois sur 100, moins ce qu’en prennent charge durable et sécurité. Pour le bois massif, c’est environ un tiers de la résistance moyenne de petites pièces saines. Ce qui devrait rompre une pièce est indiqué à côté, pour un fil droit et sans perçage, selon une courbe de fatigue du bois lue de seconde main.
not-given = non jugé : ses mesures ne sont pas données
not-given-full = Le cadre n’est pas jugé : les mesures et les bois de la console, de la colonne et de la table ne sont pas encore donnés. Donnez-les dans Dessin, sous Bois.
across-neck = traction en travers du fil de la console
opening-of = ouverture, { $part }
across-board = traction en travers du fil de la table
edges-glue = la colle des bords de la table
board-bowing = voilement de la table sous la poussée en long
lead-gives-way = { $part } : cède
lead-may-give-way = { $part } : peut céder
lead-over = { $part } : { $share }, au-delà
lead-may-be-over = { $part } : { $share }, peut-être au-delà
lead-worst = { $part } : { $share }, le plus fort de ce qui est jugé
lead-share = { $part } : { $share }
finding = Cadre, estimé : { $lead }. Non jugé : { $list }.
estimated = { $lead }, estimé
estimated-proposed = { $lead }, estimé avec des mesures proposées
finding-proposed = Cadre, estimé avec des mesures proposées : { $lead }. Non jugé : { $list }.
sizes-proposed = Les mesures sont une proposition de ce programme. Vérifiez-les dans le dessin, sous « Bois » : changez-les, ou faites-en les vôtres à cet endroit.
no-loads = Pas de charges : { $why }.
falls = D’après cette estimation, cède : { $part }.
may-fall = D’après cette estimation, peut céder : { $part }.
share-unjudged = { $part } non jugé
shares = { $list } de l’admissible, estimé.
is-over = Au-delà de l’admissible : { $part }.
is-maybe-over = Peut-être au-delà de l’admissible : { $part }.
not-judged-list = Non jugé : { $list }.
