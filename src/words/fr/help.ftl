# L’aide : premiers pas, mesures, sens des chiffres, précautions, et mots du métier.

## The window

title = Aide
find = Chercher dans l’aide
nothing-found = Rien ici à ce sujet. Essayez un autre mot, ou voyez « Les chiffres expliqués ».
found = { $count ->
    [one] { $count } passage trouvé
   *[other] { $count } passages trouvés
}

## A first harp

first = Votre première harpe en cinq étapes
first-1 = Ouvrez Projets, Nouveau. Dites quelle sorte de harpe c’est, combien elle a de cordes et comment elle s’accorde. Elle arrive cordée comme il est d’usage pour sa sorte, sur un cadre qui porte ses cordes.
first-2 = Tapez vos longueurs et vos cordes dans le tableau. Les courbes suivent aussitôt : cherchez une ligne sans saut, dans sa bande visée.
first-3 = Lisez les constats, le plus grave d’abord ; le ? à côté dit ce qu’il signifie. S’il y a un remède, un bouton à côté fait le changement, et Annuler le reprend.
first-4 = Mettez dans Stock ce que vous pouvez acheter, puis laissez Choisir les cordes y chercher le meilleur jeu.
first-5 = Regardez dans Dessin ce que porte le cadre. Quand tout convient, imprimez gabarits et fiche de cordage, et enregistrez le projet en fichier.

## Restringing

restring = Recorder une harpe en cinq étapes
restring-1 = Mesurez chaque corde comme le montre le dessin plus bas, leviers ouverts, et notez note, longueur, matériau et diamètre.
restring-2 = Ouvrez Projets, Recorder une harpe, et tapez ou collez le tableau. L’ordre des colonnes importe peu.
restring-3 = Lisez d’abord les constats sur notes et longueurs : une erreur de mesure s’y voit.
restring-4 = Gardez ce qui était sur la harpe, ou choisissez un jeu dans votre stock. Ne dépassez pas l’ancienne tension totale sans savoir que le cadre la porte.
restring-5 = Imprimez la commande et, pour le propriétaire, la fiche de cordage. Avec d’autres cordes, vérifiez la régulation des leviers ou des fourchettes.

## Measuring

measure = Mesurer une harpe
measure-drawing = Une harpe de profil : 1 est la longueur vibrante d’une corde, de la table à la pointe de sillet ; 2 est son diamètre ; 3 est la longueur de la pointe de sillet à la cheville ; 4 est l’angle entre cordes et table.
measure-1 = Longueur vibrante : de la sortie de la table à la pointe de sillet, au demi-millimètre, le ruban droit le long de la corde.
measure-2 = Diamètre : au micromètre, en trois endroits, en tournant un peu à chaque fois ; notez la valeur du milieu. Une vieille corde est plus fine là où on l’a pincée.
measure-3 = De la pointe de sillet à la cheville, pour la longueur de coupe.
measure-4 = L’angle entre cordes et table, à une corde du milieu. Il décide de la force qui soulève la table.
measure-5 = Une corde filée : le diamètre total, et celui de l’âme là où elle est nue. Une corde de composition inconnue peut se peser : voyez Matériaux.

## What the figures mean

meaning = Ce que disent les chiffres à l’établi
meaning-feel = Le toucher, ou raideur au pincement, est la force que rencontre le doigt par millimètre d’écart de la corde. Une harpe paraît égale là où il change peu d’une corde à l’autre ; un saut se sent comme une corde dure ou molle.
meaning-share = Le taux de charge est la tension en part de la charge qui rompt la corde. Au-dessus de ce que vous permettez, elle casse tôt ; bien au-dessous, elle sonne sourd et se désaccorde. Un diamètre plus fin n’y change guère : à note donnée, il suit la longueur et le matériau.
meaning-margin = La marge est le nombre de demi-tons dont on pourrait hausser une corde avant qu’elle casse.
meaning-frame = Le verdict du cadre est la part de ce que peut porter sa pièce la plus faible, des hypothèses les plus douces aux plus sévères. Ce qui n’a pas de mesure n’est pas jugé, et c’est dit.

## Materials

