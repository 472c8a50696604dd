# Les projets que ce navigateur conserve, la corbeille et la sauvegarde.

gone = il n’est plus dans ce navigateur
spoilt = { $name } ne peut pas être lu ({ $why }) ; il reste tel quel sous Projets
name-lost = un projet dont le nom est perdu
quoted = « { $title } »
unopened = ne peut pas être ouvert : { $why }
day-and-time = { $day } à { $time }
states-refused = ce navigateur n’a pas accepté les états antérieurs qu’elle contient
for-client = { $title }, pour { $client }
empty-chart = Tableau vide
harp-of = Harpe de { $strings }
strings = { $count ->
    [one] { $count } corde
   *[other] { $count } cordes
}
strings-between = { $strings }, { $low } à { $high }
not-opened = Ce projet n’a pas été ouvert : { $why }.
not-done = Cela n’a pas marché : { $why }.
copy-of = { $title } (copie)
not-saved = Il n’a pas été enregistré : { $why }.
title = Projets conservés dans ce navigateur
on-this-device = Ils restent sur cet appareil. Enregistrez un projet dans un fichier, ou tous dans une sauvegarde, pour les garder durablement ou les déplacer.
find = Chercher par nom
none-yet = Aucun encore. Un projet est conservé ici dès que vous le modifiez.
changed-on = { $strings }, modifié le { $day }
new-name = Nouveau nom
rename = Renommer
leave-it = Annuler
duplicate = Dupliquer
save-as-is = Enregistrer tel quel
open-now = ouvert
delete = Supprimer
delete-hint = Le met à la corbeille ci-dessous
bin = Corbeille
bin-days = Un projet reste ici { $days } jours.
left-unchanged = La nouvelle harpe, laissée telle quelle, est maintenant à la corbeille, sous Projets.
delete-for-good-asked = Supprimer définitivement ce projet ?
put-here-on = { $strings }, mis ici le { $day }
put-back = Remettre
delete-for-good = Supprimer définitivement
no-backup = Aucune sauvegarde n’a été faite : { $why }.
taken-in = { $new ->
    [one] Chargé depuis la sauvegarde : { $new } projet.
   *[other] Chargés depuis la sauvegarde : { $new } projets.
} { $known ->
    [one] { $known } était déjà ici.
   *[other] { $known } étaient déjà ici.
}
not-taken-in = La sauvegarde n’a pas été chargée : { $why }.
backup = Sauvegarde
backup-hint = Un seul fichier avec tous les projets et leurs états antérieurs, la corbeille et les listes de stock. En charger un ne change rien de ce qui est ici : ce qui diffère est mis à côté.
save-backup = Enregistrer une sauvegarde
take-in = Charger une sauvegarde
room = Stringloft et ce qu’il conserve prennent { $used } Mo sur les { $most } Mo que ce navigateur autorise.
little-room = Il reste peu de place : enregistrez une sauvegarde, et videz la corbeille.
room-runs-out = La place pour les projets s’épuise dans ce navigateur. Sous Projets, enregistrez une sauvegarde, puis videz la corbeille et supprimez ce qui n’est plus utile ici : sans place, plus rien ne peut être conservé.

sort-by = Trier par
by-date = dernière modification
by-name = nom

## Les états précédents d’un projet

states = États antérieurs
states-hint = Tel que ce navigateur l’a conservé de lui-même
no-states = Pas encore d’états antérieurs.
open-new = Ouvrir comme nouveau projet
open-new-of = Ouvrir comme nouveau projet, tel qu’il était le { $when }
opened = Ouvert tel qu’il était le { $when }, comme nouveau projet. L’autre reste tel quel.
unread = Cet état ne peut pas être lu : { $why }.
