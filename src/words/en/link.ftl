# The link to a design.

title = Link to this design
copied = Link copied ({ $count } characters). Whoever opens it sees this very design; nothing is sent to a server.
length = { $count } characters. Nothing is sent to a server.
none = This design has no link: { $why }.
no-clipboard = The browser did not let the page use the clipboard. Select the link and copy it.
one-version = Whoever opens the link sees this very design. You can send one version along, for comparison.
version = Version to send along
without = none
link = Link
copy = Copy the link
