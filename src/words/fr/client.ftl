# La page du client qui ouvre un lien.

## The page

title = Ce que voit le client
open = Ouvrir dans l’atelier
open-hint = Changer cordes et longueurs ; rien ne change pour personne d’autre
card = Fiche de cordage
card-hint = Les cordes une à une, à imprimer
what = Ce que c’est
drawing = La harpe de profil
curves = Comment les cordes changent de l’aigu au grave
remarks = Remarques du facteur
looking = Voici un projet qu’on vous a envoyé par un lien. Vous ne pouvez rien abîmer ici.

## What it is

made-by = faite par { $maker }
made-for = pour { $client }
strings = Elle a { $count ->
    [one] { $count } corde
   *[other] { $count } cordes
}.
strings-from-to = Elle a { $count } cordes, de { $low } à { $high }.
levers = { $count ->
    [one] { $count } d’entre elles a un levier de demi-ton.
   *[other] { $count } d’entre elles ont un levier de demi-ton.
}
levers-all = Chacune d’elles a un levier de demi-ton.
discs = Des pédales tournent des fourchettes qui en haussent { $count }.
tuning = Accord à vide : { $tuning }.
pitch = Hauteur : { $pitch }.
plain-nylon = { $count } en nylon ou semblable
plain-gut = { $count } en boyau ou en soie
plain-wire = { $count } en fil métallique
wound = { $count } filées de métal
unknown = { $count } à décider
materials = Ses cordes : { $list }.
feel-like = Sous le doigt, elle ressemble à la plupart des harpes de sa taille (usage courant, sans source).
feel-firmer = Sous le doigt, elle est plus ferme que la plupart des harpes de sa taille, d’environ { $percent } % (usage courant, sans source).
feel-softer = Sous le doigt, elle est plus souple que la plupart des harpes de sa taille, d’environ { $percent } % (usage courant, sans source).
total = Toutes les cordes ensemble ont une tension de { $newtons } ({ $other }).
total-of-some = Les cordes de tension connue, { $with } sur { $all }, ont ensemble { $newtons } ({ $other }).
