# Les cotes que l’on tire sur les trois côtés de la harpe.

pillar-width = Largeur de la colonne, dans le sens de la harpe
pillar-depth = Profondeur de la colonne, en travers de la harpe
neck-thickness = Épaisseur de la console
board-low = Largeur de la table à la corde la plus grave
board-high = Largeur de la table à la corde la plus aiguë
depth-low = Profondeur de la caisse à la corde la plus grave
depth-high = Profondeur de la caisse à la corde la plus aiguë
back-rise = Flèche du fond en bas
hole-length = Longueur des ouïes
hole-width = Largeur des ouïes
feet = Hauteur des pieds
knee-block = Hauteur du talon
size = { $what } : { $size } mm
hint = Tirez un carré pour changer ce qu’il tient ; avec la touche Alt par pas de 0,1 mm. Au clavier : Tab jusqu’à lui, puis les flèches, avec Maj 10 mm.
stops = Pas plus loin : { $why }.
