# Les matières fournies : leurs noms et les sources de leurs valeurs.

## Noms

nylon-named = Nylon monofilament
gut-named = Boyau
fluorocarbon-named = Fluorocarbone (PVDF)
steel-named = Acier, corde à piano
bronze-named = Bronze phosphoreux C51000
yellow-brass-named = Laiton jaune 70/30, C26000, fil à ressort
red-brass-named = Laiton rouge 85/15, C23000, fil dur
copper-named = Cuivre, fil recuit
silver-named = Argent 92,5/7,5, fil écroui ressort
iron-named = Fil de fer historique (phosphore, sans carbone)
silk-named = Soie (Bombyx mori)
polyester-named = Fibre de polyester (PET)

## Sources

a228 = ASTM A228/A228M, table en pouces, telle que la reproduit un marchand de fil
b159 = ASTM B159, fil à ressort (H08), minima, tels que les reproduit un marchand de fil
en-sm = EN 10270-1, qualité SM, telle que la reproduit un fabricant de ressorts
polymer-modulus = J. Woodhouse et N. Lynch-Aird, Choosing strings for plucked musical instruments, Acta Acustica united with Acustica 105 (2019) 516 : 4,5 GPa + 39 fois la contrainte
norton = M. Norton et D. Karczub, Fundamentals of Noise and Vibration Analysis, 2e éd., annexe 4A, d’après une copie
as-fast = pris comme le module en vibration ; sur des minutes il est un peu plus faible, si bien que le résultat est une estimation haute. Source : à trouver
gut-one-modulus = pris comme le module en vibration : N. Lynch-Aird et J. Woodhouse, Materials 11 (2018) 2160, résumé, les trouvent tous trois indépendants de la contrainte. Source du nombre : à trouver
micrometer = lecture d’un micromètre à 0,01 mm, comme l’admettent N. Lynch-Aird et J. Woodhouse (Materials 10 (2017) 497)
woodhouse-2004 = J. Woodhouse, Plucked guitar transients, Acta Acustica united with Acustica 90 (2004) 945, table I : 0,020 et 0,024 pour deux cordes de nylon nues
specific-strength = une table de résistance spécifique d’une encyclopédie, cuivre
nylon-slow = Source : à trouver (2 à 3 GPa sur des semaines, fluage compris)
settled = stabilisée, la densité vaut environ 97 % de celle avant tension (N. Lynch-Aird et J. Woodhouse, Materials 10 (2017) 497)
gut-maker = la note d’un boyaudier sur le produit de la hauteur et de la longueur
gut-modulus = J. Woodhouse et N. Lynch-Aird, Acta Acustica united with Acustica 105 (2019) 516
gut-spread = 1300 à 1320 kg/m³ dans les sources consultées
pvdf-article = un article d’encyclopédie sur le polyfluorure de vinylidène
as-nylon = pris comme pour le nylon : les modules rapides des deux sont presque identiques selon la contrainte (N. Lynch-Aird et J. Woodhouse, Materials 11 (2018) 2160, résumé) ; la loi du nylon est de seconde main
stiffer-than-nylon = Source : à trouver (partout plus raide que le nylon, Materials 11 (2018) 2160)
steel-density = une base de données de matériaux, ASTM A228 ; T. Rossing (dir.), The Science of String Instruments, 2010, p. 379 donne la même
steel-loss = M. Norton et D. Karczub, Fundamentals of Noise and Vibration Analysis, 2e éd., table 6.1 : 1 à 6e-4 pour l’acier de construction ; la borne haute est prise
steel-spread = 7800 à 7850 kg/m³ dans les sources consultées
b103 = ASTM B103, fiche d’alliage pour C51000
c26000 = la fiche d’une tréfilerie d’alliages de cuivre pour le fil rond C26000
c26000-modulus = la fiche d’une tréfilerie d’alliages de cuivre pour le fil rond C26000 (110 à 112 GPa)
c26000-strength = la fiche d’une tréfilerie d’alliages de cuivre pour le fil rond C26000, état ressort
to-be-found = Source : à trouver
red-brass-strength = Source : à trouver (600 à 725 MPa ; la fiche d’un fournisseur selon ASTM B134 donne 455 à 530 MPa pour du fil demi-dur de 1,5 à 6 mm)
c23000 = la fiche d’un fournisseur pour C23000, 20 à 300 °C
sterling = les données d’un fournisseur de métaux précieux pour l’argent 925
silver-modulus = Source : à trouver (75 à 83 GPa)
sterling-hard = les données d’un fournisseur de métaux précieux pour le fil d’argent 925, écroui ressort
iron-density = Source : à trouver (7700 à 7870 kg/m³)
iron-modulus = Source : à trouver (190 à 200 GPa)
iron-strength = Source : à trouver (700 à 1100 MPa, croissant quand le diamètre diminue)
iron-expansion = une table de coefficients de dilatation, fer pur, 0 à 100 °C
silk-sheet = la fiche technique d’une filature de soie
silk-strength = la fiche technique d’une filature de soie (500 à 600 MPa)
polyester-modulus = d’après Morton et Hearle, table 13.2 : 10,6 N/tex, en prenant 1390 kg/m³
polyester-strength = d’après Morton et Hearle, table 13.2 : 0,47 N/tex, en prenant 1390 kg/m³
nylon-falls = jusqu’à 1,0 mm d’après les longueurs de rupture d’une corde dans un essai sur les cordes de harpe et leur dessin (2020), en prenant 1150 kg/m³ ; au-delà, sans source : borne prudente, décroissant comme les minima d’une pharmacopée pour le catgut (de mémoire)
gut-falls = jusqu’à 0,7 mm le plus petit des produits mesurés de la hauteur et de la longueur, 240 m/s sur du boyau de 0,40 mm (note d’un boyaudier) ; au-delà, borne prudente, décroissant comme les minima d’une pharmacopée pour le catgut (de mémoire)
fluorocarbon-falls = sans source : borne prudente, sous des essais de fil de fluorocarbone (626 à 848 MPa pour 0,29 à 0,75 mm, page d’un essayeur) ; au-delà de 0,75 mm, décroissant comme les minima d’une pharmacopée pour le catgut (de mémoire)
nylon-flat = d’après les longueurs de rupture d’une corde dans un essai sur les cordes de harpe et leur dessin (2020), en prenant 1150 kg/m³
gut-flat = le plus petit des produits mesurés de la hauteur et de la longueur, 240 m/s sur du boyau de 0,40 mm (note d’un boyaudier)
by-hand = saisi à la main

## Les matières en bref, comme une cellule les nomme

nylon = nylon
gut = boyau
fluorocarbon = fluorocarbone
steel = acier
bronze = bronze
yellow-brass = laiton jaune
red-brass = laiton rouge
copper = cuivre
silver = argent
iron = fer
silk = soie
polyester = polyester
