### Not yet read by a native potter.

new = Pieza de referencia nueva
title = Pieza de referencia
archive = Archivar esta pieza de referencia
zone = Zona
net = Peso húmedo
net-help = Lo que una buena capa sumó en la báscula, leído enseguida.
weighs-nothing = Una buena capa pesa algo. Pesar la pieza antes y después de esmaltar.
too-much = Esta forma no puede llevar tanto esmalte. Revisar el peso y la forma.
in-use = Guardado. Los objetivos ya la usan.

no-longer = Dejar de usar como pieza de referencia
note = Por qué está bien
note-hint = Rompe en marrón en el borde
wet-at-sg = { $glaze }: { $wet } en húmedo con densidad { $sg }.
laydown = { $laydown }.
weighed = Pesado: { $moment }.
