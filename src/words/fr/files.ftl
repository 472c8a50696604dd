# Fichiers, liens et sauvegardes : pourquoi ils ne peuvent être lus.

## Un projet

too-large = un fichier de projet doit avoir au plus { $most } Mo, celui-ci en a { $got } (choisissez un autre fichier)
empty = le fichier est vide (choisissez un fichier enregistré par Stringloft)
cut-off = le projet est coupé : son texte finit au milieu, ligne { $line } (reprenez le fichier entier)
unreadable = ce projet ne peut être lu : { $what } (corrigez le fichier ou choisissez-en un autre)
other-kind = ce JSON n’est pas un projet de Stringloft (il manque « stringloft » avec la version du projet)
too-new = ce projet est de la version { $found }, et ici se lisent les versions 1 à { $version } (rechargez la page pour avoir le Stringloft le plus récent)
misplaced = quelque chose manque, figure deux fois ou est mal placé, ligne { $line }, position { $place }

## En bref, en fin de phrase

short-too-large = il est plus grand qu’un projet ne peut l’être
short-empty = il n’en reste rien
short-cut-off = son texte finit au milieu
short-unreadable = une partie de son texte est abîmée
short-other-kind = ce n’est pas un projet de Stringloft
short-too-new = un Stringloft plus récent l’a écrit (rechargez la page pour avoir le plus récent)

## Ce que contient un champ

must-be = doit être { $must }, reçu { $got }
is-missing = manque
there-twice = un champ figure deux fois
kind-nothing = rien
kind-truth = true ou false
kind-number = un nombre
kind-text = du texte
kind-list = une liste
kind-fields = un jeu de champs
kind-whole = un nombre entier de 0 à { $most }
kind-two = une liste de deux
kind-list-of = une liste de { $count }

## Limites

number = { $what } : de { $least } à { $most }, reçu { $got }
long = { $what } : au plus { $most } caractères, il y en a { $got } (raccourcissez)
many = un projet doit avoir au plus { $most } { $what }, il y en a { $got }
layers = la corde { $number } doit avoir au plus { $most } couches, il y en a { $got }
same-key = deux matériaux ont le nom court « { $key } » (renommez-en un)
nested = une version ne doit pas contenir de versions, mais la version { $number } en contient (ôtez-les)
version-unkept = la version { $number } ne peut être gardée : { $why }
versions-large = les versions d’un projet doivent faire au plus { $most } Ko ensemble, elles en font { $got } (ôtez-en une)

## Champs : où

of-string = corde { $number }, { $field }
of-material = matériau { $number }, { $field }
of-item = article { $number }, { $field }
of-one-item = { $field }
of-design = { $field }
of-design-at = { $field } (numéro { $number })
version-name = nom de la version { $number }
version-date = date de la version { $number }

## Champs : lesquels

title = titre
maker = nom du facteur
client = nom du client
serial = numéro de série
date = date
open-tuning = accord à vide
remarks = remarques
order-remarks = remarques de la commande
note = note
length = longueur
order-code = référence
material = matériau
diameter = diamètre
bare-board = âme nue à la table
bare-pin = âme nue au sillet
layer-material = matériau de la couche
layer-size = mesure de la couche
layer-width = largeur de la couche
layer-packing = couverture de la couche en pour cent
mass-per-metre = masse par mètre
weighed-gauge = diamètre de la corde pesée
breaking-load = charge de rupture
name = nom
source = source
make-up = composition
supplier = fournisseur
currency = monnaie
lowest-note = note la plus grave
highest-note = note la plus aiguë
remark = remarque
pack-length = longueur du paquet en mm
bundle = nombre de cordes par botte
price = prix
joint-size = une mesure d’un assemblage
soundbox-size = une mesure de la caisse
neck-layer = une couche de la console
layer-angle = angle d’une couche
layer-wood = bois d’une couche
metal-size = une mesure du métal sur la console
bar-of-wood-size = une mesure d’une barre de bois
wood-key = nom court d’un bois
wood-name = nom d’un bois
bars-size = une mesure des barres
part-sizes = les mesures des pièces
wood-of-neck = bois de la console
wood-of-pillar = bois de la colonne
wood-of-board = bois de la table
wood-of-rib = bois du filet de table
wood-of-sides = bois des éclisses
wood-of-back = bois du fond
wood-of-bars = bois des barres
point-place = la place d’un point d’une courbe visée
point = un point d’une courbe visée
zone-text = un texte d’une zone de diamètres
wound-from = la note à partir de laquelle les cordes sont filées
kind-of-string-text = un texte d’une sorte de cordes

## Trop nombreux

strings = cordes
materials = matériaux
stock-items = articles
versions = versions
nodes = points sur la courbe harmonique
sections = sections de la console
neck-layers = couches de la console
woods = bois propres
zones = zones de l’espacement
gaps = espaces entre cordes
points = points d’une courbe visée
gauge-zones = zones de diamètres
kinds-of-string = sortes de cordes

## Liens

no-link = ce n’est pas un lien vers un projet (ce qui suit le # doit commencer par « { $form }. »)
link-too-new = ce lien a été fait par un Stringloft plus récent (rechargez la page pour avoir le plus récent, ou demandez le fichier du projet)
link-altered = ce lien a été coupé ou altéré en chemin (redemandez le lien entier)
link-too-large = ce projet est trop grand pour un lien de { $most } caractères (envoyez plutôt le fichier du projet)
link-two-too-large = ce projet et sa version sont ensemble trop grands pour un lien de { $most } caractères (envoyez un lien sans la version, ou le fichier du projet)
link-unusable = le lien ne contient pas de projet utilisable : { $why }

## Sauvegardes, en fin de phrase

backup-too-large = elle est plus grande qu’une sauvegarde ne peut l’être
backup-none = ce n’est pas une sauvegarde, ou seulement une partie
backup-too-new = un Stringloft plus récent l’a écrite (rechargez la page pour avoir le plus récent)
backup-other-kind = ce n’est pas une sauvegarde de Stringloft (un projet seul s’ouvre avec « Ouvrir un fichier »)
backup-damaged = une partie en est abîmée
