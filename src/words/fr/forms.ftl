# Les formulaires d’un projet : titres, indications, champs de texte.

## L’instrument entier

on-the-card = Sur la fiche
instrument = Instrument
maker = Facteur
client = Client
serial = Numéro de série
date = Date
open-tuning = Accord à vide
open-tuning-example = Mi bémol majeur, leviers baissés
remarks = Remarques
levers = Leviers, fourchettes et cadre
push-hint = Réglez sous « Détails » une corde qui diffère. La poussée est d’usage courant, sans source : mesurez la vôtre.
expansion-hint = Pour la dérive avec la température. 0 : le cadre n’a pas encore suivi l’air. Bois dans le fil : 3 à 5 (de mémoire).
pitch-and-pluck = Hauteur et pincement
pluck-hint = Usage courant, sans source : les harpes se pincent vers 40 % de la longueur. Une corde n’est jamais écartée de plus de 2 % de sa longueur.
cut-length = Longueur de coupe
measure-hint = Usage courant, sans source. Mesurez votre instrument.
findings = Constats et bandes visées
tolerances = Tolérances (±)
tolerances-hint = Diamètre et densité valent là où le matériau n’en donne pas. Usage courant, sans source ; la hauteur d’après ISO 16.
units = Unités
unit-of-tension = Unité de tension
units-of-lengths = Unités des longueurs et des diamètres
unit-inches = pouces
unit-mm-inches = mm, diamètres en pouces
unit-inches-mm = pouces, diamètres en mm
note-names = Noms des notes
note-names-usual = comme il est d’usage en français
note-names-english = anglais : C4, E♭3, B♭3, B3
note-names-german = allemand : C4, Es3, B3, H3
note-names-syllables = do ré mi : do3, mi♭2, si♭2, si2
note-names-hint = Les noms des notes sont retenus par ce navigateur, non par le projet. Le do du milieu est do3 (C4 en lettres) et la3 est à 440 Hz. Tous les noms sont lus, quels que soient ceux affichés ; seul un B sans signe est si bémol avec les noms allemands. Fichiers, liens et CSV gardent les noms anglais.
note-names-not-kept = Ce navigateur ne retient pas les noms des notes : { $why }.

## La forme et de quoi elle est faite

strings = Cordes
around = Console, colonne et table
around-hint = Usage courant, de mémoire. Mesurez votre instrument. L’épaisseur et la largeur de chaque pièce se trouvent sous « Bois ».
rib-hint = Le filet de table court sous les cordes à l’intérieur, la baguette le recouvre à l’extérieur ; tous deux sont collés, fil en long. 0 : il n’y en a pas.
stands = Où elle est gardée
stands-hint = Le bois humide flue davantage sous une charge durable.
drills-hint = 0 : pas percé ou pas connu. Une pointe traverse la console là où sa profondeur est 0 ; les trous affaiblissent la console, et les charges en tiennent compte. Avec un œillet, chaque trou de corde a sa largeur. Le diamètre des chevilles est sous « Instrument » : pour une cheville conique, percez au petit bout et alésez. Usage courant, de mémoire ; un trou est souvent de 0,3 à 0,5 mm plus large que sa corde.
sizes = À qui sont les mesures
sizes-hint = Une harpe neuve vient avec des mesures que le programme propose pour ses cordes. Elles deviennent les vôtres dès que vous en changez une, ou ici.

## Cordes à choisir

no-limit-hint = Un champ vide ne limite rien.
family-hint = Un champ vide prend ce qui est usuel pour ces cordes : usage courant, sans source. Les sortes énumérées plus bas passent avant la famille.
breaking-hint = Les charges de rupture d’un même matériau diffèrent d’un fabricant à l’autre : gardez du jeu.
usual = { $number }, comme d’usage
usual-soft = { $metal }, boyau et plastiques { $soft }
any = sans limite
any-number = sans limite de nombre
