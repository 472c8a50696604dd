# The tuner: what it shows, and what it cannot read.

title = Tuner
hint = Tune the harp with the microphone of this device.
private = The microphone is asked for when you press Listen, and let go when you press Stop or close this window. Nothing is recorded and nothing is sent.
listen = Listen
stop = Stop
recording = Hear a recording…

## How the harp is gone through

order = Order
any = Any string
one = One by one
as-planned = In the order of the plan
plan-hint = The plan, its order and its first rounds are under Settling. In its order the tuner goes on by itself when a string has stayed within its target for half a second: within 10 cents in rounds that end below pitch. Common practice, no source.
round-done = This was the last string of the round. Choose the next round.
now-sharp = For this round: { $cents } cents above pitch
now-flat = For this round: { $cents } cents below pitch
back = Back
next = Next
lever = Levers
open = Open
raised = Raised
discs = Pedals
discs-flat = Flat
discs-natural = Natural
discs-sharp = Sharp
each = Levers or pedals, string by string
tone = Reference tone
note-each = Note each string in the log
note-hint = The log is under Settling, and stays in this browser with the design. Of a string plucked several times in a row, only the last reading is kept.

## What is heard

off = Not listening
asking = Waiting for the microphone
listening = Listening
reading = Hearing the recording
heard-all = The recording is over: { $count ->
    [one] one note heard
   *[other] { $count } notes heard
}.
pluck-any = Pluck a string
pluck-one = Pluck string { $string }
unknown = No string of the harp
cents = { $cents } cents
flat = Too low
sharp = Too high
in-tune = In tune
tighten = Tighten: turn the pin { $degrees }°
let-down = Let down: turn the pin { $degrees }°
target = Target { $hz } Hz
fit = First partial by all partials: { $hz } Hz
first = First partial by itself: { $hz } Hz
first-weak = First partial by itself: too weak to hear
strings = All strings
not-heard = not heard yet
of-string = { $string }: { $cents }
heard-in-tune = in tune ({ $cents } cents)
meaning = Cents are from the string as the design has it: its note, the temperament, its levers. How far to turn the pin is worked out from the design, for a string that has settled. A string counts as in tune within { $cents } cents.

## What goes wrong

refused = The microphone was not allowed. Allow it for this page in the browser, or hear a recording instead.
no-microphone = No microphone can be heard. Connect one, or hear a recording instead.
not-here = What listens did not come. Check the connection, then press Listen again.
unread = { $name } cannot be heard: this browser does not read it. Save it as WAV.
no-strings = no string has a pitch to tune to (give the strings their notes)
no-wav = this is no WAV recording (save or export the recording as WAV, 16 or 24 bits)
wav-form = a WAV recording must have whole numbers of 8 to 32 bits or floating-point numbers, got { $bits } bits in another form (export it as WAV, 16 bits)
rate = a recording must have from { $least } to { $most } samples a second, got { $got } (export it at 44100 or 48000)
