### Not yet read by a native potter.

add-to-weigh = Erst eine Form, eine Glasur und eine Waage hinzufügen. Dann lässt sich ein Stück wiegen.
no-area-to-glaze = „{ $form }“ hat keine Fläche zum Glasieren. Unter Werkstatt öffnen und eine angeben.
form = Eine Form
form-help = Eine Form, die immer wieder gedreht wird, und wie viel sie fasst.
glaze = Eine Glasur
glaze-help = Name, Empfindlichkeit gegen die Dicke und die Dichte im Eimer.
scale = Eine Waage
scale-help = Höchstlast und Teilung.

net = Auftrag, nach dem Tarieren
bare = Unglasiertes Stück
glazed = Glasiertes Stück

glaze-and-bucket = { $glaze }, { $bucket }
tolerance = ±{ $tolerance } wird akzeptiert: { $glaze } steht auf „{ $sensitivity ->
    [low] gutmütig
    [high] empfindlich
   *[medium] normal
}“.

no-sg-yet = { $bucket } hat noch keine Dichte: { $sg } wird angenommen, und das Ziel ist nur so gut wie sie. Den Eimer prüfen.
old-sg = Dichte zuletzt geprüft: { $when }. Umrühren und den Eimer prüfen: Glasur dickt ein und setzt sich ab.
impossible-density = Die Pulverdichte von „{ $glaze }“ ist unmöglich, darum rechnet laydown mit { $density }. In der Glasur berichtigen.

next-inside = Innenseite dieses Stücks
next-outside = Außenseite dieses Stücks
saved = Gespeichert: { $form }, { $zone }, { $wet }, { $verdict }.
saved-with-code = Gespeichert: { $form }, { $zone }, { $wet }, { $verdict }. { $code } mit Bleistift auf den Fuß schreiben.

some-form = Unbekannte Form
nothing-today = Heute noch nichts gewogen.
today = { $coats ->
    [one] Heute 1 Auftrag, davon { $within } passend.
   *[other] Heute { $coats } Aufträge, davon { $within } passend.
}
