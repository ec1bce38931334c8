### Not yet read by a native potter.

choose = Elegir una pieza
control-piece = pieza de referencia
firing = Cocción
came-out = Resultado

glaze = { $zone ->
    [inside] Interior: esmalte
    [outside] Exterior: esmalte
   *[whole] Interior y exterior: esmalte
}
wet-weight = { $zone ->
    [inside] Interior: peso húmedo
    [outside] Exterior: peso húmedo
   *[whole] Interior y exterior: peso húmedo
}
laydown = { $zone ->
    [inside] Interior: gramaje
    [outside] Exterior: gramaje
   *[whole] Interior y exterior: gramaje
}
reading = { $zone ->
    [inside] Interior: veredicto
    [outside] Exterior: veredicto
   *[whole] Interior y exterior: veredicto
}
sg = { $zone ->
    [inside] Interior: densidad del cubo
    [outside] Exterior: densidad del cubo
   *[whole] Interior y exterior: densidad del cubo
}
glazed = { $zone ->
    [inside] Interior: esmaltado
    [outside] Exterior: esmaltado
   *[whole] Interior y exterior: esmaltado
}
