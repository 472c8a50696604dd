# Told before the program runs, and when it has stopped: by the scripts of src/shell, in this order.

about = Design the strings of a harp: lengths, gauges, tensions, and the papers for the bench.
opening = Opening the workshop…
old = This browser is too old for Stringloft, or forbids WebAssembly. Update it, or use another one.
newest-failed = The newest version of Stringloft did not start. Reload the page: the version before it opens. Your saved designs are untouched.
stopped-opening = Stringloft stopped while opening. Reload the page. Your saved designs are untouched.
part-missing = A part of Stringloft did not arrive. Check the connection, then reload the page.
part-damaged = A part of Stringloft arrived damaged, perhaps amid an update: wait a minute, then reload the page. Your saved designs are untouched.
stopped = Stringloft has stopped. Reload the page. Your saved designs are untouched.
kept-at = Your design was last kept in this browser at { $clock }. What you did after that may be missing.
kept-as-opened = Your design is kept in this browser as it was when you opened it. What you did in this page may be missing.
kept-nothing = This browser keeps no copy of the design that was open.
open-kept = Open what was kept
save-kept = Save what was kept as a file
copy-report = Copy a report
copied = Copied. It holds the version, the browser and the error, and nothing of the design.
copied-with-design = Copied. It holds the version, the browser and the error, and the design.
not-copied = This browser does not let the report be copied.
open-empty = Open with an empty chart
with-design = with the design in the report
fault-head = Stringloft has stopped
fault = A fault in the program: what you did last did not work, and this page can do no more.
fault-again = If the same thing happens again, open with an empty chart, and open the file you saved from there. All your designs stay under Designs.
