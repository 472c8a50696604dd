# Die Zahlen, erklärt: Tonarten.

keys-lead = Welche Tonarten eine Harfe aus ihrer Grundstimmung spielt, was ihre Klappen oder Pedale für jede erhöhen, und welche Saiten im Weg stehen.
formula-letter-raised = ein Stammton wird erhöht um
formula-every-string-can-follow = und jede seiner Saiten kann folgen, wenn
keys-lever-or-single-disc = Eine Klappe oder eine einzelne Scheibe erhöht eine Saite um einen Halbton, zwei Scheiben um zwei.
keys-each-string-sounds-own = Jede Saite behält ihren Stammton. Fis-Dur und Ges-Dur sind zwei Tonarten, da ihre Stammtöne verschieden sind.
keys-levers-set-discs-letter = Klappen werden einzeln gestellt. Die Scheiben eines Stammtons drehen sich zusammen, denn ein Pedal bewegt sie.
keys-minor-key-natural-notes = Die Molltonart ist die natürliche, mit den Tönen der Durtonart daneben. Andere Leitern brauchen mehr Klappen.
keys-string-without-lever-or = Eine Saite ohne Klappe oder Scheibe kann für ein Stück von Hand umgestimmt werden; die Tabelle sagt, welche das sind.
keys-says-nothing-tension-much = Über die Zugkraft sagt sie nichts: wie viel eine Saite trägt, wenn sie erhöht ist, steht unter den Befunden.
