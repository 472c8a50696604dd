# The materials that come with the program: their names, and the sources of their figures.

## Names

nylon-named = Nylon monofilament
gut-named = Gut
fluorocarbon-named = Fluorocarbon (PVDF)
steel-named = Steel music wire
bronze-named = Phosphor bronze C51000
yellow-brass-named = Yellow brass 70/30, C26000, spring wire
red-brass-named = Red brass 85/15, C23000, hard wire
copper-named = Copper, soft wire
silver-named = Sterling silver 92.5/7.5, spring hard wire
iron-named = Iron wire, historical (phosphorus, no carbon)
silk-named = Silk (Bombyx mori)
polyester-named = Polyester fibre (PET)

## Sources

a228 = ASTM A228/A228M, inch table, as reproduced by a wire merchant
b159 = ASTM B159, spring wire (H08), minima, as reproduced by a wire merchant
en-sm = EN 10270-1, grade SM, as reproduced by a spring maker
polymer-modulus = J. Woodhouse and N. Lynch-Aird, Choosing strings for plucked musical instruments, Acta Acustica united with Acustica 105 (2019) 516: 4.5 GPa + 39 times the stress
norton = M. Norton and D. Karczub, Fundamentals of Noise and Vibration Analysis, 2nd ed., appendix 4A, as transcribed
as-fast = taken as the modulus in vibration; over minutes it is somewhat lower, so that what follows from it is an upper estimate. Source: to be found
gut-one-modulus = taken as the modulus in vibration: N. Lynch-Aird and J. Woodhouse, Materials 11 (2018) 2160, abstract, find all three independent of stress. Source of the number: to be found
micrometer = a reading of a micrometer of 0.01 mm, as N. Lynch-Aird and J. Woodhouse take it (Materials 10 (2017) 497)
woodhouse-2004 = J. Woodhouse, Plucked guitar transients, Acta Acustica united with Acustica 90 (2004) 945, table I: 0.020 and 0.024 for two plain nylon strings
specific-strength = an encyclopaedia's table of specific strength, copper
nylon-slow = Source: to be found (2 to 3 GPa over weeks, creep included)
settled = settled density is about 97 % of the unstretched one (N. Lynch-Aird and J. Woodhouse, Materials 10 (2017) 497)
gut-maker = a gut string maker's note on the product of pitch and length
gut-modulus = J. Woodhouse and N. Lynch-Aird, Acta Acustica united with Acustica 105 (2019) 516
gut-spread = 1300 to 1320 kg/m³ in the sources at hand
pvdf-article = an encyclopaedia's article on polyvinylidene fluoride
as-nylon = taken as for nylon: fast moduli of the two are almost identical against stress (N. Lynch-Aird and J. Woodhouse, Materials 11 (2018) 2160, abstract); nylon's law is second-hand
stiffer-than-nylon = Source: to be found (stiffer than nylon throughout, Materials 11 (2018) 2160)
steel-density = a database of materials, ASTM A228; T. Rossing (ed.), The Science of String Instruments, 2010, p. 379 has the same
steel-loss = M. Norton and D. Karczub, Fundamentals of Noise and Vibration Analysis, 2nd ed., table 6.1: 1 to 6e-4 for structural steel; the upper end taken
steel-spread = 7800 to 7850 kg/m³ in the sources at hand
b103 = ASTM B103, alloy sheet for C51000
c26000 = a copper-alloy wire mill's sheet for C26000 round wire
c26000-modulus = a copper-alloy wire mill's sheet for C26000 round wire (110 to 112 GPa)
c26000-strength = a copper-alloy wire mill's sheet for C26000 round wire, spring temper
to-be-found = Source: to be found
red-brass-strength = Source: to be found (600 to 725 MPa; a supplier's sheet after ASTM B134 has 455 to 530 MPa for half-hard wire of 1.5 to 6 mm)
c23000 = a supplier's sheet for C23000, 20 to 300 °C
sterling = a precious-metal supplier's data for sterling silver
silver-modulus = Source: to be found (75 to 83 GPa)
sterling-hard = a precious-metal supplier's data for sterling silver wire, spring hard
iron-density = Source: to be found (7700 to 7870 kg/m³)
iron-modulus = Source: to be found (190 to 200 GPa)
iron-strength = Source: to be found (700 to 1100 MPa, rising as the gauge falls)
iron-expansion = a table of coefficients of expansion, pure iron, 0 to 100 °C
silk-sheet = a silk spinner's data sheet
silk-strength = a silk spinner's data sheet (500 to 600 MPa)
polyester-modulus = from Morton and Hearle, table 13.2: 10.6 N/tex, taking 1390 kg/m³
polyester-strength = from Morton and Hearle, table 13.2: 0.47 N/tex, taking 1390 kg/m³
nylon-falls = up to 1.0 mm from the breaking lengths of one string in an essay on harp strings and design (2020), taking 1150 kg/m³; beyond, no source: careful bound, falling as a pharmacopoeia's minima for catgut (from memory)
gut-falls = up to 0.7 mm the least of the measured products of pitch and length, 240 m/s on 0.40 mm gut (a gut string maker's note); beyond, careful bound, falling as a pharmacopoeia's minima for catgut (from memory)
fluorocarbon-falls = no source: careful bound, below tests of fluorocarbon line (626 to 848 MPa at 0.29 to 0.75 mm, a tester's page); beyond 0.75 mm falling as a pharmacopoeia's minima for catgut (from memory)
nylon-flat = from the breaking lengths of one string in an essay on harp strings and design (2020), taking 1150 kg/m³
gut-flat = the least of the measured products of pitch and length, 240 m/s on 0.40 mm gut (a gut string maker's note)
by-hand = entered by hand

## Materials in short, as a cell names them

nylon = nylon
gut = gut
fluorocarbon = fluorocarbon
steel = steel
bronze = bronze
yellow-brass = yellow brass
red-brass = red brass
copper = copper
silver = silver
iron = iron
silk = silk
polyester = polyester
