# The stringing card: how to replace a string, what to beware of, and what is still open.

## How to replace a string

steps = Replacing a string
step-find = Find the string in the table: the right note in the right octave. One octave out is the commonest mistake.
step-take-off = Wear eye protection. Let the old string down slowly, hold on to its coil, and pull out what is left.
step-knot = Knot the new string behind the soundboard. From middle C up, tie a short piece of thick string into the knot as a string anchor; wires come with their own.
step-lead = Thread it through its hole, past its bridge pin and into the tuning pin.
step-slack = Leave slack for a few turns on the pin; wire needs at least two.
step-turns = Leave slack for about { $turns } { $turns ->
    [one] turn
   *[other] turns
} on the pin; wire needs at least two.
step-side-by-side = Lay the turns side by side toward the neck, none over another.
step-pitch = Bring it up to pitch slowly, a little at a time.
step-settle = Retune daily until it holds: wire takes one to three days, gut a few days, nylon up to two weeks. Then trim the tail to about 12 mm.

## What to beware of

care = Take care.
cautions = Strings under tension can hurt. Wear eye protection, let tension down slowly, and keep your face out of the plane of the strings. Another gauge or material changes the load on the harp. Loads worked out for this design are estimates, not approval of a structure: local rules and qualified practice come first. If the soundboard, neck or pillar shows cracks or moves, ask a qualified maker before raising the pitch.

## What is open

findings = Findings still open: { $count }, { $count ->
    [one] on
   *[other] the most serious on
} string { $string }.
findings-gravest = Findings still open: { $count }. { $count ->
    [one] { $gravest }
   *[other] The most serious: { $gravest }
}
frame = Frame, share of the design allowance: { $lead }. Not everything is judged.

## The code and the marks

caption = Open this design in a browser
no-link = This card has no link. Keep the design file marked { $mark }.
long-link = The link to this design, { $count } characters, is too long for a printed code. Keep the design file marked { $mark }.
mark-c = C string
mark-f = F string
