# Les matières des cordes : leur fenêtre, leurs valeurs, ce qui ne va pas.

## La fenêtre

panel = Matériaux
left-out = Laissé de côté, car inutilisable : { $left }.
empty-hint = Un champ vide veut dire : pas connu ; ce qui en découle ne l’est alors pas non plus. Une table a une ligne par diamètre, comme 0.50 310.
built-in = Fourni. Un changement ici ne vaut que pour ce projet ; les autres projets gardent leurs valeurs.
built-in-changed = Fourni, avec des valeurs changées dans ce projet seulement ; les autres projets gardent les leurs.
own-unused = Propre à ce projet ; aucune corde ne l’emploie encore.
own-used = Propre à ce projet. Donnez un autre matériau à ses cordes avant de le supprimer.
back = Revenir aux valeurs fournies
back-done = Retour aux valeurs fournies.
remove = Supprimer
removed = { $key } supprimé. « Annuler » le ramène.

## La liste

used = { $count ->
    [one] employé par { $count } corde
   *[other] employé par { $count } cordes
}
unused = pas employé
listed-changed = { $used }, modifié
listed-own = { $used }, à vous
listed-built-in = fourni, pas employé
listed-unfinished = , inachevé

## Une valeur

density = Densité
density-spread = Tolérance de la densité
diameter-spread = Tolérance du diamètre
modulus = Module en vibration
intermediate-modulus = Module sur des minutes
slow-modulus = Module sur des semaines
strength = Résistance
expansion = Dilatation thermique
loss-factor = Facteur de perte en flexion
unit-mm-or-percent = mm ou %
unit-millionths = millionièmes par kelvin
times-the-stress = fois la contrainte
not-known = pas connu
rise-of = { $label } : hausse avec la contrainte
with-unit = { $label }, { $unit }
between = Entre les lignes de la table
straight = Droites entre les lignes
steps = Chaque ligne vaut jusqu’à son diamètre
source-alone = source sans valeur
source-of = Source de : { $label }
source-asked = source : d’où vient la valeur
seen = lu dans la source
second-hand = de seconde main
computed = calculé d’après des valeurs lues
from-memory = de mémoire
entered = saisi par vous
taken = Repris pour { $name }, { $label } : { $text } { $unit }.
use-as = Reprendre : { $label }

## Noms et sortes

metal = Métal
polymer = Polymère
natural = Boyau ou soie
name = Nom
kind = Sorte
short-name = Nom court (affiché dans le tableau)
rename = Renommer
copy = Copier sous ce nom court
renamed = { $name } s’appelle maintenant { $key } dans le tableau ; ses cordes suivent.
copied = { $name } copié dans ce projet.
names-stay = Un matériau fourni garde ses noms et sa sorte. Pour en avoir un à vous, écrivez un autre nom court et copiez-le.
new = Nouveau matériau
new-short = Nom court, pour le tableau
new-short-example = crin
new-full = Nom complet
new-density = Densité, kg/m³
use-as-density = Reprendre comme densité
add = Ajouter
added = { $name } ajouté.

## Ce qui est saisi et pas employé

left-new = un nouveau matériau qui n’a pas été ajouté
left-name = nom de { $name }
left-key = nouveau nom court de { $name }
left-figure = { $name } : { $label }

## Ce qui ne va pas

wrong-row = ligne { $number } : { $error }
wrong-pair = la ligne { $number } doit contenir un diamètre et { $what }, reçu « { $got } » (écrivez : { $example })
a-strength = une résistance
a-deviation = une tolérance
of-deviation = tolérance du diamètre
of-density = densité
of-density-deviation = tolérance de la densité
of-modulus = module
of-strength = résistance
of-expansion = dilatation
of-loss-factor = facteur de perte
of-rise-of-modulus = hausse du module avec la contrainte
of-table-strength = diamètre dans la table de résistance
of-table-deviation = diamètre dans la table des tolérances
pure-number = (un nombre pur)
wrong-key = le nom court d’un matériau doit avoir de 1 à { $most } lettres, reçu « { $got } »
wrong-figure = « { $key } », { $what } : de { $least } à { $most } { $unit } admis, reçu { $got }
wrong-rows = une table de « { $key } » doit avoir de 1 à { $most } lignes, reçu { $got }
wrong-order = les diamètres d’une table de « { $key } » doivent croître, reçu { $got } mm après { $after } mm
a-name = nom
a-short-name = nom court
naming-empty = { $what } manquant (écrivez un mot court)
naming-long = { $what } : au plus { $most } lettres, reçu { $got } (raccourcissez)
naming-cell = le nom court doit se lire comme un mot d’une composition, reçu « { $got } » (sans signes ni mesures)
naming-taken = « { $got } » désigne déjà { $other } ({ $what } : choisissez-en un autre)
