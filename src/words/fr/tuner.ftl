# L’accordeur : ce qu’il montre, et ce qu’il ne peut pas lire.

title = Accordeur
hint = Accordez la harpe avec le micro de cet appareil.
private = Le micro n’est demandé que lorsque vous touchez Écouter, et il est rendu quand vous touchez Arrêter ou fermez cette fenêtre. Rien n’est enregistré, rien n’est envoyé.
listen = Écouter
stop = Arrêter
recording = Écouter un enregistrement…

## How the harp is gone through

order = Ordre
any = N’importe quelle corde
one = Une à une
as-planned = Dans l’ordre du plan
plan-hint = Le plan, son ordre et ses premiers tours se trouvent sous « Mise en accord ». Dans cet ordre, l’accordeur passe de lui-même à la suivante quand une corde est restée une demi-seconde à sa cible : à 10 cents près dans les tours qui finissent sous la hauteur. Usage courant, sans source.
round-done = C’était la dernière corde du tour. Choisissez le tour suivant.
now-sharp = Pour ce tour : { $cents } cents au-dessus de la hauteur
now-flat = Pour ce tour : { $cents } cents au-dessous de la hauteur
back = Retour
next = Suivante
lever = Leviers
open = Ouverts
raised = Levés
discs = Pédales
discs-flat = Bémol
discs-natural = Bécarre
discs-sharp = Dièse
each = Leviers ou pédales, corde par corde
tone = Son de référence
note-each = Noter chaque corde entendue
note-hint = Les relevés se trouvent sous « Mise en accord » et restent dans ce navigateur avec le projet. D’une corde pincée plusieurs fois de suite, seul le dernier relevé est gardé.

## What is heard

off = N’écoute pas
asking = Attend le micro
listening = Écoute
reading = Écoute l’enregistrement
heard-all = L’enregistrement est fini : { $count ->
    [one] une note entendue
   *[other] { $count } notes entendues
}.
pluck-any = Pincez une corde
pluck-one = Pincez la corde { $string }
unknown = Aucune corde de cette harpe
cents = { $cents } cents
flat = Trop bas
sharp = Trop haut
in-tune = Juste
tighten = Tendre : tournez la cheville de { $degrees }°
let-down = Détendre : tournez la cheville de { $degrees }°
target = Visée : { $hz } Hz
fit = Premier partiel d’après tous les partiels : { $hz } Hz
first = Premier partiel seul : { $hz } Hz
first-weak = Premier partiel seul : trop faible
strings = Toutes les cordes
not-heard = pas encore entendue
of-string = { $string } : { $cents }
heard-in-tune = juste ({ $cents } cents)
meaning = Les cents se comptent à partir de la corde telle que le projet la donne : sa note, le tempérament, ses leviers. De combien tourner la cheville découle du projet, pour une corde qui ne s’étire plus. Une corde est tenue pour juste à { $cents } cents près.

## What goes wrong

refused = Le micro n’a pas été autorisé. Autorisez-le pour cette page dans le navigateur, ou écoutez un enregistrement.
no-microphone = Aucun micro ne s’entend. Branchez-en un, ou écoutez un enregistrement.
not-here = Ce qui écoute n’est pas arrivé. Vérifiez la connexion, puis appuyez de nouveau sur Écouter.
unread = { $name } ne peut être écouté : ce navigateur ne le lit pas. Enregistrez-le en WAV.
no-strings = aucune corde n’a de hauteur sur laquelle l’accorder (donnez leur note aux cordes)
no-wav = ce n’est pas un enregistrement WAV (enregistrez-le ou exportez-le en WAV, 16 ou 24 bits)
wav-form = un enregistrement WAV doit contenir des nombres entiers de 8 à 32 bits ou des nombres à virgule flottante ; celui-ci a { $bits } bits sous une autre forme (exportez-le en WAV, 16 bits)
rate = un enregistrement doit avoir de { $least } à { $most } échantillons par seconde ; celui-ci en a { $got } (exportez-le à 44100 ou 48000)
