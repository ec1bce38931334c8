### Not yet read by a native potter.

three-detail = Le cône visé, un en dessous et un au-dessus
one-detail = Le cône visé seul
others = D’autres cônes
which = Quels cônes
which-hint = 5, 6, 7
no-such-cone = Il n’y a pas de cône { $cone }. Les cônes vont de 022 à 13.
type-cones = Indiquez les numéros des cônes.
did-you-mean = Vouliez-vous dire { $cones } ?
yes-meant = Oui, { $cones }
no-typed = Non, { $cones }
far-from-aim = { $cones } est loin du cône visé, { $aim }.
saved = Cônes témoins { $cones }.
none-saved = Aucun cône témoin.
