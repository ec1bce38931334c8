### Not yet read by a native potter.

new = Báscula nueva
title = Báscula
archive = Archivar esta báscula
name-hint = Báscula de mesa
capacity = Capacidad
capacity-help = Marcada Max en su etiqueta.
step = División
step-help = Marcada d en su etiqueta: el menor cambio que muestra.
minimum = Mínimo, si se sabe
minimum-help = Marcado Min en su etiqueta.
repeatability = Repetibilidad, si se ha probado
repeatability-help = Pesar una pieza diez veces: la desviación estándar.
accurate-to = Una capa pesada tras tarar es exacta a ±{ $half-width }, 95 veces de cada 100.
