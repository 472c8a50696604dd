# Die Kurven und die Saiten im Maßstab.

tolerances = Toleranzen
curves-label = Kurven über den Umfang, der Bass links. Die Saitentabelle enthält dieselben Werte.
band-label = Die Saiten nebeneinander, die Längen im Maßstab. Die Saitentabelle enthält dieselben Längen.
at-most-five = Höchstens fünf auf einmal.
save-svg = Als SVG speichern
save-png = Als PNG speichern
curves = Kurven

## The curves in words and figures

told-open = In Worten und als Tabelle
told-window = Die Kurven in Worten und Zahlen
told = { $name }: von { $low } bei Saite { $low-string } bis { $high } bei Saite { $high-string }.
told-flat = { $name }: { $value } bei jeder Saite.
told-unknown = { $name }: noch keine Saite hat diesen Wert.
told-even = Ohne Sprung.
told-jumps = { $count ->
    [one] Ein Sprung: { $places }.
   *[other] { $count } Sprünge: { $places }.
}
told-jump = von Saite { $upper } zu { $lower }, von { $from } auf { $to }
told-outside = { $count ->
    [one] 1 Saite liegt außerhalb des Erlaubten.
   *[other] { $count } Saiten liegen außerhalb des Erlaubten.
}
told-table = Die Werte der Kurven
told-string = Saite
told-more = Andere Kurven kommen in die Tabelle, wenn sie unter „Kurven“ gewählt sind.
