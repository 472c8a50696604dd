# Les courbes et les cordes à l’échelle.

tolerances = Tolérances
curves-label = Courbes sur l’étendue, le grave à gauche. Le tableau des cordes contient les mêmes valeurs.
band-label = Les cordes côte à côte, longueurs à l’échelle. Le tableau des cordes contient les mêmes longueurs.
at-most-five = Cinq à la fois au plus.
save-svg = Enregistrer en SVG
save-png = Enregistrer en PNG
curves = Courbes

## The curves in words and figures

told-open = En mots et en tableau
told-window = Les courbes en mots et en chiffres
told = { $name } : de { $low } à la corde { $low-string } jusqu’à { $high } à la corde { $high-string }.
told-flat = { $name } : { $value } à chaque corde.
told-unknown = { $name } : aucune corde n’a encore cette valeur.
told-even = Sans saut.
told-jumps = { $count ->
    [one] Un saut : { $places }.
   *[other] { $count } sauts : { $places }.
}
told-jump = de la corde { $upper } à la { $lower }, de { $from } à { $to }
told-outside = { $count ->
    [one] 1 corde est en dehors de ce que vous admettez.
   *[other] { $count } cordes sont en dehors de ce que vous admettez.
}
told-table = Les valeurs des courbes
told-string = Corde
told-more = D’autres courbes entrent dans le tableau quand elles sont choisies sous « Courbes ».
