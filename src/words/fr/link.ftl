# Le lien vers un projet.

title = Lien vers ce projet
copied = Lien copié ({ $count } caractères). Qui l’ouvre voit exactement ce projet ; rien n’est envoyé à un serveur.
length = { $count } caractères. Rien n’est envoyé à un serveur.
none = Ce projet n’a pas de lien : { $why }.
no-clipboard = Le navigateur n’a pas laissé la page accéder au presse-papiers. Sélectionnez le lien et copiez-le.
one-version = Qui ouvre le lien voit exactement ce projet. Vous pouvez joindre une version, pour comparer.
version = Version à joindre
without = aucune
link = Lien
copy = Copier le lien
