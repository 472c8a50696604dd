# Choisir cordes et longueurs : ce qui est proposé, avec quelle certitude, et pourquoi rien de mieux.

## Strings within a sentence

string-at = la corde { $number }, { $note }
string-numbered = la corde { $number }
strings-from-to = les cordes { $first } à { $last }
kind-wound = { $layer } filé sur { $core }
kind-wound-over = { $layer } filé par-dessus { $under } sur { $core }
kind-over = { $over } par-dessus { $under }
and = { $others } et { $last }
or = { $others } ou { $last }
more = { $listed } et { $count } de plus

## Before and after

line-off-feel = écart au toucher visé, en moyenne
line-off-tension = écart à la tension visée, en moyenne
line-off-most = écart le plus grand à la visée
line-step = plus grand saut hors de la courbe
line-changes = changements de matériau
line-different = cordes et fils différents
line-price = prix de ces cordes
line-total = tension de toutes les cordes
line-feel = toucher, du plus bas au plus haut
line-share = taux de charge, du plus bas au plus haut
line-longest = corde la plus longue
line-kink = pointe la plus éloignée de la courbe de ses voisines
price-and-without = { $price }, et { $count ->
    [one] { $count } corde
   *[other] { $count } cordes
} sans prix
total-of-some = { $total }, { $with } cordes sur { $all }
from-to = de { $low } à { $high } { $unit }

## How sure it is

is-there = la harpe a déjà ce jeu
nearer = les cordes de la harpe sont plus près de la visée
nearer-but = les cordes de la harpe sont plus près de la visée, mais : { $broken }
proved = ce jeu est démontré le meilleur : aucun autre { $from ->
    [both] tiré de ce stock et des cordes de la harpe
   *[stock] tiré de ce stock
} ne tient les limites{ $total ->
    [true] , y compris celle de la tension totale,
   *[false] { "" }
} en approchant davantage de la visée
within = ce jeu est à { $share } % au plus du meilleur possible (on n’a pas pu démontrer mieux)
unlisted-stay = { $count ->
    [one] { $count } corde de la harpe reste telle quelle, bien qu’absente de cette liste de stock
   *[other] { $count } cordes de la harpe restent telles quelles, bien qu’absentes de cette liste de stock
}
tie = un autre jeu vaut autant ; il diffère d’abord sur { $string } (à égalité, on prend ce qui vient d’abord dans le stock)

## Why there is none

stock-empty = le stock n’a rien d’utilisable (ajoutez-y des cordes, ou choisissez une autre liste)
nothing-for = le stock n’a rien pour { $strings } : { $reason } ({ $remedy })
no-set = aucun jeu ne tient toutes les limites (élargissez-en une)
no-item-there = aucun article n’est utilisable ici
cannot-keep = { $count ->
    [one] impossible à tenir sur { $strings } : { $limits }
   *[other] impossible à tenir ensemble sur { $strings } : { $limits }
} ({ $remedies })
cannot-keep-least = { $count ->
    [one] impossible à tenir sur { $strings } : { $limits }
   *[other] impossible à tenir ensemble sur { $strings } : { $limits }
} ; la plus basse tension totale d’un jeu est { $total } ({ $remedies })
passed-share = le taux de charge le plus haut est dépassé sur { $strings }, jusqu’à { $over } %
missed-share = le taux de charge le plus bas n’est pas atteint sur { $strings }, jusqu’à { $over } %
passed-total = la tension totale la plus haute est dépassée de { $over } %
passed = dépassé : { $limit }
not-kept = non tenu sur { $strings } : { $limit }
alternative = { $count ->
    [one] { $count } corde différente
   *[other] { $count } cordes différentes
}, écart moyen à la visée { $off } %

## Limits

limit-most-share = le taux de charge le plus haut
limit-least-share = le taux de charge le plus bas
limit-unknown-share = que la charge de rupture soit connue
limit-thin = le plus petit diamètre de la zone
limit-thick = le plus gros diamètre de la zone
limit-unknown-gauge = que le diamètre soit connu dans une zone de diamètres
limit-place = l’endroit où une sorte de corde peut servir
limit-note = les notes pour lesquelles les cordes sont vendues
limit-stock = ce qui est en stock
limit-order = l’ordre des sortes de cordes
limit-shrinking = qu’aucune corde, ni aucune âme, ne soit plus fine que celle du dessus
limit-jump = le plus grand saut de toucher d’une corde à l’autre
limit-changes = le nombre de changements de matériau
limit-items = le nombre de cordes différentes
limit-total = la tension totale la plus haute
limit-breaks = qu’aucune corde ne casse
limit-no-tension = que la tension puisse être calculée

