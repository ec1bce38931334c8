### Not yet read by a native potter.

new = Ungewogene Stücke
title = Stück
remove = Dieses Stück entfernen
name-hint = Teekanne, oder wem es gehört
code = Code oder Zeichen am Fuß
code-help = Damit lässt sich das Stück wiederfinden.
is-weighed = Diesen Code hat ein gewogenes Stück: { $piece }. In der Liste der wartenden Stücke ankreuzen.
no-form = Keine meiner Formen
form-help = Eine Form gibt ihm seine Größe auf der Platte.
how-many = Wie viele
which-shelf = Platte
shelf = Platte { $number }
pieces-impossible = Auf einmal 1 bis { $most } Stücke hinzufügen.
name-or-code = Einen Namen, einen Code oder eine Form angeben.
added = { $pieces ->
    [one] { $pieces } Stück auf Platte { $shelf }.
   *[other] { $pieces } Stücke auf Platte { $shelf }.
}
