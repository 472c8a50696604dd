# The numbers, explained: keys.

keys-lead = Which keys a harp plays from its open tuning, what its levers or pedals raise for each, and which strings stand in the way.
formula-letter-raised = a letter is raised by
formula-every-string-can-follow = and every string of it can follow, if
keys-lever-or-single-disc = A lever or a single disc raises a string by one semitone, two discs by two.
keys-each-string-sounds-own = Each string sounds its own letter. F sharp major and G flat major are two keys, as their letters differ.
keys-levers-set-discs-letter = Levers are set one by one. Discs of one letter turn together, as one pedal moves them.
keys-minor-key-natural-notes = The minor key is the natural one, with the notes of the major key beside it. Other scales need more levers.
keys-string-without-lever-or = A string without a lever or disc may be tuned by hand for a piece; the table says which ones these are.
keys-says-nothing-tension-much = It says nothing about tension: the findings say what a string carries when it is raised.
