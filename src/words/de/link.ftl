# Der Link zu einem Entwurf.

title = Link zu diesem Entwurf
copied = Link kopiert ({ $count } Zeichen). Wer ihn öffnet, sieht genau diesen Entwurf; nichts geht an einen Server.
length = { $count } Zeichen. Nichts geht an einen Server.
none = Dieser Entwurf hat keinen Link: { $why }.
no-clipboard = Der Browser hat die Seite nicht an die Zwischenablage gelassen. Den Link markieren und kopieren.
one-version = Wer den Link öffnet, sieht genau diesen Entwurf. Eine Fassung lässt sich zum Vergleich mitschicken.
version = Fassung, die mitgeschickt wird
without = keine
link = Link
copy = Link kopieren
