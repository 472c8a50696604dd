# Proben eines Materials: was abgelesen wird, und was es ergibt.

## Wiegen

weighing = Aus einer Wägung
weighing-advice = Ein langes Stück blanke Saite wiegen und den Durchmesser an mehreren Stellen messen. Der Durchmesser zählt doppelt, er entscheidet also, wie gut die Angabe ist. Die Masse mit g/m schreiben, wenn diese bekannt ist; die Länge wird dann nicht gebraucht.
length = Länge
mass-g = Masse, g
diameter = Durchmesser
length-error = ± Länge, mm
mass-error = ± Masse, g
diameter-error = ± Durchmesser, mm
of-length = Länge
of-mass = Masse
of-mass-like = 12.3 g, oder 1.23 g/m
of-mass-per-metre = Masse je Meter
of-error = Fehler einer Ablesung
of-mass-error = Fehler der Masse
density-off = { $density } ± { $off } kg/m³ (± { $percent } %)
weighed-source = gewogen: { $mass }, { $size }
weighed-length-source = gewogen: { $mass } auf { $length }, { $size }

## Reißen

breaking = Aus einer Reißprobe
breaking-advice = Die Last schreiben, bei der jede Saite gerissen ist, mit Semikolon dazwischen. Die schwächste zählt. Eine reißende Saite peitscht und verletzt: Schutzbrille tragen, das Gesicht aus der Ebene der Saite halten, beiseite stehen, andere fernhalten, und die Last nur ein kurzes Stück auf etwas Weiches fallen lassen.
loads = Lasten beim Riss
of-load-at-break = Last beim Riss
of-number-of-loads = Anzahl der Lasten
one-string = { $least } MPa, aus einer Saite: mehrere reißen, denn Saiten sind verschieden
several-strings = niedrigste { $least } MPa von { $count } Saiten (Mittel { $mean }, Standardabweichung { $deviation } MPa)
breaking-source = Reißprobe: niedrigste von { $count } { $count ->
    [one] Saite
   *[other] Saiten
}, { $load } bei { $size }

## Dehnen

stretching = Aus einer Dehnprobe
stretching-advice = Eine Last an ein langes Stück hängen, eine bekannte Last dazugeben, und ablesen, um wie viel eine gemessene Länge wächst. Für den Modul über Minuten nach Minuten ablesen, für den über Wochen nach Wochen. Weit unter der Bruchlast bleiben. Die Saite kann trotzdem reißen: Schutzbrille tragen, das Gesicht aus ihrer Ebene halten, beiseite stehen, und die Last nur ein kurzes Stück auf etwas Weiches fallen lassen.
load-added = Last dazu
grows-by = Wächst um
measured-length = Gemessene Länge
of-lengthening = Dehnung
stretching-source = Dehnprobe: { $load } mehr, { $stretch } auf { $length }, { $size }
