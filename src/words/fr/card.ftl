# La fiche de cordage : remplacer une corde, les précautions, et ce qui reste ouvert.

## Remplacer une corde

steps = Remplacer une corde
step-find = Repérez la corde dans le tableau, dans la bonne octave : s’y tromper est l’erreur la plus courante.
step-take-off = Mettez des lunettes de protection. Détendez lentement l’ancienne corde en tenant la boucle, et retirez-la.
step-knot = Nouez la corde neuve derrière la table. Du do3 vers l’aigu, un bout de grosse corde sert d’arrêt de corde ; le métal a le sien.
step-lead = Passez-la par son trou, contre sa pointe de sillet et dans la cheville.
step-slack = Laissez du mou pour quelques tours sur la cheville ; au moins deux pour le métal.
step-turns = Laissez du mou pour environ { $turns } { $turns ->
    [one] tour
   *[other] tours
} sur la cheville ; au moins deux pour le métal.
step-side-by-side = Rangez les tours côte à côte vers la console, sans chevaucher.
step-pitch = Montez-la à la note lentement, un peu à la fois.
step-settle = Réaccordez chaque jour jusqu’à ce qu’elle tienne : métal un à trois jours, boyau quelques jours, nylon jusqu’à deux semaines. Coupez alors le bout à 12 mm environ.

## Précautions

care = Prudence.
cautions = Des cordes tendues peuvent blesser. Portez des lunettes de protection, détendez lentement, gardez le visage hors du plan des cordes. Un autre diamètre ou matériau change la charge. Les charges calculées sont des estimations et n’approuvent aucune structure : les règles locales et un avis qualifié passent d’abord. Si table, console ou colonne se fend ou bouge, consultez un facteur qualifié avant de monter l’accord.

## Ce qui reste ouvert

findings = Constats encore ouverts : { $count }, { $count ->
    [one] sur
   *[other] le plus grave sur
} la corde { $string }.
findings-gravest = Constats encore ouverts : { $count }. { $count ->
    [one] { $gravest }
   *[other] Le plus grave : { $gravest }
}
frame = Cadre, part de l’admissible : { $lead }. Tout n’est pas jugé.

## Le code et les marques

caption = Ouvrir ce projet dans un navigateur
no-link = Cette fiche n’a pas de lien. Gardez le fichier du projet d’empreinte { $mark }.
long-link = Le lien vers ce projet, { $count } caractères, est trop long pour un code imprimé. Gardez le fichier du projet d’empreinte { $mark }.
mark-c = Corde de do (C)
mark-f = Corde de fa (F)
