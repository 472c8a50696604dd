# What makes no section, panel, laminate or frame.

## Sections and pillars

section-side = the { $side } must be more than 0 mm, got { $got } mm (measure it again)
section-radius = the mean radius must be more than half of the depth ({ $half } mm), got { $got } mm (take a wider curve)
strut-number = the { $what } of a pillar must be above 0, got { $got } (give its size)

## Plywood and laminates

panel-plies = a panel must have from 1 to { $most } plies, got { $got } (count them at the edge)
panel-even = birch plywood must have an odd number of plies, 3 or more, got { $got } (count them at the edge)
panel-ply = ply { $number } must have a thickness above 0 and figures that are not negative (mend it)
panel-limp = at least one ply must have a modulus above 0 (give one)
laminate-layers = a laminate must have from 1 to { $most } layers, got { $got } (count them)
laminate-layer = layer { $number } must have a thickness above 0 and a wood whose moduli are known

## Frames

frame-number = every place and force must be a number, got one that is none in the { $what } (give it again)
frame-no-pulls = the neck must carry at least one string, got none (give a string with its tension)
frame-axis = the line of the neck must have two points or more, each away from the last, got { $got } (draw it again)
frame-pillar = the foot of the pillar must lie away from its top, got { $gap } mm (move the foot)
frame-aligned = the pillar must not point at the shoulder, got a line that passes { $gap } mm beside it (move the foot or the shoulder)

## What a sentence names

breadth = breadth
depth = depth
area = area
length = length
modulus = modulus
second-moment = second moment of area
distance-to-edge = distance to the edge
in-line = line of the neck
in-supports = supports
in-strings = strings
in-frame = frame
