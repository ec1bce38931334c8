### Not yet read by a native potter.

none-like-that = Ninguna pieza coincide. Quitar un filtro.
none-with-code = Ninguna pieza tiene este código.
first-of-more = { $shown ->
    [one] La { $shown } esmaltada al final. Desplazar para ver más.
   *[other] Las { $shown } esmaltadas al final. Desplazar para ver más.
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
came-out = Resultado
any-answer = Cualquier resultado
answer = { $answer ->
    [thin] Fino en alguna parte
    [right] Correcto en alguna parte
   *[thick] Grueso en alguna parte
}
liking = Valoración
any-liking = Cualquier valoración, o ninguna
stars = { $stars } de 5
control = Pieza de referencia
any-control = Piezas de referencia y otras
only-control = Solo piezas de referencia
glazed-when = { $when ->
    [month] En los últimos 30 días
    [year] En los últimos 365 días
   *[before] Hace más tiempo
}
laydown-between = { $from } a { $to }
laydown-under = Menos de { $to }
laydown-from = { $from } o más
