# Les nombres, expliqués : ce qu’une corde fait à la table.

angle = Toutes les cordes rencontrent la table sous le même angle : { $angle } degrés, sauf autre réglage. Il se mesure entre la corde et la ligne le long de laquelle les cordes quittent la table.
flat = La table est plane. Quand elle se soulève sous les cordes, l’angle croît un peu.
whole = La corde quitte la table à pleine tension ; ce que prend un filet de table ou un œillet est négligé.
share = Aussi exact que la tension et l’angle.
lift-lead = La part de la tension qui est perpendiculaire à la table et la soulève. La table doit en porter la somme, et la levée sur chaque portion de sa longueur.
lift-degrees-degree-more-or = À 34 degrés, un degré de plus ou de moins change la levée d’environ 2,6 %.
along-board-lead = La part de la tension qui court le long de la table, vers l’aigu. Le filet de table et la colle dessous doivent la porter.
along-board-degrees-degree-more-or = À 34 degrés, un degré de plus ou de moins la change d’environ 1,2 %.
