# Mesures pour la scie que la charpente ne dit pas, et ce que coûtent les bois.

## Titres et conseils du formulaire

base-and-blocks = Socle, tasseaux et assemblages
base-hint = Les pieds deviennent plus hauts là où le tenon de la colonne le demande, et le talon là où celui de la console le demande.
sawing = Scie et colle
sawing-hint = Les mesures brutes dépassent d’autant les mesures finies. La place pour la colle rend une mortaise plus large et plus profonde que son tenon.
planks-and-sheets = Planches et panneaux que l’on achète
planks-hint = Une pièce plus large qu’une planche se colle en plusieurs lames, une pièce plus épaisse en plusieurs couches.
prices = Ce que coûtent les bois
price-of-planks = un mètre cube de planches
price-of-sheets = un mètre carré de panneau

## Les mesures

base = Épaisseur du socle
base-beyond = Socle au-delà de ce qu’il porte
base-behind = Socle plus loin derrière le fond
feet = Hauteur des pieds, au moins
foot-block = Tasseau du bas, le long du socle
knee-block = Hauteur du talon, au moins
brace = Largeur des traverses
tenon-shoulder = Épaulement des tenons
under-tenon = Bois laissé sous un tenon
back-rise = Flèche d’un fond cintré en bas ; 0 s’il est plat
glue-room = Place pour la colle autour d’un tenon
kerf = Ce que prend la scie
on-length = Ajouté à la longueur
on-width = Ajouté à la largeur
on-thickness = Ajouté à l’épaisseur
plank-length = Longueur d’une planche
plank-width = Largeur d’une planche
plank-thickness = Planche la plus épaisse
sheet-length = Longueur d’un panneau
sheet-width = Largeur d’un panneau

## Coût

head-cost = Coût
all-woods = Tout ce qui a un prix
left-out = { $count ->
    [one] Un bois n’a pas de prix.
   *[other] { $count } bois n’ont pas de prix.
}
cost-hint = Planches entières et panneaux entiers, dans la monnaie de vos prix.
