# Les bois : leurs noms, leurs valeurs et leurs sources.

## Noms

sitka-spruce = épicéa de Sitka
engelmann-spruce = épicéa d’Engelmann
sugar-maple = érable à sucre
red-maple = érable rouge
black-walnut = noyer noir
black-cherry = merisier d’Amérique
yellow-poplar = tulipier
white-oak = chêne blanc
yellow-birch = bouleau jaune
paper-birch = bouleau à papier
sweet-birch = bouleau flexible
american-beech = hêtre d’Amérique
mahogany = acajou véritable
european-spruce = épicéa commun, sans défaut
c24 = résineux européen, classe C24
own = bois à vous
conifers = conifères
birch-plywood = contreplaqué de bouleau
own-named = Bois à vous ({ $key })

## Un barreau d’un bois à soi

give-sizes = Donnez au barreau ses trois mesures et son poids.
give-test = Densité { $density }. Chargez le barreau entre deux appuis, ou frappez-le et saisissez sa note : cela donne son module.
own-class = Densité { $density }, module en flexion { $modulus }. Ses résistances sont celles de la classe { $class }, la plus haute qu’il atteigne en densité et en module.
own-no-class = Densité { $density }, module en flexion { $modulus }. Il n’atteint aucune classe en densité et en module : ses pièces ne sont pas jugées.
own-not-known = Densité { $density }, module en flexion { $modulus }. Ses résistances ne sont pas connues : ses pièces ne sont pas jugées.

## Valeurs

plies-thick = { $plies } plis, { $mm } mm
plies = { $plies } plis
about = { $name } ({ $botanical }). { $basis }
about-own = { $name }. { $words }
basis-clear = Moyennes de petites pièces sans défaut, à 12 % d’humidité.
basis-graded = Ce que portent 95 pièces de bois classé sur 100.
bending = Résistance en flexion
modulus = Module en flexion
compression-along = Compression dans le fil
compression-across = Compression en travers du fil
shear = Cisaillement dans le fil
tension-across = Traction en travers du fil
density = Densité
bending-flat = Résistance en flexion, à plat
bending-edge = Résistance en flexion, sur chant
modulus-flat = Module, à plat
modulus-edge = Module, sur chant
compression = Compression
shear-through = Cisaillement à travers l’épaisseur
about-plywood = Contreplaqué de bouleau, { $plies }, fil des faces dans le sens de la pièce. Calculé pli par pli d’après les valeurs d’un pli : Handbook of Finnish Plywood, de mémoire.

## Sources

from-copies = Wood Handbook, USDA Forest Products Laboratory, FPL-GTR-190, tables 5-3 et 5-5, dans des copies
from-bound = absente de la table ; celle de l’érable argenté, le plus léger des érables, comme borne basse : Wood Handbook, USDA Forest Products Laboratory, FPL-GTR-190, table 5-3
from-copy = Wood Handbook, USDA Forest Products Laboratory, tableau 5-1, dans une copie
from-class = EN 338:2016, classe de résistance que densité et module atteignent
from-own-bar = Votre barreau
from-shares = EN 338, parts usuelles
from-quoted = EN 1995-1-1, table 3.2, comme citée
