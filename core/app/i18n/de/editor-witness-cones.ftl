### Not yet read by a native potter.

three-detail = Das Ziel, einer darunter und einer darüber
one-detail = Nur das Ziel
others = Andere Kegel
which = Welche Kegel
which-hint = 5, 6, 7
no-such-cone = Einen Kegel { $cone } gibt es nicht. Kegel gehen von 022 bis 13.
type-cones = Die Nummern der Kegel eingeben.
did-you-mean = Gemeint: { $cones }?
yes-meant = Ja, { $cones }
no-typed = Nein, { $cones }
far-from-aim = { $cones } liegt weit vom Ziel, Kegel { $aim }.
saved = Brennkegel { $cones }.
none-saved = Keine Brennkegel.
