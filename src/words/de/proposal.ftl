# Was die Suche vorschlägt: Saiten, Längen, beides.

no-gain = Kein Gewinn, für den sich das Versetzen der Stifte lohnt
no-gain-because = Diese kommen dem Soll im Mittel um weniger als { $mean } % und höchstens um { $most } % näher, und dafür lohnt es nicht, Stifte zu versetzen (Grenzen für dieses Projekt gewählt, ohne Quelle).
no-gain-set = Kein Gewinn, für den sich andere Saiten lohnen
no-gain-set-because = Dies ist der beste Satz, doch er kommt dem Soll im Mittel um weniger als { $mean } % und höchstens um { $most } % näher, und dafür lohnt es nicht, Saiten zu wechseln (Grenzen für dieses Projekt gewählt, ohne Quelle).
nearest = Der nächstliegende Satz
best-within = Der beste Satz innerhalb der Grenzen
best = Der beste Satz
no-lengths = Keine anderen Längen
lengths = Andere Längen
lengths-there = Die Saiten haben diese Längen schon.
ended = { $count ->
    [one] Nach { $count } Runde
   *[other] Nach { $count } Runden
} kommen weder andere Saiten allein noch andere Längen allein näher. Das muss nicht das Beste von allem sein.
no-both = Keine anderen Saiten oder Längen
both = Saiten und Längen zusammen
frame = Rahmen, das Ungünstigste des Beurteilten, geschätzt
span-one = Saite { $name }
span = Saiten { $first } bis { $last }
stiffness = Zupfhärte
tension = Zugkraft
