### Not yet read by a native potter.

new = Piezas sin pesar
title = Pieza
remove = Quitar esta pieza
name-hint = Tetera, o de quién es
code = Código o marca en el pie
code-help = Con él se encuentra la pieza.
is-weighed = Este código es de una pieza pesada: { $piece }. Marcarla en la lista de piezas en espera.
no-form = Ninguna de mis formas
form-help = La forma le da su tamaño en la placa.
how-many = Cuántas
which-shelf = Placa
shelf = Placa { $number }
pieces-impossible = Añadir de 1 a { $most } piezas a la vez.
name-or-code = Dar un nombre, un código o una forma.
added = { $pieces ->
    [one] { $pieces } pieza en la placa { $shelf }.
   *[other] { $pieces } piezas en la placa { $shelf }.
}
