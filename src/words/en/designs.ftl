# The designs that this browser keeps, the bin and the backup.

gone = it is no longer kept in this browser
spoilt = { $name } cannot be read: { $why }; it stays as it is under Designs
name-lost = a design that has lost its name
quoted = "{ $title }"
unopened = cannot be opened: { $why }
day-and-time = { $day } at { $time }
states-refused = this browser did not take the earlier states in it
for-client = { $title }, for { $client }
empty-chart = Empty chart
harp-of = Harp of { $strings }
strings = { $count ->
    [one] { $count } string
   *[other] { $count } strings
}
strings-between = { $strings }, { $low } to { $high }
not-opened = That design was not opened: { $why }.
not-done = That did not work: { $why }.
copy-of = { $title } (copy)
not-saved = It was not saved: { $why }.
title = Designs kept in this browser
on-this-device = They stay on this device. Save a design as a file, or all of them as a backup, to keep them safe or to move them.
find = Find by name
none-yet = None yet. A design is kept here as soon as you change it.
changed-on = { $strings }, changed on { $day }
new-name = New name
rename = Rename
leave-it = Cancel
duplicate = Duplicate
save-as-is = Save as it is
open-now = open now
delete = Delete
delete-hint = Moves it to the bin below
bin = Bin
bin-days = A design stays here for { $days } days.
left-unchanged = The new harp that you left unchanged is now in the bin, under Designs.
delete-for-good-asked = Delete this design for good?
put-here-on = { $strings }, moved here on { $day }
put-back = Put back
delete-for-good = Delete for good
no-backup = No backup was made: { $why }.
taken-in = { $new ->
    [one] Loaded from the backup: { $new } design.
   *[other] Loaded from the backup: { $new } designs.
} { $known ->
    [one] { $known } was here already.
   *[other] { $known } were here already.
}
not-taken-in = The backup was not loaded: { $why }.
backup = Backup
backup-hint = One file with all designs and their earlier states, the bin and the stock lists. Loading one changes nothing that is here: what differs is put beside it.
save-backup = Save a backup
take-in = Load a backup
room = Stringloft and what it keeps take { $used } MB of the { $most } MB this browser allows.
little-room = Little room is left: save a backup, and empty the bin.
room-runs-out = Room for designs runs out in this browser. Under Designs, save a backup, then empty the bin and delete what you no longer need here: without room nothing more can be kept.

sort-by = Sort by
by-date = last changed first
by-name = name

## Earlier states of a design

states = Earlier states
states-hint = As this browser kept it automatically
no-states = No earlier states yet.
open-new = Open as a new design
open-new-of = Open as a new design, as it was on { $when }
opened = Opened as it was on { $when }, as a new design. The other one stays as it is.
unread = That state cannot be read: { $why }.
