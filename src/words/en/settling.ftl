# The days in which a new harp settles: the tuning sheet, the plan, the log, and strings weighed by ear.

title = Settling
hint = Bring the harp up in rounds, and see when it will hold.
sheet = Tuning sheet

## The tuning sheet

running = { $name } — tuning sheet
head-pitch = pitch
head-cents = cents
head-raised = raised to
head-stretch = stretch
head-pin = pin
head-turns = turns
head-round = round
keys = Keys, with what levers or pedals set
keys-some = A star: some strings of it cannot sound their note.
sheet-cents = Cents: how far the string is from equal temperament at the same A4, as a plain tuner shows it.
sheet-raised = Tune with levers open, pedals up and discs open. Raised to: what a lever or disc then makes of the string; with two discs, one and two semitones.
sheet-turns = Stretch and pin turns are from slack to pitch. What the string and its knot creep comes on top.
sheet-rounds = Go up in rounds: the first to a fourth below pitch, the second to a semitone below, the others to pitch. Write in how far off each string is when you come back to it.

## The plan

plan = Bring the harp up
order = Order
begin = First rounds
begin-two = A fourth, then a semitone below
begin-one = A semitone below
begin-none = None, to pitch at once
round = Round
round-below = Round { $number }, to { $semitones } { $semitones ->
    [1] semitone
   *[other] semitones
} below
round-at-pitch = Round { $number }, to pitch
string = String
tune-to = Tune to
sharp = Sharp, cents
pin = Turn the pin
left = Off after the round, cents
stretch = Stretch
cut-to = Cut to
mind = Mind
pin-turns = { $turns } turns
pin-degrees = { $degrees }°
range = { $least } to { $most }
table = The strings of the round, in order
rounds-needed = { $count } rounds bring every string to within { $cents } cents, before the strings themselves creep.
rounds-not-enough = After { $count } rounds some strings are still more than { $cents } cents off: the frame flexes too much for more to be worked out.
rounds-without = With no string tuned sharp it would take { $count } rounds.
not-foretold = How far strings fall while the others come up is not worked out: that needs a frame with all dimensions, and a soundboard whose stiffness is known. Go round until the strings hold.
left-out = Left out, as something about them is not known: { $strings }.
load-no-more = In this order the frame never carries more than with all strings at pitch: { $whole } % of its allowable load.
load-more = With part of the strings at pitch this order loads the frame to { $highest } % of its allowable load, against { $whole } % with all of them. The first rounds below pitch keep it lower.
easier = This order is easier on the frame: { $order }.
reach-limited = At its limit: comes short, and the next round makes up for it.
reach-no-room = At its highest load share: never tune it sharp.
reach-no-strength = Breaking load not known: never tune it sharp.
many-turns = Pull it through by hand first.
how = Sharp says how far above the end of the round a string is tuned, so that it comes down to it while the others follow. No string is tuned beyond half of what is left to breaking, beyond its highest load share, or more than 50 cents above pitch.
how-far = Off after the round is estimated, from the stiffest to the softest that the frame and the strings may be. Wait a day after each of the first rounds at pitch where strings are of gut or plastic. Common practice, no source.

## The log

log = Log
log-hint = Note how far off each string is, again and again. The readings stay in this browser with the design, and in its backup.
kind = What was done
heard = Heard
tuned = Tuned, left at
cents = Cents off
celsius = Temperature, °C
note = Note it
take-back = Take back the last line
log-empty = Nothing is noted yet.
bad-cents = Write the cents as a number from −2400 to 2400.
bad-celsius = Write the temperature as a number from −40 to 60, or leave it empty.
noted = Noted: { $string }, { $cents } cents.
taken-back = The last line is taken back.
nothing-taken = There is no line to take back.
log-full = The log is full.
not-kept = This browser does not keep the log: { $why }.
log-table = What the log says of each string
readings = Lines
last = Last, cents
rate = Cents a day now
holds = Holds within 5 cents for a week
holds-already = now
holds-from = from { $day }
holds-surely = from { $day }, at the latest { $latest }
holds-open = from { $day }; the latest cannot be foretold
holds-not = cannot be foretold yet
no-tuning = note a tuning first
no-reading = note a reading after its tuning
off-by = { $value } ± { $error }
slipped = { $string } fell by { $cents } cents all at once before { $when }: look whether its knot or its pin slips.
falls-faster = { $string } falls by { $cents } cents while time grows tenfold, its neighbours by { $beside }: its knot or its pin may slip little by little.
rises = { $string } rises by { $cents } cents while time grows tenfold: check its readings, the humidity, and whether its pin was knocked.
scatters = The readings of { $string } scatter by { $cents } cents, those of its neighbours by { $beside }: the string may be false.
law = The law: strings creep with the logarithm of time since they were tuned, counted from one minute; each retuning begins anew with what it added. From memory, no source. The ± holds 95 of 100 times. Nothing is foretold beyond ten times the time logged, and a string is compared only with three or more neighbours of its material.

## By ear

ear = Weigh a string by ear
ear-hint = Hang a weight on a plain or wound string of known length and note what it sounds. One load gives its mass per metre; a second, well apart, leaves out its stiffness and may give the modulus of a plain string.
ear-length = Vibrating length
ear-load = Load hung on
ear-pitch = Sounds, Hz
ear-second-load = Second load
ear-second-pitch = Sounds then, Hz
ear-diameter = Diameter of a plain string
of-pitch = pitch in hertz
ear-nothing = These readings give no string: loads and pitches must differ, and the greater load must sound higher.
weighs = { $value } ± { $error } g/m.
modulus-is = Modulus { $value } ± { $error } GPa.
modulus-not = Its stiffness is less than the doubt of the readings: no modulus.
ear-errors = Assumes errors of 0.5 mm of length, 0.5 % of load, 0.5 cents of pitch and 0.01 mm of diameter. A weight that falls, or a string that breaks, hurts: wear eye protection, hang it low over something soft, and keep feet and face away.
partials = Partials from the first up, Hz
partials-of = Compare with string
partials-say = Inharmonicity { $b } ± { $error } millionths, first partial { $first } Hz.
chart-says = The chart has { $b } ± { $error } millionths, by the tolerances of all but the modulus.
chart-agrees = They agree.
chart-softer = The string is stiffer than in the chart: its modulus or its gauge may be other than there.
chart-stiffer = The string is less stiff than in the chart: its modulus or its gauge may be other than there.
few-partials = Write { $count } partials or more, with a dash for one that was not heard.