materials = Les matériaux comparés
materials-nylon = Nylon : bon marché, patient, s’étire des semaines. Le choix usuel dans l’aigu et le médium des harpes à leviers.
materials-gut = Boyau : plus plein et plus ferme sous le doigt à même longueur, craint l’air humide, s’use où l’on pince.
materials-fluorocarbon = Fluorocarbone : plus dense que le nylon, donc plus fin et plus clair à même tension ; l’humidité le gêne le moins.
materials-wire = Acier, laiton et bronze : fins, longue résonance, peu d’allongement, si bien qu’un petit tour de cheville fait beaucoup de cents. L’acier fait aussi l’âme des cordes graves.
materials-wound = Cordes filées : du poids sans raideur pour le grave. Sur nylon elles sont souples, sur acier fermes.
materials-standing = Usage courant, sans source. Les valeurs de chaque matériau, avec leurs sources, sont sous Matériaux.

## Care

care = Précautions
care-1 = Portez des lunettes de protection pour corder, monter l’accord ou ôter des cordes. Gardez le visage hors du plan des cordes.
care-2 = Relâchez la tension lentement, quelques tours par corde à tour de rôle ; ne coupez jamais une corde tendue.
care-3 = Mettez un cadre neuf en tension sur plusieurs jours. Arrêtez si un assemblage s’ouvre, si une colle craque ou si la table se soulève plus que prévu.
care-4 = Tous les chiffres de charge sont des estimations et n’approuvent aucune structure. Les règles locales et une pratique qualifiée passent d’abord.

## Where it is kept

kept = Où sont vos projets
kept-1 = Dans ce navigateur, sur cette machine. Rien n’est envoyé ; après la première visite, tout marche sans réseau.
kept-2 = Un lien contient tout le projet dans son adresse : qui l’a peut ouvrir la harpe, et aucun serveur ne la voit.
kept-3 = Effacer les données du navigateur efface les projets. Enregistrez l’important en fichier, ou sauvegardez tout dans Projets.

## The glossary

