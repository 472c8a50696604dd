# Dit avant que le programme ne tourne et quand il s’est arrêté : par les scripts de src/shell, dans cet ordre.

about = Concevez les cordes d’une harpe : longueurs, diamètres, tensions et papiers pour l’établi.
opening = Ouverture de l’atelier…
old = Ce navigateur est trop ancien pour Stringloft, ou interdit WebAssembly. Mettez-le à jour ou prenez-en un autre.
newest-failed = La dernière version de Stringloft n’a pas démarré. Rechargez la page : la version d’avant s’ouvrira. Vos projets enregistrés sont intacts.
stopped-opening = Stringloft s’est arrêté en s’ouvrant. Rechargez la page. Vos projets enregistrés sont intacts.
part-missing = Une partie de Stringloft n’est pas arrivée. Vérifiez la connexion, puis rechargez la page.
part-damaged = Une partie de Stringloft est arrivée abîmée, peut-être pendant une mise à jour : attendez une minute, puis rechargez la page. Vos projets enregistrés sont intacts.
stopped = Stringloft s’est arrêté. Rechargez la page. Vos projets enregistrés sont intacts.
kept-at = Votre projet a été enregistré pour la dernière fois dans ce navigateur à { $clock }. Ce que vous avez fait ensuite peut manquer.
kept-as-opened = Votre projet est enregistré dans ce navigateur tel que vous l’avez ouvert. Ce que vous avez fait dans cette page peut manquer.
kept-nothing = Ce navigateur ne garde aucune copie du projet qui était ouvert.
open-kept = Ouvrir ce qui a été enregistré
save-kept = En faire un fichier
copy-report = Copier un rapport
copied = Copié. Il contient la version, le navigateur et l’erreur, et rien du projet.
copied-with-design = Copié. Il contient la version, le navigateur, l’erreur et le projet.
not-copied = Ce navigateur ne laisse pas copier le rapport.
open-empty = Ouvrir avec un tableau vide
with-design = avec le projet dans le rapport
fault-head = Stringloft s’est arrêté
fault = Une faute du programme : votre dernière action n’a pas abouti, et cette page ne peut plus rien faire.
fault-again = Si cela se répète, ouvrez avec un tableau vide, puis ouvrez de là le fichier enregistré. Tous vos projets restent sous « Projets ».
