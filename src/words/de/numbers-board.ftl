# Die Zahlen, erklärt: was eine Saite mit der Decke macht.

angle = Alle Saiten treffen die Decke im selben Winkel: { $angle } Grad, wenn nichts anderes eingestellt ist. Gemessen wird zwischen der Saite und der Linie, auf der die Saiten die Decke verlassen.
flat = Die Decke ist eben. Hebt sie sich unter den Saiten, wird der Winkel etwas größer.
whole = Die Saite verlässt die Decke mit voller Zugkraft; was eine Saitenleiste oder eine Hülse aufnimmt, bleibt außer Betracht.
share = So genau wie Zugkraft und Winkel.
lift-lead = Der Teil der Zugkraft, der senkrecht zur Decke steht und sie hebt. Die Decke muss die Summe tragen, und den Hub auf jedem Stück ihrer Länge.
lift-degrees-degree-more-or = Bei 34 Grad macht ein Grad mehr oder weniger etwa 2,6 % des Hubs aus.
along-board-lead = Der Teil der Zugkraft, der an der Decke entlangläuft, zum Diskant hin. Saitenleiste und der Leim darunter müssen ihn tragen.
along-board-degrees-degree-more-or = Bei 34 Grad macht ein Grad mehr oder weniger etwa 1,2 % davon aus.
