# Tests of a material: what is read off, and what it gives.

## Weighing

weighing = From weighing
weighing-advice = Weigh a long piece of plain string and measure its diameter at several places. The diameter counts twice, so it decides how good the figure is. Write the mass with g/m if that is what you know; the length is then not needed.
length = Length
mass-g = Mass, g
diameter = Diameter
length-error = ± length, mm
mass-error = ± mass, g
diameter-error = ± diameter, mm
of-length = length
of-mass = mass
of-mass-like = 12.3 g, or 1.23 g/m
of-mass-per-metre = mass per metre
of-error = error of a reading
of-mass-error = error of the mass
density-off = { $density } ± { $off } kg/m³ (± { $percent } %)
weighed-source = weighed: { $mass }, { $size }
weighed-length-source = weighed: { $mass } of { $length }, { $size }

## Breaking

breaking = From a breaking test
breaking-advice = Write the load at which each string broke, with semicolons between them. The weakest counts. A breaking string whips and hurts: wear eye protection, keep your face out of the plane of the string, stand aside, keep others away, and let the load fall a short way onto something soft.
loads = Loads at break
of-load-at-break = load at break
of-number-of-loads = number of loads
one-string = { $least } MPa, from one string: break several, as strings differ
several-strings = lowest { $least } MPa of { $count } strings (mean { $mean }, standard deviation { $deviation } MPa)
breaking-source = breaking test: lowest of { $count } { $count ->
    [one] string
   *[other] strings
}, { $load } at { $size }

## Stretching

stretching = From a stretch test
stretching-advice = Hang a load on a long piece, add a known load, and read by how much a measured length grows. Read after minutes for the modulus over minutes, after weeks for the one over weeks. Stay well below the breaking load. The string may break all the same: wear eye protection, keep your face out of its plane, stand aside, and let the load fall a short way onto something soft.
load-added = Load added
grows-by = Grows by
measured-length = Measured length
of-lengthening = lengthening
stretching-source = stretch test: { $load } more, { $stretch } of { $length }, { $size }
