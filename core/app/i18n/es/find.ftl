### Not yet read by a native potter.

none-like-that = Ninguna pieza coincide. Quitar un filtro.
none-with-code = Ninguna pieza tiene este código.
too-many = { $shown ->
    [one] Solo se muestra la última pieza esmaltada. Añadir un filtro para ver otras.
   *[other] Solo se muestran las { $shown } últimas piezas esmaltadas. Añadir un filtro para ver otras.
}

form = Forma
any-form = Cualquier forma
glaze = Esmalte
any-glaze = Cualquier esmalte
fault = Defecto
any-fault = Con o sin defectos
firing = Cocción
any-firing = Cualquier cocción, o ninguna
glazed = Esmaltado
any-time = En cualquier momento
laydown = Gramaje
any-laydown = Cualquier gramaje
glazed-when = { $when ->
    [month] En los últimos 30 días
    [year] En los últimos 365 días
   *[before] Hace más tiempo
}
laydown-between = { $from } a { $to }
laydown-under = Menos de { $to }
laydown-from = { $from } o más
