# The numbers, explained: tolerance, materials, findings, notes.

tolerance-lead = How far a figure may be off, because no string is quite as thick, as heavy, as long, as well tuned or as warm as the design says.
formula-everything-worst-once = everything at its worst at once
tolerance-each-thing-moved-tolerance = Each thing is moved by its tolerance to either side while all else stays, and the whole string is worked out again. How far the figure moves is its effect.
tolerance-effects-combined-root-sum = The effects are combined as the root of the sum of squares, as they are independent.
tolerance-unless-you-set-others = Unless you set others, lengths are off by { $off-length } mm, the pitch by { $off-pitch } cents, the temperature since tuning by { $off-kelvins } °C and the push of a lever by { $off-push } mm. Where a material states none, its diameter is off by { $off-diameter } mm and its density by { $off-density } %.
tolerance-poor-where-figure-steps = Poor where a figure jumps, as a table of strengths does, and where a tolerance is a good part of the thing itself.
tolerance-tells-nothing-wrong-formula = It says nothing about what is wrong with a formula, a modulus or a strength.
tolerance-strings-harp-not-independent = The strings of a harp are not independent of each other: a material that is heavier is so in all of them.
tolerance-question-safety-take-worst = Where safety is the question, take the worst case.
materials-lead = What is known of each material, and how well. Verify what is from memory before you rely on it.
formula-modulus-under-stress = modulus under a stress
formula-breaking-load = breaking load
materials-nylon-fluorocarbon-gut-have = Nylon, fluorocarbon and gut have three moduli: in vibration (milliseconds), over minutes (levers, the tuning pin) and over weeks, creep included (the stretch). Metals have one for all.
materials-strength-least-source-gives = The strength is the lowest that a source gives for new material.
materials-you-enter-yourself-marked = What you enter yourself is marked as yours and stays with the design.
materials-batches-differ-string-weighed = Batches differ. A string that is weighed and measured is worth more than any table.
materials-nylon-settles-about-density = Nylon settles at about 97 % of the density it has before it is first stretched.
findings-lead = What the findings look for, and at what limits. The limits are yours: set them under Instrument.
formula-breaks = it breaks
formula-heard = ln Bₕ = { $slope } ln f − { $offset }
findings-grave-tension-over-breaking = Serious: the tension is over the breaking load.
findings-overworked-over-breaking-load = Overworked: over { $working } % of the breaking load, or over { $creeping } % where the core is gut or plastic, which gives way under a lasting load sooner than in a short test. Slack: under { $slack } %, where a string sounds dull and false. Low tension: under { $least } N.
findings-inharmonic-partial-more-than = Inharmonic: partial 8 is more than { $sharp } cents sharp, and the inharmonicity is more than { $times } times what listeners begin to hear at that pitch. Both must hold.
findings-thin-core-gauge-more = Thin core: the gauge is more than { $thin } times the core.
findings-feel-pluck-stiffness-outside = Feel: a pluck stiffness outside { $soft } to { $hard } N/mm. Jump: it changes by more than { $jump } % where the make-up changes.
findings-tight-lever-or-first = Tight: a lever or natural disc nearer than { $least-raise } mm to its bridge pin. Turns: bringing a string up to pitch takes more turns of its pin than the cut length allows; only the string that takes most is named.
findings-out-line-string-shorter = Out of line: a string is shorter than the next higher one; or it is thinner than the higher one of the same make-up, or sounds higher. Of the two, the one just changed is named; else the one without which the strings run on, or that lies further from the line of its neighbours.
findings-finding-hint-no-verdict = A finding is a hint, not a verdict. No findings does not mean that the harp holds: soundboard, neck and joints are not checked here.
findings-threshold-hearing-average-listeners = The threshold of hearing is an average of listeners in a laboratory. With real strings and their natural attack most people hear less.
pitch-lead = Notes have their scientific names: middle C is C4, and the number changes between B and C. As do ré mi they are counted so that middle C is do3; there is no octave 0. Harpists count octaves from the top, each from E down to F.
formula-pitch = pitch
formula-harpist-octave-c-d = the harpist's octave of C, D and E
formula-f-g-b = and of F, G, A and B
pitch-pythagorean-meantone-flat-sharp = In Pythagorean and meantone a flat and a sharp between the same two notes differ. The other temperaments have twelve pitches to the octave.
pitch-octaves-pure-not-stretched = Octaves are pure: they are not stretched for the inharmonicity of the strings.
pitch-cents-given-tenth-tuning = Cents are given to a tenth; a tuning device holds half a hertz at A4, which is 2 cents.
