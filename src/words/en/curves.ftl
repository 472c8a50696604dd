# The curves and the strings to scale.

tolerances = Tolerances
curves-label = Curves across the compass, bass at the left. The string chart holds the same figures.
band-label = The strings side by side, lengths to scale. The string chart holds the same lengths.
at-most-five = At most five at once.
save-svg = Save as SVG
save-png = Save as PNG
curves = Curves

## The curves in words and figures

told-open = In words and as a table
told-window = The curves in words and figures
told = { $name }: from { $low } at string { $low-string } to { $high } at string { $high-string }.
told-flat = { $name }: { $value } at every string.
told-unknown = { $name }: no string has this figure yet.
told-even = It has no jump.
told-jumps = { $count ->
    [one] It jumps { $places }.
   *[other] It jumps at { $count } places: { $places }.
}
told-jump = from string { $upper } to { $lower }, from { $from } to { $to }
told-outside = { $count ->
    [one] 1 string lies outside what you allow.
   *[other] { $count } strings lie outside what you allow.
}
told-table = The figures of the curves
told-string = String
told-more = Other curves come into the table when they are chosen under Curves.
