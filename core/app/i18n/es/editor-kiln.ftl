### Not yet read by a native potter.

new = Horno nuevo
title = Horno
archive = Archivar este horno
name-hint = Horno del jardín
round = Placas redondas
across-round = Diámetro de las placas
across = Anchura de las placas
deep = Fondo de las placas
shelves = Número de placas
shelf-impossible = Una placa mide entre 5 cm y 3 m. Revisar la cifra y la unidad.
shelves-impossible = Un horno lleva de 1 a { $most } placas. Escribir un número entero.
