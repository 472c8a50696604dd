# Namen dessen, wovon Zahlen handeln: Saiten, Temperaturen, Klappen und Drehscheiben.

string = Saite { $number }
string-with-note = Saite { $number }, { $note }
equal = gleichstufig
pythagorean = pythagoreisch
quarter-comma-meantone = Viertelkomma-mitteltönig
werckmeister-three = Werckmeister III
vallotti = Vallotti
young-two = Young II
just-on-c = rein auf C
no-mechanism = Keine
lever = Halbtonklappe
single-disc = Einfache Drehscheibe
double-disc = Doppelte Drehscheibe
