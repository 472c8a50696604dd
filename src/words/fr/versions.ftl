# Versions et états antérieurs d’un projet, et ce qui diffère.

## Jours et raisons

january = janvier
february = février
march = mars
april = avril
may = mai
june = juin
july = juillet
august = août
september = septembre
october = octobre
november = novembre
december = décembre
day = { $day ->
    [1] 1er
   *[other] { $day }
} { $month } { $year }
session = Fin d’une séance
printed = Imprimé
link = Lien copié
order = Liste de commande enregistrée
template = Gabarit enregistré
while-working = Pendant le travail
lacks = { $total }, sans { $count }
now-side = maintenant
unnamed = version { $number }
grey = En gris : { $what }
nothing-differs = Rien ne diffère.
strings-differ = { $strings ->
    [one] { $strings } corde diffère.
   *[other] { $strings } cordes diffèrent.
}
settings-differ = { $settings ->
    [one] { $settings } réglage diffère.
   *[other] { $settings } réglages diffèrent.
}
both-differ = { $strings ->
    [one] { $strings } corde
   *[other] { $strings } cordes
} et { $settings ->
    [one] { $settings } réglage diffèrent.
   *[other] { $settings } réglages diffèrent.
}

## Comparer

versions = Versions
before = Avant
after = Après
compare = Comparer
totals = Totaux
every-string = Montrer toutes les cordes, pas seulement celles qui diffèrent
strings-before-after = Cordes, avant → après
now = Maintenant
settings = Réglages qui diffèrent
string = Corde
what = Quoi
came = { $string } (nouvelle)
went = { $string } (disparue)

## États antérieurs

state-unread = Cet état ne peut pas être lu : { $why }.
look-at = Regarder : { $when }
look = Regarder
earlier = États antérieurs
date-and-time = Date et heure
why-kept = Pourquoi il a été gardé
what-to-do = Que faire
none-yet = Aucun encore.
earlier-hint = Ce navigateur les garde de lui-même : la fin de chaque séance, tous les quarts d’heure pendant le travail, et chaque fois que vous imprimez, copiez un lien, ou enregistrez une liste de commande ou un gabarit. Il en reste 20 au plus, les plus anciens plus espacés.
titled-when = { $title } ({ $when })
opened-when = Ouvert tel qu’il était le { $when }, comme nouveau projet. Celui qui était ouvert reste sous Projets.
state-shown = L’état que vous regardez
and-now = { $when }, et maintenant
open-earlier = Ouvrir comme nouveau projet
open-earlier-hint = Le projet ouvert reste tel quel
close = Fermer
strings-then-now = Cordes, alors → maintenant

## Versions gardées

kept = Versions gardées
name = Nom
date = Date
strings = Cordes
total = Tension totale
none-kept = Aucune version n’est encore gardée. Gardez-en une avant d’essayer quelque chose : elle peut être reprise et comparée à tout moment.
usual-name = Version { $number }
kept-as = Gardée sous « { $name } », dans ce projet.
version-name = Nom de la version
version-name-hint = par exemple : boyau, printemps
keep = Garder
keep-hint = Garder le projet tel qu’il est maintenant
restored = Le projet est de nouveau tel qu’il était dans « { $name } ». Annuler revient en arrière.
removed = « { $name } » a été retirée. Annuler la ramène.
name-of = Nom de la version { $number }
date-of = Date de la version { $number }
restore = Reprendre
restore-hint = Le projet redevient ce qu’il était dans cette version
remove = Retirer
remove-hint = Retirer cette version de la liste
