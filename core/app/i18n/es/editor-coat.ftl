### Not yet read by a native potter.

title = Corregir esta capa
piece = Pieza
piece-of-its-own = Una pieza aparte
only-coat = Es la única capa de { $piece }, que está en una cocción o tiene fotos. Corregir la zona o el peso, o sacarla antes de la cocción.
zone = Zona
bucket = Esmalte, cubo
net = Capa según la báscula
added = Añadido en un retoque
rubbed-off = Frotado
touch-up-help = Lo que se añadió con pincel o se frotó después de pesar. Dejar vacío si nada.
wet-and-verdict = { $wet } en total: { $verdict }.
corrected = Capa corregida. Su historial muestra cómo era.
hand = Quién esmaltó
dip = Inmersión o vertido, segundos
dip-help = Desde que entra hasta que sale. Cuatro capas de un cubo dan una idea de cuánto.
dip-impossible = Una inmersión dura de 0,5 a 600 segundos.
