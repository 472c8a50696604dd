# Ce que les papiers ont en commun, la liste de commande sur papier, et la barre au-dessus d’un papier sur la page.

## Sortes de papiers

card = Fiche de cordage
order-list = Liste de commande
report = Rapport de projet
chart = Tableau des cordes
drawing = Dessin
comparison = Versions comparées
report-within = rapport de projet
chart-within = tableau des cordes
drawing-within = dessin
comparison-within = versions comparées
titled = { $kind } : { $title }

## Chaque page

page = page { $page } sur { $pages }
continued = { $title }, suite
running-card = { $name }, empreinte { $mark }
running-order = { $title }, liste de commande
running-report = { $name }, { $kind }, empreinte { $mark }

## L’en-tête

untitled = Harpe sans nom
maker = facteur
serial = numéro de série
client = construite pour
date = date
open-tuning = accord à vide
strings = cordes
pitch = hauteur
mark = empreinte du projet
strings-and-spares = cordes et rechange
compass = { $count }, de { $lowest } à { $highest }
pitch-is = la3 = { $hz } Hz, { $temperament }
equal = tempérament égal
pythagorean = quintes pures (pythagoricien)
meantone = mésotonique au quart de comma
werckmeister = Werckmeister III
vallotti = Vallotti
young = Young II
just = intonation juste sur do

## Têtes de colonnes

head-number = n°
head-string = corde
head-octave = octave
head-note = note
head-make-up = composition
head-core-first = âme d’abord, mm
head-gauge = diam.
head-vibrating = vibrante
head-cut-to = coupe
head-order = réfé-
head-code = rence

## Sous un tableau

remarks = Remarques : { $remarks }
named = { $key } : { $name }
covered = À … % : couverture.
bare = Nue : âme nue à la table d’harmonie (table) et au sillet (sillet).
dash-means = Un tiret veut dire : non connu.

## La composition d’une corde

bare-both = { $words }, nue { $board } table { $pin } sillet
bare-board = { $words }, nue { $board } table
bare-pin = { $words }, nue { $pin } sillet
weighed = pesée
weighed-mass = pesée, { $mass }
weighed-core = pesée, âme { $core }
weighed-mass-core = pesée, { $mass }, âme { $core }
packed = { $words } à { $percent } %

## La liste de commande

no-supplier = Aucun fournisseur indiqué
outside = Il faut aussi, hors de la liste de stock
all-outside = Il faut
sum = Somme : { $sum }.
nothing-to-order = Il n’y a rien à commander.
head-strings = cordes
head-cut-lengths = n° : coupe, mm
head-sold = vendu par
head-pieces = pces
head-metres = total
head-packs = paq.
head-price = prix

## La barre au-dessus d’un papier

paper = Papier
language = Langue
language-missing = Les textes de cette langue n’ont pas pu être chargés. Réessayez quand il y aura une connexion.
print-full-size = Imprimez à 100 %, sans marges ajoutées.
code-local = Le code ne mène qu’à cet ordinateur : avant d’imprimer des fiches pour d’autres, ouvrez Stringloft à son adresse sur le web.
not-printed = Ce navigateur n’a pas ouvert sa fenêtre d’impression. Imprimez depuis le menu du navigateur.
as-it-is-now = le projet tel qu’il est maintenant
bar = Papier, langue, impression
