### Not yet read by a native potter.

title = Nota: { $glaze }, { $bucket }
remove = Quitar esta nota
what = Qué
volume = Cuánta agua
amount = Cuánto esmalte seco
amount-if-known = Cuánto, si se pesó
never-dosed = laydown solo lo anota. La dosis la dicen las pruebas propias y la ficha del fabricante.
weight = Peso del cubo con el esmalte
tare-bucket = Con el peso vacío de este cubo, su peso es un volumen.
level = Nivel sobre el fondo
level-help = Medir desde el fondo hasta el esmalte.
level-is = Son { $volume }.
measure-bucket = Con el ancho de este cubo, un nivel es un volumen.
date = Día
note = Nota
dust = El esmalte seco es polvo: usar protección respiratoria, echarlo al agua, limpiar en húmedo.
saved = Anotado para { $bucket }.
