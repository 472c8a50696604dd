# The view of the parts of the harp.

nothing = Pas encore de pièces à montrer : { $why }.
give-sizes = Donner les mesures dans le dessin
take-usual = Prendre des mesures usuelles pour la caisse
usual-hint = Les mesures usuelles découlent de la plus longue corde et de la largeur de la table : usage courant, sans source. Vérifiez-les avant de scier.
usual-taken = La caisse a maintenant des mesures usuelles : usage courant, sans source. Vérifiez-les avant de scier ; elles sont dans Dessin, sous « Bois ».
shown = Montrer
in-space = Dans l’espace
three-sides = De trois côtés
template = Gabarit
planks = Planches et panneaux
space-of = La harpe dans l’espace
space-help = Gauche et droite tournent la harpe, haut et bas l’inclinent, plus et moins l’agrandissent et la réduisent, 0 la montre entière.
space-hint = Glissez pour tourner ; touchez une pièce pour la choisir dans la liste. Molette ou deux doigts pour agrandir.
sides-hint = Un dixième. En tirets : ce qui est dans la caisse.
template-hint = Telle qu’on la découpe en vraie grandeur ; les fichiers ont la même à l’échelle un.
planks-hint = Place des pièces sciées brutes sur des planches et panneaux des tailles données sous « Cotes, scie et prix ».
list = Pièces
list-hint = Choisissez une pièce pour voir son gabarit.
nothing-chosen = Choisissez une pièce dans la liste à côté.
head-mass = Poids
no-mass = inconnu
grams = { $mass } g
worth = À regarder ({ $count })
worth-and-unjudged = À regarder ({ $count }), non jugé ({ $unjudged })
nothing-found = Rien trouvé à corriger.
files = Fichiers
files-of = Gabarit de : { $part }
table = Toutes les valeurs en tableau (CSV)
table-hint = Pièces et leurs cotes, place sur les planches, ce qu’il faut en plus du bois, poids et équilibre
save-sides = Trois côtés en image (SVG)
dxf = DXF pour la découpe
svg = SVG en millimètres
a4 = PDF sur feuilles A4
letter = PDF sur feuilles Letter
one-sheet = PDF sur une feuille
board-number = { $wood }, { $thick } mm : { $number } sur { $count }
stands = Le bois pèse { $mass } kg. La harpe peut pencher de { $front }° vers l’avant, de { $player }° vers le harpiste et de { $aside }° de côté avant de tomber. En équilibre sur son pied arrière, son épaule est à { $shoulder } mm du sol.
stands-unknown = { $count ->
    [one] Le poids de la harpe et sa stabilité restent inconnus : la densité du bois d’une pièce n’est pas connue.
   *[other] Le poids de la harpe et sa stabilité restent inconnus : la densité du bois de { $count } pièces n’est pas connue.
}
sizes-of = { $long } × { $wide } × { $thick } mm, { $wood }
head-part = Pièce
sizes = Cotes, scie et prix
print = Imprimer la liste de débit et l’ordre de construction
print-hint = Pièces, planches et panneaux, ce qu’il faut en plus du bois, poids
all-a4 = Tous les gabarits sur feuilles A4 (PDF)
all-letter = Tous les gabarits sur feuilles Letter (PDF)
all-hint = Une page avec toutes les pièces en petit, puis chaque pièce en vraie grandeur
guides = Guides de perçage (PDF)
guides-hint = Des cales qui tiennent le foret à son angle, avec sa butée
no-guides = Rien n’est percé depuis la face de cette pièce.
