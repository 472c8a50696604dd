# De courtes réponses aux questions que pose un chiffre, un champ ou un constat : chacune derrière un petit bouton à côté.

clear = Compris, masquer
again = Montrer à nouveau toutes les explications
again-done = Les explications sont revenues : un petit ? à côté d’un chiffre, d’un champ ou d’un constat.

## Figures

feel = Qu’est-ce que le toucher ?
feel-is = La force que rencontre le doigt pour chaque millimètre dont il écarte la corde. Un parcours égal compte plus que le chiffre lui-même : là où il saute, une corde paraît dure ou molle à côté de sa voisine.
load-share = Qu’est-ce que le taux de charge ?
load-share-is = La tension en part de la charge qui rompt la corde : à 100 %, elle casse. Une corde nue plus grosse porte davantage, mais tire aussi plus fort, presque dans le même rapport : ce sont la longueur, la note et le matériau qui décident de son taux.
margin = Qu’est-ce que la marge ?
margin-is = Le nombre de demi-tons dont on pourrait hausser la corde avant qu’elle casse. C’est le taux de charge dit autrement : 12 demi-tons font un taux de 25 %, 6 font 50 %, 2 environ 80 %.
stretch = Pourquoi l’allongement compte-t-il ?
stretch-is = La corde s’allonge d’autant entre détendue et accordée, et la cheville doit l’enrouler. Tendez-la d’abord à la main. Le nylon et le boyau neufs s’étirent encore des jours : accordez encore et encore (usage courant, sans source).
turns = Que disent les tours de cheville ?
turns-is = Ces tours ne reprennent que l’allongement. S’ils dépassent ce que prévoit la longueur de coupe, tirez plus de corde à la main, prenez une cheville plus grosse, ou coupez la corde plus longue.
partial = Que font des partiels trop hauts ?
partial-is = Une corde raide donne ses sons aigus trop hauts. Un peu, c’est une couleur ; beaucoup sonne faux, et la corde s’accorde mal. Plus mince, plus longue, ou filée sur une âme mince, elle sonne plus juste.
tolerance = Que veut dire ± ?
tolerance-is = De combien le chiffre peut s’écarter, car diamètre, densité, longueur et hauteur ne sont jamais tout à fait ceux qu’on a tapés. C’est ce à quoi s’attendre, non le pire cas.

## The frame

range = Pourquoi deux chiffres ?
range-is = Bois, colle et assemblages varient. Le premier chiffre suppose le cas le plus doux, le second le plus sévère. Si seul le second dépasse 100 %, cherchez à en savoir plus sur cette pièce : les cotes de ses assemblages resserrent l’écart.
joint = Que changent les cotes d’un assemblage ?
joint-is = Tout assemblage cède un peu sous charge. Combien, cela dépend du tenon, des tourillons, boulons ou vis, et des plaques. Un assemblage raide transmet la flexion à la colonne et à la caisse ; un souple la laisse dans la console, et les cordes baissent davantage pendant l’accord. Sans cotes, il est pris tantôt comme rigide, tantôt comme une charnière.
falls = Pourquoi des cordes baissent-elles quand d’autres montent ?
falls-is = Le cadre est un ressort : chaque corde que vous accordez le plie un peu, et celles qui étaient justes baissent. Une harpe neuve demande donc plusieurs passages. Montez également, sur plusieurs jours.

## Choosing and ordering

target = Qu’est-ce que la courbe visée ?
target-is = Ce que chaque corde doit donner sous le doigt, du grave à l’aigu. Partez de ce qui est sur la harpe, puis lissez ce qui saute. La recherche s’approche de la courbe autant que le stock et vos limites le permettent.
weights = À quoi servent les poids ?
weights-is = Aucun stock ne répond à tous les souhaits. Là où deux souhaits se contrarient, celui qui a le plus de poids l’emporte.
spares = Quelles cordes demandent des rechanges ?
spares-is = Les plus fines de l’aigu et celles dont le taux de charge est élevé cassent le plus souvent (usage courant, sans source).
standing = Que veut dire « de mémoire » ?
standing-is = Personne n’a encore vérifié ce chiffre dans sa source. Avant qu’une harpe en dépende, pesez et rompez un morceau de votre propre corde, et inscrivez ce que vous trouvez.

## Findings

breaking = Que veut dire une corde qui casse par le calcul ?
breaking-is = À cette note et à cette longueur, son matériau n’est pas assez résistant. Une corde plus grosse n’y fait rien, car elle tire aussi plus fort. Ne la montez pas : raccourcissez-la, baissez la note, ou choisissez un autre matériau.
loaded = Un taux de charge élevé est-il dangereux ?
loaded-is = Plus une corde est près de la rupture, plus tôt elle casse : pendant l’accord, ou quand l’air devient humide ou sec. Ses bouts fouettent alors. Sous la limite, elle dure plus longtemps ; la limite est la vôtre, sous Instrument.
slack = Qu’a de mauvais un taux de charge bas ?
slack-is = Une corde loin de ce qu’elle porte sonne sourd, et la moindre traction change sa hauteur. Elle ne cassera pas : c’est à votre oreille d’en décider.
light = Qu’a de mauvais une tension faible ?
light-is = La corde cède trop sous le doigt : elle bat large, touche sa voisine, et monte quand on la pince fort.
core = Pourquoi une âme mince est-elle gênante ?
core-is = Seule l’âme porte la tension ; le filage n’apporte que du poids. Une âme mince sous un gros filage est difficile à filer et casse tôt (usage courant, sans source).
order-of-gauges = Pourquoi les diamètres devraient-ils croître vers le grave ?
order-of-gauges-is = Dans un même matériau, un diamètre qui recule est souvent une faute de saisie. S’il est voulu, laissez-le.
length = Pourquoi une longueur hors de la ligne compte-t-elle ?
length-is = Les pointes de sillet suivent une courbe régulière : une longueur hors de la ligne est souvent une erreur de mesure. Mesurez cette corde à nouveau avant de changer son diamètre : tous ses chiffres découlent de sa longueur.
note = Pourquoi la note d’abord ?
note-is = Tous les chiffres découlent de la note : si elle est fausse, les autres constats sur cette corde ne disent rien. Corrigez d’abord la note.
feels-off = Faut-il corriger le toucher ?
feels-off-is = Non. La plage est la vôtre, sous Instrument. Une corde hors de la plage se joue, mais paraît plus souple ou plus raide que ce que vous demandez.
jump = Que fait un saut du toucher ?
jump-is = Là où le nylon rencontre le boyau, ou les cordes nues les filées, le doigt sent une marche. Petite, elle est normale ; grande, elle gêne les traits rapides. Un autre diamètre d’un côté ou de l’autre l’adoucit.
raise = Pourquoi un levier peut-il être trop près de la pointe ?
raise-is = Leviers et fourchettes demandent de la place pour eux-mêmes à côté de la pointe de sillet. Sur les cordes les plus courtes, le demi-ton est plus près que cela.
part-over = La harpe va-t-elle casser ?
part-over-is = Avec le temps, c’est possible. 100 %, c’est ce qu’une pièce peut porter durablement et avec sécurité, non le point où elle rompt ; au-dessus, elle finit par fluer, s’ouvrir ou rompre, et une pièce qui cède le fait aussitôt. Renforcez-la ou retirez de la tension avant de construire. Les charges disent de quelle pièce il s’agit.
unread = Pourquoi n’y a-t-il pas de résultat ?
unread-is = Quelque chose manque ou ne se lit pas. Ce qui a été tapé reste dans sa case ; tant que ce n’est pas corrigé, cette corde ne compte ni dans la tension totale ni dans la charge du cadre.
