# Sizes that are pulled in the three sides of the harp.

pillar-width = Width of the pillar, along the harp
pillar-depth = Depth of the pillar, across the harp
neck-thickness = Thickness of the neck
board-low = Width of the soundboard at the lowest string
board-high = Width of the soundboard at the highest string
depth-low = Depth of the soundbox at the lowest string
depth-high = Depth of the soundbox at the highest string
back-rise = Rise of the back at its lower end
hole-length = Length of the sound holes
hole-width = Width of the sound holes
feet = Height of the feet
knee-block = Height of the knee block
size = { $what }: { $size } mm
hint = Drag a square to change what it stands on; with the Alt key in steps of 0.1 mm. On the keyboard: Tab to it, then the arrow keys, Shift for 10 mm.
stops = No farther: { $why }.
