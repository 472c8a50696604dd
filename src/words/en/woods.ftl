# The woods: their names, figures and sources.

## Names

sitka-spruce = Sitka spruce
engelmann-spruce = Engelmann spruce
sugar-maple = sugar maple
red-maple = red maple
black-walnut = black walnut
black-cherry = black cherry
yellow-poplar = yellow-poplar
white-oak = white oak
yellow-birch = yellow birch
paper-birch = paper birch
sweet-birch = sweet birch
american-beech = American beech
mahogany = true mahogany
european-spruce = European spruce, clear
c24 = European softwood, grade C24
own = wood of your own
conifers = conifers
birch-plywood = birch plywood
own-named = Wood of your own ({ $key })

## A bar of a wood of one’s own

give-sizes = Give the bar its three sizes and its weight.
give-test = Density { $density }. Load the bar between two supports, or tap it and enter its tone: that gives its modulus.
own-class = Density { $density }, modulus in bending { $modulus }. Its strengths are those of class { $class }, the highest that it reaches in density and modulus.
own-no-class = Density { $density }, modulus in bending { $modulus }. It reaches no class in density and modulus, so its parts are not judged.
own-not-known = Density { $density }, modulus in bending { $modulus }. Its strengths are not known, so its parts are not judged.

## Figures

plies-thick = { $plies } plies, { $mm } mm
plies = { $plies } plies
about = { $name } ({ $botanical }). { $basis }
about-own = { $name }. { $words }
basis-clear = Means of small pieces without a flaw, at 12 % moisture.
basis-graded = What 95 of 100 pieces of graded timber carry.
bending = Strength in bending
modulus = Modulus in bending
compression-along = Compression along the grain
compression-across = Compression across the grain
shear = Shear along the grain
tension-across = Tension across the grain
density = Density
bending-flat = Strength in bending, flat
bending-edge = Strength in bending, on edge
modulus-flat = Modulus, flat
modulus-edge = Modulus, on edge
compression = Compression
shear-through = Shear through the thickness
about-plywood = Birch plywood, { $plies }, face grain along the part. Worked out ply by ply from figures of one ply: Handbook of Finnish Plywood, from memory.

## Sources

from-copies = Wood Handbook, USDA Forest Products Laboratory, FPL-GTR-190, tables 5-3 and 5-5, in copies
from-bound = not tabulated; that of silver maple, the lightest of the maples, as a lower bound: Wood Handbook, USDA Forest Products Laboratory, FPL-GTR-190, table 5-3
from-copy = Wood Handbook, USDA Forest Products Laboratory, table 5-1, in a copy
from-class = EN 338:2016, strength class that density and modulus reach
from-own-bar = Your own bar
from-shares = EN 338, usual shares
from-quoted = EN 1995-1-1, table 3.2, as quoted
