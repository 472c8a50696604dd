# Le stock, ce que coûtent les cordes, et comment elles sont vendues.

## Quel article est une corde

no-make-up = aucune composition n’est donnée (choisissez de quoi est faite la corde)
no-code = aucun article n’a la référence « { $code } » (ajoutez-le au stock, ou effacez la référence)
other-make-up = l’article de référence « { $code } » est { $item }, et non { $string } (changez l’un des deux)
not-listed = aucun article n’est { $string } (ajoutez-le au stock, ou choisissez un autre diamètre)

## Prix

no-price = l’article n’a pas de prix (indiquez-le)
no-pack-length = l’article est un rouleau de longueur inconnue (indiquez la longueur du paquet)
no-cut-length = la longueur de coupe n’est pas connue (donnez la longueur vibrante et le diamètre)
pack-short = la corde est coupée à { $cut } mm, et un paquet contient { $pack } mm (choisissez un paquet plus long)

## Paquets

packs-outside = on ne sait comment c’est vendu (ajoutez-le au stock)
packs-length = on ne sait ce que contient un rouleau (indiquez la longueur du paquet)
packs-cut = la longueur de coupe de la corde { $number } n’est pas connue (donnez sa longueur et son diamètre)
packs-short = la corde { $number } est coupée à { $cut } mm, plus long qu’un paquet (choisissez un paquet plus long)
coil = rouleau
single = à l’unité
bundle = botte de { $count }
coil-of = rouleau de { $metres } m
single-of = à l’unité, { $metres } m
bundle-of = botte de { $count }, de { $metres } m chacune

## Remarques sur une ligne de la commande

outside = absent du stock
sold-out = pas disponible en ce moment
strings = { $count ->
    [one] corde
   *[other] cordes
} { $numbers }
not-for-note = pas vendu pour cette note : { $strings }
not-exact = pas la mesure exacte, mais la plus proche du stock : { $strings }
coils-unsettled = { $count } rouleaux suffisent ; si { $least } suffiraient n’a pas été établi
price-missing = aucun prix n’est donné
spare = rechange : { $lengths }

## Sommes

lines = { $count ->
    [one] { $count } ligne
   *[other] { $count } lignes
}
both = { $first } et { $second }
lack-length = { $count ->
    [one] { $count } sans longueur de paquet
   *[other] { $count } sans longueur de paquet
}
sum = { $lines } : { $sums }
sum-no-price = { $lines }, aucun prix n’est connu
sum-none = { $lines }, pas de somme possible : { $why }
sum-at-least = { $lines }, { $without } sans prix : au moins { $sums }
sum-at-least-why = { $lines }, { $without } sans prix ({ $why }) : au moins { $sums }

## Fichiers de listes

list-too-large = une liste de stock doit avoir au plus { $most } Mo (choisissez un autre fichier)
list-empty = le fichier est vide (choisissez une liste de stock enregistrée par Stringloft, ou un tableau)
list-unreadable = cette liste de stock ne peut être lue : { $what } (corrigez le fichier ou choisissez-en un autre)
list-other-kind = ce JSON n’est pas une liste de stock (il manque « stringloft-stock » avec la version de la liste)
list-is-design = ce fichier est un projet et non une liste de stock (ouvrez-le comme projet)
list-too-new = cette liste de stock est de la version { $found }, et ici se lit la version { $version } (rechargez la page pour avoir le Stringloft le plus récent)
list-many = une liste de stock doit avoir au plus { $most } { $what }, il y en a { $got } (partagez-la en deux)
list-long = liste de stock, { $what } : au plus { $most } caractères, il y en a { $got } (raccourcissez)
what-items = articles
what-materials = matériaux
what-name = nom
what-currency = monnaie
what-remark = remarque
what-material-name = nom d’un matériau
what-material-source = source d’un matériau

## La liste pour commencer

usual = Diamètres usuels
usual-remark = Diamètres courants dans le métier : usage courant, sans source, de mémoire. Demandez à votre fournisseur ce qui existe, et indiquez références et prix.
