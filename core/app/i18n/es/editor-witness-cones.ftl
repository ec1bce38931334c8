### Not yet read by a native potter.

three-detail = El objetivo, uno por debajo y uno por encima
one-detail = Solo el objetivo
others = Otros conos
which = Qué conos
which-hint = 5, 6, 7
no-such-cone = No hay cono { $cone }. Los conos van del 022 al 13.
type-cones = Escribir los números de los conos.
did-you-mean = ¿Son { $cones }?
yes-meant = Sí, { $cones }
no-typed = No, { $cones }
far-from-aim = { $cones } está lejos del objetivo, cono { $aim }.
saved = Conos testigo { $cones }.
none-saved = Sin conos testigo.
