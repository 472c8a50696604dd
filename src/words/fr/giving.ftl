# De combien les cordes baissent pendant qu’une harpe est cordée et cède.

nothing = on ne peut calculer comment le cadre cède : il faut au cadre des mesures (dans Dessin, sous Bois), aux cordes longueurs, compositions et tensions, à la console trois cordes ou plus, et à la table un bois dont le module est connu
meaning = Estimé : au moins avec des assemblages et des bords de table qui ne cèdent pas et des cordes qui ont eu des semaines pour s’allonger, au plus avec { $joints ->
    [sized] des assemblages qui cèdent deux fois plus que ne le disent leurs mesures
   *[none] une colonne qui ne fait que pousser et une épaule qui pivote librement, car les assemblages n’ont pas de mesures
}, des bords de table qui pivotent et des cordes qui ont eu des minutes. { $soundbox ->
    [sized] La caisse cède comme le disent ses mesures.
   *[none] La caisse n’a pas de mesures : au moins elle ne cède pas, au plus elle cède comme une caisse usuelle.
} Une table qui se soulève de plus que son épaisseur cède moins que le plus ne le dit. Ce que bois, colle, nœuds et cordes fluent encore s’y ajoute : les premiers jours demandent plus de tours que cela.
head-string = Corde
head-cents = Baisse, cents
head-hz = Baisse, Hz
head-round-2 = Après le tour 2, cents
head-round-3 = Après le tour 3, cents
head-off = Ôtée, une autre monte, cents
range = { $least } à { $most }
slack = lâche
string-noted = corde { $number }, { $note }
string-numbered = corde { $number }
strung-lowest-first = Cordée à partir de la corde la plus longue, chacune tout de suite à sa hauteur, les cordes montées baissent pendant que les autres suivent : surtout la { $string }, de { $cents } cents.
strung-highest-first = Cordée à partir de la corde la plus courte, chacune tout de suite à sa hauteur, les cordes montées baissent pendant que les autres suivent : surtout la { $string }, de { $cents } cents.
strung-middle-first = Cordée du milieu vers les bords, chaque corde tout de suite à sa hauteur, les cordes montées baissent pendant que les autres suivent : surtout la { $string }, de { $cents } cents.
strung-in-turns = Cordée grave et aigu en alternance, chaque corde tout de suite à sa hauteur, les cordes montées baissent pendant que les autres suivent : le plus { $string }, de { $cents } cents.
rounds = Après un deuxième tour, l’écart est le plus grand pour la { $second-string }, de { $second-cents } cents, et après un troisième pour la { $third-string }, de { $third-cents }.
one-off = Quand une corde manque et que toutes les autres sont à leur hauteur, celles-ci sonnent trop haut : sans la { $string }, l’une d’elles de { $cents } cents. Montez d’abord la corde neuve et amenez-la à sa hauteur : ses voisines reviennent d’elles-mêmes. Ne les réaccordez qu’ensuite.
