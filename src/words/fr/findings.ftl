# Ce qui se constate sur une corde, et ce qui y remédie.

finding = { $string } : { $said }
caution = Des cordes et un cadre sous charge peuvent blesser : portez des lunettes de protection, tenez le visage hors du plan des cordes et relâchez la tension lentement. Les charges indiquées sont des estimations, elles ne valent pas approbation d’une structure : les règles locales et une pratique qualifiée passent d’abord.

## Charges

breaks-far = plus de dix fois la charge qui la casse. Vérifiez sa note, sa longueur et son diamètre.
breaks = { $share } % de sa charge de rupture : elle casse avant d’être accordée. { $advice }
overworked = { $share } % de sa charge de rupture, plus que les { $limit } % que vous admettez. { $advice }
slack = { $share } % de sa charge de rupture, moins que vos { $limit } % : elle sonnera terne et faux. { $advice }
slack-plain = Un diamètre plus fort augmente la tension, mais pas le taux de charge. Allongez-la à { $length } ou plus, ou prenez un matériau plus lourd pour sa résistance.
slack-wound = Allongez-la à { $length } ou plus, ou prenez un matériau plus lourd pour sa résistance.
overload-thinner = Un diamètre plus faible est plus résistant pour sa taille. Prenez-en un, ou raccourcissez-la à { $length } ou moins.
overload-plain = Un diamètre plus faible n’y fera rien : une corde nue est plus ou moins près de casser selon sa longueur et sa hauteur. Raccourcissez-la à { $length } ou moins, ou prenez un matériau plus résistant pour son poids.
overload-wound = Raccourcissez-la à { $length } ou moins, ou prenez un filage plus léger ou une âme plus résistante.
little-tension = sa tension de { $tension } { $unit } est sous vos { $least } { $unit } : elle ne tiendra pas sous le doigt. { $advice }
little-thicker = Prenez un diamètre de { $gauge } ou plus.
little-other = Prenez une composition plus lourde ou allongez-la.

## Son et composition

inharmonic-far = ses partiels sont bien trop hauts pour une corde. Vérifiez sa longueur et son diamètre.
inharmonic = son partiel 8 est trop haut de { $cents } cents (vous en admettez { $limit }) : elle sonnera faux. Un diamètre plus faible, une corde plus longue ou une corde filée sur une âme mince sonne plus juste.
thin-core = elle est { $ratio } fois plus grosse que son âme, au-delà de { $limit } : l’âme est mince pour ce qu’elle porte. Prenez une âme plus grosse ou un filage plus mince.
gauge-thinner = son diamètre de { $gauge } { $unit } est plus faible que celui de la corde au-dessus ({ $neighbour } { $unit }).
core-thinner = son âme de { $core } { $unit } est plus mince que celle de la corde au-dessus ({ $neighbour } { $unit }).
gauge-thicker = son diamètre de { $gauge } { $unit } est plus fort que celui de la corde au-dessous ({ $neighbour } { $unit }).

## Longueurs

longer-than-below = { $length } { $unit }, c’est plus long que la corde au-dessous ({ $neighbour } { $unit }). { $advice }
shorter-than-above = { $length } { $unit }, c’est plus court que la corde au-dessus ({ $neighbour } { $unit }). { $advice }
midway = À mi-chemin entre ses voisines : { $length }.
check-length = Vérifiez la longueur.
length-off = { $length } { $unit } n’est pas dans la ligne de ses voisines, qui indiquent { $line } { $unit }. Vérifiez la longueur.

## Toucher

softer = { $feel } { $unit } sous le doigt, plus souple que les { $low } à { $high } { $unit } que vous demandez.
stiffer = { $feel } { $unit } sous le doigt, plus raide que les { $low } à { $high } { $unit } que vous demandez.
all-softer = plus souples sous le doigt que les { $low } à { $high } { $unit } que vous demandez.
all-stiffer = plus raides sous le doigt que les { $low } à { $high } { $unit } que vous demandez.
jump-far-from-above = sous le doigt, elle est plus de dix fois plus raide. Vérifiez la composition.
jump-far-below = sous le doigt, la corde au-dessous est plus de dix fois plus raide. Vérifiez la composition.
jump-from-above = sous le doigt, elle est de { $step } % plus { $way ->
    [stiffer] raide
   *[softer] souple
} que la corde au-dessus, là où la composition change (vous admettez { $limit } %).
jump-below = sous le doigt, la corde au-dessous est de { $step } % plus { $way ->
    [stiffer] raide
   *[softer] souple
} que celle-ci, là où la composition change (vous admettez { $limit } %).

## Notes

note-between = { $note } n’est pas à sa place : la corde entre { $first } et { $second } devrait être { $meant }. Vérifiez la note.
note-beside = { $note } n’est pas à sa place : la corde à côté de { $first } devrait être { $meant }. Vérifiez la note.
note-natural = tous les autres { $name } sont bécarre. Vérifiez la note.
note-sharp = tous les autres { $name } sont dièse. Vérifiez la note.
note-flat = tous les autres { $name } sont bémol. Vérifiez la note.
pitch-higher = { $pitch } Hz, c’est plus haut que la corde au-dessus ({ $neighbour } Hz). Vérifiez la note ou l’ordre.
pitch-lower = { $pitch } Hz, c’est plus bas que la corde au-dessous ({ $neighbour } Hz). Vérifiez la note ou l’ordre.

## Leviers et chevilles

tight-raise = son levier ou sa fourchette bécarre se trouverait à { $distance } { $unit } de la pointe de sillet, plus près que les { $least } { $unit } que vous admettez. Ne l’installez pas, ou allongez la corde.
turns-far = elle s’allonge bien plus que sa cheville ne peut enrouler. Vérifiez sa note, sa longueur et son diamètre.
turns = il lui faut { $turns } tours de cheville pour arriver à sa hauteur, plus que les { $limit } que prévoient les longueurs de coupe. Prévoyez-en davantage sous « Instrument », prenez une cheville plus grosse, ou choisissez une corde qui s’allonge moins.

## Remèdes : les mots d’un bouton

cure-turns = Prévoir { $turns } tours
cure-note = Mettre la note à { $note }
cure-without = Ne pas l’installer
cure = { $verb ->
    [set] Mettre { $value }
    [shorten] Raccourcir à { $value }
    [lengthen] Allonger à { $value }
   *[use] Prendre { $value }
}
