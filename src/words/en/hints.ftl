# Short answers to the questions that a figure, a field or a finding raises: each stands behind a small button beside it.

clear = Clear, hide this
again = Show all hints again
again-done = The hints are back: look for a small ? beside a figure, a field or a finding.

## Figures

feel = What is feel?
feel-is = The force that your finger meets for each millimetre it pulls the string aside. An even run matters more than the number itself: where it jumps, one string feels hard or soft beside the next.
load-share = What is load share?
load-share-is = The tension as a share of the load that breaks the string: at 100 % it breaks. A thicker plain string bears more, but it also pulls harder by almost the same factor: length, note and material decide its share.
margin = What is margin?
margin-is = How many semitones the string could be tuned up before it breaks. It is the load share in other words: 12 semitones are a share of 25 %, 6 are 50 %, 2 are about 80 %.
stretch = Why does stretch matter?
stretch-is = The string gets this much longer on its way from slack to pitch, and the pin has to wind it up. Pull the slack through by hand first. New nylon and gut go on stretching for days, so tune them again and again (common practice, no source).
turns = What do the turns of the pin tell me?
turns-is = These turns only take up the stretch. If they are more than the cut length allows for, pull more of the string through by hand, use a thicker pin, or cut the string longer.
partial = What do sharp partials do?
partial-is = A stiff string sounds its higher tones too sharp. A little is colour; much of it sounds false, and the string is hard to tune. Thinner, longer, or wound on a thin core, it sounds truer.
tolerance = What does ± mean?
tolerance-is = How far the figure may be off because gauge, density, length and pitch are never exactly as typed. It is what to expect, not the worst case.

## The frame

range = Why are there two figures?
range-is = Wood, glue and joints differ. The first figure assumes the kindest case, the second the harshest. If only the second is above 100 %, find out more about that part: the sizes of its joints narrow the range.
joint = What do the sizes of a joint change?
joint-is = Every joint gives a little under load. How much follows from its tenon, its dowels, bolts or screws, and its plates. A stiff joint hands the bending on to pillar and soundbox; a soft one leaves it in the neck, and the strings fall further while you tune. A joint without sizes is taken both as rigid and as a hinge.
falls = Why do strings fall while others come up?
falls-is = The frame is a spring: every string that you tune up bends it a little, and the strings that were at pitch go flat. So a new harp takes several rounds. Come up evenly, over days.

## Choosing and ordering

target = What is the target curve?
target-is = How each string should feel, from bass to treble. Start from what is on the harp, then smooth out what jumps. The search comes as near to the curve as the stock and your limits allow.
weights = What are the weights for?
weights-is = No stock meets every wish. Where two wishes conflict, the one with more weight wins.
spares = Which strings need spares?
spares-is = The thin ones in the treble and those with a high load share break most often (common practice, no source).
standing = What does "from memory" mean?
standing-is = Nobody has checked this figure in its source yet. Before a harp depends on it, weigh and break a piece of your own string and enter what you find.

## Findings

breaking = What does it mean if a string breaks in the figures?
breaking-is = At this note and length its material is not strong enough. A thicker string does not help, as it also pulls harder. Do not tune it up: shorten it, lower the note, or choose another material.
loaded = Is a high load share dangerous?
loaded-is = The nearer a string is to breaking, the sooner it breaks: while it is tuned, or when the room gets damp or dry. When it breaks, its ends fly. Below the limit it lasts longer; the limit is yours, under Instrument.
slack = What is wrong with a low load share?
slack-is = A string far below what it bears sounds dull, and each small pull moves its pitch. It will not break: whether you accept it is up to your ear.
light = What is wrong with little tension?
light-is = The string gives too much under the finger: it swings wide, hits its neighbour and goes sharp when it is plucked hard.
core = Why is a thin core a problem?
core-is = Only the core carries the tension; the winding just adds weight. A thin core under a thick winding is hard to make and breaks early (common practice, no source).
order-of-gauges = Why should gauges grow towards the bass?
order-of-gauges-is = Within one material, a gauge that goes back is often a slip of the pen. If it is meant, leave it.
length = Why does a length out of line matter?
length-is = The bridge pins follow a smooth curve, so a length that leaves the line is often a slip of the tape. Measure that string again before you change its gauge: all its figures follow from its length.
note = Why does the note come first?
note-is = All figures follow from the note: with a wrong one, the other findings on this string say nothing. Set the note right first.
feels-off = Do I have to mend the feel?
feels-off-is = No. The range is yours, under Instrument. A string outside it plays, but it feels soft or stiff beside what you asked for.
jump = What does a jump in feel do?
jump-is = Where nylon meets gut, or plain strings meet wound ones, the finger notices a step. A small one is normal; a large one disturbs quick passages. Another gauge on either side of the change evens it out.
raise = Why can a lever be too near the pin?
raise-is = Levers and discs need room for their own body beside the bridge pin. On the shortest strings a semitone lies nearer to the pin than that.
part-over = Is the harp going to break?
part-over-is = It may, in time. 100 % is what a part may carry for good, with safety, not where it breaks; above it a part creeps, opens or breaks in the end, and one that gives way does so at once. Make it stronger or take tension off before you build. The loads show which part it is.
unread = Why is something not worked out?
unread-is = Something is missing or cannot be read. What was typed stays in its cell; until it is mended, this string is left out of the totals and of the frame's load.
