# Ce que les années font à une harpe.

nothing = rien ne peut être dit des années : il faut au cadre des mesures (dans Dessin, sous Bois), aux cordes longueurs, compositions et tensions, à la console trois cordes ou plus, et aux bois des valeurs de ce qu’ils cèdent et fluent. Le fluage du contreplaqué n’est connu que pour des pièces chauffées
meaning = Estimé : ce que la harpe cède tout de suite, fois le fluage du bois ; au moins avec des assemblages et des bords de table qui ne cèdent pas, au plus avec d’autres qui cèdent. Le facteur est celui d’EN 1995-1-1, tableau 3.2, cité, pour cinquante ans ; d’ici là il croît comme une puissance du temps, de 0,2 à 0,3 (que ce soit une puissance a été lu, sa plage est de mémoire). Les cordes sont supposées tenues à leur hauteur. S’y ajoutent les assemblages qui se tassent, la colle qui flue, le bois tordu ou pressé en travers du fil, et l’humidité qui va et vient sous charge. Gonflement : Wood Handbook, tableau 13-5, en partie de mémoire.
head-what = En plus de ce qui cède tout de suite
head-one-year = Après 1 an
head-ten-years = Après 10 ans
belly = La table se soulève (bombé), à la { $string }
roll = La console verse vers les cordes
sway = Le haut de la colonne part de côté
shorter = La corde raccourcit, surtout la { $string }
contact = Levier ou fourchette resté en place hausse trop, surtout sur la { $string }
cents = { $range } cents
months = Une corde qui n’est pas réaccordée baisse à mesure que le bois cède, surtout la { $string } : de { $first } cents le premier mois, et de { $later } en un mois après un an. Le fluage de la corde elle-même s’y ajoute.
seasons = Au fil des saisons, de { $dry } % d’humidité du bois à la saison sèche à { $damp } % à la saison humide, la console gonfle en travers du fil : les chevilles d’accord s’éloignent de son milieu de { $pins } au plus, et les cordes montent, surtout la { $string }, de { $cents } cents.
damp-share = Des cordes accordées à la saison sèche puis laissées telles quelles approchent de la rupture, surtout la { $string } : de { $now } à { $then } % de la charge qui la rompt. Détendez-la avant la saison humide.
board = La table s’allongerait de { $grows }, de { $dry } % d’humidité du bois à la saison sèche à { $damp } % à la saison humide, si rien ne la tenait : comme elle est tenue, elle se bombe et pousse. Collez-la quand son bois est dans la moitié sèche de cette plage (usage courant, sans source).
kept-heated = La harpe est gardée dans des pièces chauffées : cela fixe fluage et humidité, et se choisit sous Bois. L’humidité est d’usage courant, sans source.
kept-covered = La harpe est gardée sous toit, sans chauffage : cela fixe fluage et humidité, et se choisit sous Bois. L’humidité est d’usage courant, sans source.
kept-outdoors = La harpe est gardée en plein air : cela fixe fluage et humidité, et se choisit sous Bois. L’humidité est d’usage courant, sans source.
