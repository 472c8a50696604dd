# Names of what numbers are about: strings, temperaments, levers and discs.

string = String { $number }
string-with-note = String { $number }, { $note }
equal = equal
pythagorean = Pythagorean
quarter-comma-meantone = quarter-comma meantone
werckmeister-three = Werckmeister III
vallotti = Vallotti
young-two = Young II
just-on-c = just on C
no-mechanism = None
lever = Lever
single-disc = Single disc
double-disc = Double disc
