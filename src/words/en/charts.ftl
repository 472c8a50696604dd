# The curves, the strings to scale, and what lies over the drawing.

## Curves

no-strings = No strings yet
no-figure = No string has this figure yet
breaks = breaks
string = string
compared = for comparison
range = tolerance
metals-to = { $words }, metals to { $percent }

## The legend

no-make-up = no make-up
weighed = weighed
weighed-of = { $material }, weighed
wound-of = { $material }, wound

## Strings to scale

no-lengths = No string has a length yet
to-scale = Lengths to scale

## Pictures

nothing-to-draw = There is nothing to draw yet. Give the strings their lengths first.
no-picture = This browser did not make the picture. Save it as SVG instead.

## What lies over the drawing

over-nothing = Nothing
over-measures = Dimensions
over-bend = Curvature
measures = Overall size, the longest and the shortest string, the soundboard and its angle, the neck near string { $string }.
measures-gaps = { $measures } Spacing square to the strings, bass and treble: { $gaps }.
bend-even = Longer ticks mean a tighter curve, each pin measured against its neighbours. No string stands out.
bend-kinks = Longer ticks mean a tighter curve, each pin measured against its neighbours. By its neighbours: { $kinks }.
looks-short = string { $string } looks { $by } too short
looks-long = string { $string } looks { $by } too long

## The loads of the neck

loads-forces = Forces on the frame
loads-moment = Bending moment
loads-shear = Shear
loads-axial = Force along the neck
loads-twist = Torque
loads-use = Share of the allowable stress
about-forces = Push of the pillar and force of the shoulder on the neck, and the line along which all strings pull together.
about-moment = Bending moment in the neck, drawn on the tension side.
about-shear = Shear in the neck. Below the centre line, the part nearer the pillar draws the rest towards the strings.
about-axial = Force along the neck: a pull above the centre line, a push below it.
about-twist = Torque in the neck from the strings beside it.
about-use = Share of the allowable stress at each cut of the neck.
area-pushes = The area is for a pillar that only pushes, the dashed line for joints that do not give.
area-joints = The area is for joints that give twice as much as their sizes say, the dashed line for joints that do not give.
forces-pushes = Drawn for a pillar that only pushes.
forces-joints = Drawn for joints that give twice as much as their sizes say.
then-at-most = { $about } In that case at most { $value }.
limit = limit
arrow-pillar = Pillar
arrow-shoulder = Shoulder
arrow-all = All strings { $force }
