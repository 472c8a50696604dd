# Ce que la recherche propose : cordes, longueurs, les deux.

no-gain = Pas de gain qui vaille la peine de déplacer les pointes
no-gain-because = Elles se rapprochent de la visée de moins de { $mean } % en moyenne et de { $most } % au plus, et cela ne vaut pas la peine de déplacer les pointes (limites choisies pour ce projet, sans source).
no-gain-set = Pas de gain qui vaille la peine de changer des cordes
no-gain-set-because = C’est le meilleur jeu, mais il se rapproche de la visée de moins de { $mean } % en moyenne et de { $most } % au plus, et cela ne vaut pas la peine de changer des cordes (limites choisies pour ce projet, sans source).
nearest = Le jeu le plus proche
best-within = Le meilleur jeu dans les limites
best = Le meilleur jeu
no-lengths = Pas d’autres longueurs
lengths = Autres longueurs
lengths-there = Les cordes ont déjà ces longueurs.
ended = { $count ->
    [one] Après { $count } tour
   *[other] Après { $count } tours
}, ni d’autres cordes seules ni d’autres longueurs seules ne s’en rapprochent davantage. Ce n’est pas forcément le meilleur de tout.
no-both = Pas d’autres cordes ni longueurs
both = Cordes et longueurs ensemble
frame = cadre, le pire de ce qui est jugé, estimé
span-one = corde { $name }
span = cordes { $first } à { $last }
stiffness = raideur au pincement
tension = tension
