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
repeatability-help = Pesar una pieza diez veces: ver Pruebas de báscula en el taller.
accurate-to = Una capa pesada tras tarar es exacta a ±{ $half-width }, 95 veces de cada 100.
class = Clase de exactitud, si está marcada
class-help = I, II, III o IIII en su etiqueta.
no-class = Ninguna
