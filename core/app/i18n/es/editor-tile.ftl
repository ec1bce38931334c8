### Not yet read by a native potter.

new = Plaqueta de prueba nueva
title = Plaqueta de prueba
archive = Archivar esta plaqueta de prueba
name-hint = Plaqueta 12
area = Superficie esmaltada
area-help = Largo por ancho de lo esmaltado; las dos caras si se esmaltaron ambas.
net = Peso húmedo de la capa
dry = Peso seco de la capa
dry-help = Completamente seca. Mejor que el peso húmedo, si se esperó.
no-weight = Dar el peso seco, o el peso húmedo y la densidad.
size = Medida por
by-sides = Sus lados
by-area = Su superficie esmaltada
long = Largo
wide = Ancho
sides-help = De la cara esmaltada.
came-out = Resultado
came-out-help = Los objetivos usan una plaqueta solo después de cocida y si salió bien.
takes = Con densidad { $sg }, esta plaqueta lleva { $wet } para el objetivo de este esmalte, { $laydown }.
counts = { $result ->
    [right] Los objetivos usan esta plaqueta.
    [thin] Salió demasiado fina: los objetivos no la usan.
    [thick] Salió demasiado gruesa: los objetivos no la usan.
   *[not_fired] Los objetivos no la usan hasta que se cueza y salga bien.
}
coats = Capas
coats-help = De cuántas capas es su peso.
so-many-coats = { $coats ->
    [one] { $coats } capa
   *[other] { $coats } capas
}
compare-with = Comparar con una forma
no-form = Ninguna
as-thick-as = Tan grueso como { $wet } en { $form }, { $zone }.
planned = Previsto: { $wet } húmedo.
