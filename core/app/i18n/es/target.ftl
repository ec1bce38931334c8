### Not yet read by a native potter.

from-control = { $pieces ->
    [one] De la pieza de referencia de esta forma.
   *[other] De las piezas de referencia de esta forma.
}
from-control-by-area = { $pieces ->
    [one] De la pieza de referencia de “{ $form }”, por superficie esmaltada.
   *[other] De las piezas de referencia de “{ $form }”, por superficie esmaltada.
}
from-control-by-capacity = { $pieces ->
    [one] De la pieza de referencia de “{ $form }”, por capacidad.
   *[other] De las piezas de referencia de “{ $form }”, por capacidad.
}
from-tiles = De las plaquetas de prueba: { $laydown }.
from-start = Del valor inicial habitual de un esmalte: { $laydown }.
from-sides = Lo que llevan juntos el interior y el exterior.
from-import = Según lo anotado en la hoja de cálculo.

based-on-tiles = Basado en plaquetas de prueba; todavía en ninguna pieza.
based-on-nothing = Todavía no se basa en ninguna pieza. Guardar una que guste como pieza de referencia.
based-on-pots = { $pots ->
    [one] Basado en 1 pieza.
   *[other] Basado en { $pots } piezas.
}

first-guess = Primera estimación: la cantidad correcta puede estar en cualquier punto entre { $low } y { $high }.
most-likely = Lo más probable es que la cantidad correcta esté entre { $low } y { $high }.

no-area = “{ $form }” no tiene superficie esmaltada. Dar su capacidad o medir su superficie.
unusable-control = La pieza de referencia de “{ $form }” tiene un peso o una superficie imposible. Corregirla o elegir otra pieza de referencia.
unusable-tile = Una plaqueta de prueba de este esmalte tiene un peso o una superficie imposible. Corregirla o archivar la plaqueta.
nothing-to-go-by = laydown todavía no sabe lo grueso que debe ir este esmalte. Pesar una pieza que guste y guardarla como pieza de referencia.
no-number = Con la medida de esta forma y la densidad de este cubo no se puede calcular un objetivo. Revisar las dos.

tile-no-area = Dar la superficie de la cara esmaltada de la plaqueta.
tile-no-weight = Dar el peso de la capa en la plaqueta.
tile-too-much = Una plaqueta de este tamaño no puede llevar tanto esmalte. Revisar el peso y la superficie.
tile-is-thin = Esta plaqueta lleva solo el { $share } de lo que llevarán las piezas, así que los objetivos no la usan. Esmaltar una más gruesa.