## What is wrong with items

why-tight = { $count ->
    [one] { $count } est trop tendu
   *[other] { $count } sont trop tendus
}
why-slack = { $count ->
    [one] { $count } est trop lâche
   *[other] { $count } sont trop lâches
}
why-unknown-load = { $count } de charge de rupture inconnue
why-thin = { $count ->
    [one] { $count } est trop fin pour la zone
   *[other] { $count } sont trop fins pour la zone
}
why-thick = { $count ->
    [one] { $count } est trop gros pour la zone
   *[other] { $count } sont trop gros pour la zone
}
why-unknown-gauge = { $count } de diamètre inconnu
why-kind = { $count } d’une sorte non permise ici
why-note = { $count ->
    [one] { $count } n’est pas vendu pour cette note
   *[other] { $count } ne sont pas vendus pour cette note
}
why-stock = { $count ->
    [one] { $count } n’est pas en stock
   *[other] { $count } ne sont pas en stock
}
why-breaks = { $count } si tendus qu’ils cassent
why-stiff = { $count ->
    [one] { $count } est trop raide pour cette longueur
   *[other] { $count } sont trop raides pour cette longueur
}
why-neighbours = { $count ->
    [one] { $count } gêne ses voisins
   *[other] { $count } gênent leurs voisins
}

## What to do about limits

do-most-share = relevez le taux de charge le plus haut, raccourcissez ces cordes, ou ajoutez au stock des cordes plus grosses ou plus résistantes
do-least-share = abaissez le taux de charge le plus bas, allongez ces cordes, ou ajoutez des cordes au stock
do-unknown-share = indiquez la résistance du matériau
do-zone = élargissez la zone de diamètres
do-place = permettez ici une autre sorte de corde
do-note = élargissez les notes pour lesquelles les articles sont vendus
do-stock = ajoutez au stock ce qui manque
do-order = changez l’ordre des sortes, ou libérez une corde
do-shrinking = libérez une corde, ou ajoutez des diamètres au stock
do-jump = permettez un plus grand saut, libérez une corde, ou ajoutez des diamètres au stock
do-changes = permettez un changement de plus
do-items = permettez plus de cordes différentes
do-total = relevez la tension totale la plus haute, ou raccourcissez les cordes
do-lengths = changez les longueurs, ou ajoutez des cordes au stock
do-stock-strings = ajoutez des cordes au stock

## What was left out

left-thick = { $count ->
    [one] { $count } corde nue plus grosse que la plus grosse permise est laissée de côté
   *[other] { $count } cordes nues plus grosses que la plus grosse permise sont laissées de côté
}
left-unread = { $count ->
    [one] { $count } article du stock est illisible
   *[other] { $count } articles du stock sont illisibles
} : { $list }
left-sold-out = { $count ->
    [one] { $count } article du stock est épuisé
   *[other] { $count } articles du stock sont épuisés
} : { $list }
left-currency = les prix se comparent dans une seule monnaie ; { $count ->
    [one] { $count } article dans une autre est compté
   *[other] { $count } articles dans une autre sont comptés
} au prix usuel
left-without = { $count ->
    [one] { $count } corde sans longueur ni note ne peut
   *[other] { $count } cordes sans longueur ni note ne peuvent
} recevoir de composition : { $list }
left-no-place = aucune corde de la harpe n’est là où { $kind } peut servir (élargissez ses notes)
left-kinds = { $count ->
    [one] { $count } article d’une sorte non listée est laissé de côté
   *[other] { $count } articles de sortes non listées sont laissés de côté
}
strings-of = les cordes en { $kind } : { $why }
wound-from = la note à partir de laquelle les cordes sont filées : { $why }
zone = zone { $number } : { $why }
zone-gauges = zone { $number } de diamètres : { $why }

## Lengths

curve-makes-lengths = la courbe harmonique fixe les longueurs (partez d’abord des longueurs, sous Forme)
none-chosen = aucune corde n’est choisie (choisissez celles qui peuvent changer)
ratio-range = le rapport des longueurs doit être de { $least } à { $most }, et non { $ratio }
bound-asked = sa limite
bound-share = le taux de charge
bound-stiffness = sa raideur
bound-computed = ce qui se calcule
held-shorter = { $strings } : plus court sans { $bound }
held-longer = { $strings } : plus long sans { $bound }
length-conflict = { $string } : au moins { $above } mm ({ $by-above }) et au plus { $below } mm ({ $by-below }) (élargissez l’un des deux, ou changez la corde)
and-so-on = et ainsi de suite pour { $count ->
    [one] { $count } autre corde
   *[other] { $count } autres cordes
}
