# Noms de ce dont parlent les nombres : cordes, tempéraments, leviers et fourchettes.

string = Corde { $number }
string-with-note = Corde { $number }, { $note }
equal = égal
pythagorean = pythagoricien
quarter-comma-meantone = mésotonique au quart de comma
werckmeister-three = Werckmeister III
vallotti = Vallotti
young-two = Young II
just-on-c = juste sur do
no-mechanism = Aucun
lever = Levier
single-disc = Fourchette simple
double-disc = Fourchette double