words = Mots
words-standing = Mots du métier : usage courant, de mémoire.
word-back = fond
word-back-is = la paroi de la caisse en face de la table
word-bar = barre
word-bar-is = une baguette collée à l’intérieur de la table
word-bare-end = âme nue en bout
word-bare-end-is = le bout d’une corde filée sans filage
word-belly = bombé
word-belly-is = de combien la table s’est soulevée sous les cordes
word-brace = traverse
word-brace-is = une pièce en travers à l’intérieur de la caisse
word-breaking-load = charge de rupture
word-breaking-load-is = la charge qui rompt une corde
word-bridge-pin = pointe de sillet
word-bridge-pin-is = la pointe de la console où finit la longueur vibrante
word-cent = cent
word-cent-is = un centième de demi-ton
word-compass = étendue
word-compass-is = de la corde la plus grave à la plus aiguë
word-core = âme
word-core-is = le fil sur lequel une corde est filée
word-cover = couverture
word-cover-is = le serrage des spires : à 100 % elles se touchent
word-creep = fluage
word-creep-is = déformation lente sous charge durable
word-cut-length = longueur de coupe
word-cut-length-is = la longueur à couper, avec nœud, tours de cheville et bout
word-damping = amortissement
word-damping-is = la vitesse à laquelle un son s’éteint
word-disc = fourchette
word-disc-is = le disque tournant d’une harpe à pédales qui hausse une corde
word-drift = dérive
word-drift-is = le déplacement de la hauteur avec la température
word-feel = toucher
word-feel-is = la dureté d’une corde au doigt : sa raideur au pincement
word-finding = constat
word-finding-is = un point du projet à regarder
word-frame = cadre
word-frame-is = console, colonne, table et caisse ensemble
word-gauge = diamètre
word-gauge-is = le diamètre d’une corde nue, ou total d’une corde filée
word-glide = montée
word-glide-is = de combien une corde pincée commence trop haut
word-grommet = œillet
word-grommet-is = la bague qui garnit un trou de corde de la table
word-harmonic-curve = courbe harmonique
word-harmonic-curve-is = la courbe des pointes de sillet
word-impedance = impédance
word-impedance-is = la difficulté à mouvoir une corde à son bout
word-inharmonicity = inharmonicité
word-inharmonicity-is = de combien les partiels d’une corde raide sont trop hauts
word-jump = saut
word-jump-is = un pas plus grand du toucher entre deux cordes voisines
word-knee-block = talon
word-knee-block-is = le bloc de la caisse qui reçoit la console
word-lever = levier
word-lever-is = le levier de demi-ton, mis à la main, qui hausse une corde
word-lift = levée
word-lift-is = la part de la tension qui soulève la table
word-liner = contre-éclisse
word-liner-is = la baguette où se colle le bord de la table
word-load-share = taux de charge
word-load-share-is = la tension en part de la charge de rupture
word-make-up = composition
word-make-up-is = de quoi une corde est faite, l’âme d’abord
word-margin = marge
word-margin-is = demi-tons dont une corde pourrait monter avant de casser
word-natural-disc = fourchette bécarre
word-natural-disc-is = la fourchette du haut : du bémol au bécarre
word-neck = console
word-neck-is = la poutre courbe qui porte pointes et chevilles
word-nominal-place = place nominale
word-nominal-place-is = la place d’un levier ou d’une fourchette si appuyer n’allongeait pas la corde
word-open-tuning = accord à vide
word-open-tuning-is = les notes quand leviers ou fourchettes sont ouverts
word-partial = partiel
word-partial-is = un des sons qu’une corde donne à la fois
word-pillar = colonne
word-pillar-is = le poteau qui écarte console et socle
word-plain = corde nue
word-plain-is = une corde sans filage
word-regulation = régulation
word-regulation-is = le réglage des leviers ou des fourchettes pour que chaque demi-ton soit juste
word-ribbon = fil plat
word-ribbon-is = du fil aplati pour un filage
word-sharp-disc = fourchette dièse
word-sharp-disc-is = la fourchette du bas : du bécarre au dièse
word-shoulder = épaule
word-shoulder-is = là où la console s’assemble au haut de la caisse
word-side = éclisse
word-side-is = une paroi latérale de la caisse
word-soundboard = table d’harmonie
word-soundboard-is = la planche mince que soulèvent les cordes
word-soundbox = caisse
word-soundbox-is = la caisse de résonance, le corps creux dont la table est la face
word-spare = rechange
word-spare-is = une corde commandée en plus de celles de la harpe
word-stock = stock
word-stock-is = les cordes et fils que vous pouvez acheter
word-strength = résistance
word-strength-is = la contrainte à laquelle un matériau rompt
word-stress = contrainte
word-stress-is = la force sur la section qui la porte
word-stretch = allongement
word-stretch-is = de combien une corde s’allonge jusqu’à sa hauteur
word-anchor = arrêt de corde
word-anchor-is = ce qui retient le nœud d’une corde derrière la table
word-string-rib = filet de table
word-string-rib-is = la baguette sous les cordes sur la table
word-string-spacing = espacement
word-string-spacing-is = l’écart des cordes entre elles
word-tail = bout à tirer
word-tail-is = le bout de corde au-delà de la cheville
word-band = bande visée
word-band-is = la zone où une courbe doit rester
word-target-curve = courbe visée
word-target-curve-is = le toucher ou la tension que vous voulez du grave à l’aigu
word-temperament = tempérament
word-temperament-is = le partage de l’octave entre ses douze notes
word-tension = tension
word-tension-is = la force le long d’une corde à sa hauteur
word-tolerance = tolérance
word-tolerance-is = de combien une valeur peut s’écarter, de chaque côté
word-total-tension = tension totale
word-total-tension-is = la tension de toutes les cordes ensemble
word-tuning-pin = cheville d’accord
word-tuning-pin-is = la cheville où s’enroule la corde et qui l’accorde
word-vibrating-length = longueur vibrante
word-vibrating-length-is = de la table à la pointe de sillet
word-winding = filage
word-winding-is = le fil enroulé sur une âme
word-wound = corde filée
word-wound-is = une âme filée de fil

## About

about = À propos de Stringloft
about-version = Version { $version }, compilation { $build }.
about-is = Stringloft est écrit en Rust et tourne en WebAssembly entièrement dans ce navigateur : aucun serveur ne calcule quoi que ce soit, et aucun projet ne quitte cet appareil si vous ne l’envoyez pas.
about-rests = Ce sur quoi reposent les chiffres est dit dans « Les chiffres expliqués », au menu Aide : chaque formule, ses sources, et ce avec quoi elle a été vérifiée.
licences = Licences
licences-are = Stringloft est fait avec des paquets d’autres auteurs. Chacun figure ici avec sa version et sa licence ; appuyez dessus pour lire le texte entier.
licences-coming = Les licences arrivent…
licences-missed = Les licences ne sont pas arrivées. Vérifiez la connexion, puis réessayez.
licences-count = { $count ->
    [one] 1 paquet
   *[other] { $count } paquets
}
licences-find = Chercher un paquet ou une licence
