### Not yet read by a native potter.

no-bucket = Todavía no hay cubos. Añadir un esmalte: su primer cubo viene con él.
stir-and-check = Remover hasta el fondo y comprobar la densidad antes de las próximas piezas.
sg-not-checked = Densidad sin comprobar

checked-and-coats = { $coats ->
    [one] Comprobado { $when }, 1 capa desde entonces
   *[other] Comprobado { $when }, { $coats } capas desde entonces
}
coats-so-far = { $coats ->
    [one] 1 capa hasta ahora
   *[other] { $coats } capas hasta ahora
}

powder-by-weight = Polvo en peso
dry-in-litre = Esmalte seco por litro
dry-in-bucket = Esmalte seco en el cubo

flow = { $seconds } s en la copa de flujo
flow-in = { $seconds } s, { $cup }
volume = En el cubo ahora
expected-sg = Densidad esperada hoy
check-due = Próxima comprobación
now = Ahora
in-days = { $days ->
    [one] En { $days } día
   *[other] En { $days } días
}
evaporation = Evaporación
each-open-day = { $volume } por cada día abierto
pieces = { $pieces ->
    [one] { $pieces } pieza más
   *[other] Unas { $pieces } piezas más
}
changed-since = Desde la última comprobación entró o salió agua o esmalte seco. Comprobar la densidad antes de las próximas piezas.
entry = { $what }: { $amount }
