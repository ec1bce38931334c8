### Not yet read by a native potter.

nothing-known = Todavía no se sabe de ninguna cantidad que esté bien. Usar como pieza de referencia una capa que guste, o añadir una pieza de referencia en Taller.
intro = Las cantidades de abajo son para { $glaze } hoy, con densidad { $sg }.

the-form-gone-by = Las demás formas se basan en esta.
by-capacity = { $times } veces la superficie: caben { $ours } frente a { $theirs }, y la superficie crece con el volumen elevado a dos tercios.
by-area = { $times } veces la superficie: { $ours } frente a { $theirs }.
