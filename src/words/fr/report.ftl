# Le rapport de projet, et les papiers des vues.

## Titres

summary = Résumé
sources = Sources des chiffres
totals = Totaux
settings = Réglages différents
differing = Cordes différentes, avant → après
curves = Courbes, les graves à gauche
drawing = Dessin de côté, sans échelle
loads = Charges, estimées
forces = Forces, estimées
giving = Comment le cadre cède pendant le cordage, estimation
years = Au fil des années, estimation
assumptions = Hypothèses sur le cadre
findings = Constats

## Le résumé

total = { $count } cordes. Tension totale { $newton } ({ $kgf }, { $lbf }).{ $missing ->
    [0] { "" }
    [one] { " " }Une corde sans tension n’y est pas comprise.
   *[other] { " " }{ $missing } cordes sans tension n’y sont pas comprises.
}
tightest = La plus chargée : corde { $string }, à { $share } % de sa charge de rupture.
no-findings = Aucun constat sur les cordes.
findings-told = { $count ->
    [one] Un constat sur les cordes, donné plus bas.
   *[other] { $count } constats sur les cordes, donnés plus bas.
}

## Les sections

formulas = Les formules, leurs sources, leur domaine de validité et leur vérification se trouvent dans Stringloft sous « Les chiffres expliqués ».
before-after = Avant : { $before }. Après : { $after }.
no-difference = Aucune corde ne diffère.
no-strings = Il n’y a pas encore de cordes.
curves-of = Courbes sur l’étendue : { $names }
drawing-of = Dessin de la harpe, vue de côté
nothing-to-draw = Il n’y a encore rien à dessiner : les cordes n’ont pas de longueur.
no-loads = Il n’y a pas encore de charges : il manque aux cordes des notes, des longueurs ou des compositions.
not-judged = Le cadre n’est pas jugé : { $why }.
over-years = { $what } : { $one } après un an, { $ten } après dix.
grave = Grave. { $finding }
warning = Attention. { $finding }
of-string = Corde { $string } : { $finding }
of-strings = Cordes { $first } à { $last } : { $finding }
printed = Imprimé le { $day } depuis Stringloft.

## Têtes de colonnes

head-pluck = raideur
head-pluck-long = raideur
head-load-share = charge
head-partial = partiel 8
head-pitch = hauteur
head-tension = tension
head-length = longueur
head-gauge = diam.
head-part = pièce
head-used = part, estimée
head-leads = ce qui domine, et où
head-force = force
head-how-much = valeur
head-what = quoi
head-before = avant
head-after = après

## Les cordes qui diffèrent

new = { $number }, nouvelle
gone = { $number }, retirée

## Les sources des matériaux

no-material = Aucune corde n’a de matériau dont les valeurs servent.
material = { $name }. { $density }{ $more }.
density = Densité { $density } kg/m³ : { $source } ({ $standing })
strength = { " ; " }résistance : { $source } ({ $standing })
stiffness-sounding = { " ; " }module en vibration : { $source } ({ $standing })
stiffness-minutes = { " ; " }module sur des minutes : { $source } ({ $standing })
stiffness-weeks = { " ; " }module sur des semaines : { $source } ({ $standing })
