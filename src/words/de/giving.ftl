# Wie weit die Saiten fallen, während eine Harfe bespannt wird und nachgibt.

nothing = wie der Rahmen nachgibt, lässt sich nicht berechnen: der Rahmen braucht Maße (in der Zeichnung unter „Hölzer“), die Saiten Längen, Aufbau und Zugkräfte, der Hals drei Saiten oder mehr und die Decke ein Holz, dessen Modul bekannt ist
meaning = Geschätzt: mindestens mit Verbindungen und Deckenrändern, die nicht nachgeben, und mit Saiten, die Wochen zum Dehnen hatten; höchstens mit { $joints ->
    [sized] Verbindungen, die doppelt so viel nachgeben, wie ihre Maße sagen
   *[none] einer Säule, die nur drückt, und einer Schulter, die sich frei dreht, da die Verbindungen keine Maße haben
}, mit Deckenrändern, die sich drehen, und mit Saiten, die Minuten hatten. { $soundbox ->
    [sized] Der Korpus gibt nach, wie seine Maße sagen.
   *[none] Der Korpus hat keine Maße: mindestens gibt er nicht nach, höchstens wie ein üblicher.
} Eine Decke, die sich um mehr als ihre Dicke hebt, gibt weniger nach, als der Höchstwert sagt. Was Holz, Leim, Knoten und Saiten noch kriechen, kommt dazu; die ersten Tage brauchen deshalb mehr Runden, als hier steht.
head-string = Saite
head-cents = Fällt, Cent
head-hz = Fällt, Hz
head-round-2 = Nach Runde 2, Cent
head-round-3 = Nach Runde 3, Cent
head-off = Fehlt sie, steigt eine andere, Cent
range = { $least } bis { $most }
slack = schlaff
string-noted = Saite { $number }, { $note }
string-numbered = Saite { $number }
strung-lowest-first = Wird von der längsten Saite an bespannt, jede gleich auf Tonhöhe, fallen die aufgezogenen, während die anderen folgen: am meisten { $string }, um { $cents } Cent.
strung-highest-first = Wird von der kürzesten Saite an bespannt, jede gleich auf Tonhöhe, fallen die aufgezogenen, während die anderen folgen: am meisten { $string }, um { $cents } Cent.
strung-middle-first = Wird von der Mitte nach außen bespannt, jede gleich auf Tonhöhe, fallen die aufgezogenen, während die anderen folgen: am meisten { $string }, um { $cents } Cent.
strung-in-turns = Werden Bass und Diskant im Wechsel bespannt, jede Saite gleich auf Tonhöhe, fallen die aufgezogenen, während die anderen folgen: am meisten { $string }, um { $cents } Cent.
rounds = Nach einer zweiten Runde liegt { $second-string } am weitesten daneben, um { $second-cents } Cent, und nach einer dritten { $third-string }, um { $third-cents }.
one-off = Fehlt eine Saite und sind alle anderen auf Tonhöhe, klingen diese zu hoch: ohne { $string } eine davon um { $cents } Cent. Zuerst die neue Saite aufziehen und auf Tonhöhe bringen: die Nachbarn kommen dann von selbst zurück. Erst danach nachstimmen.
