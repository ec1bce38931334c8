### Not yet read by a native potter.

no-size = Dar lo que cabe en la forma hasta el borde, o su contorno medido, o sus superficies esmaltadas.
capacity = En una forma caben de 5 ml a 100 litros, y { $millilitres } ml quedan fuera. Revisar la cifra y la unidad.
area = Una superficie esmaltada mide de 1 cm² a 5 m², y { $square_centimetres } cm² quedan fuera. Revisar la cifra y la unidad.
one-measure = Una pieza de esta forma y tamaño contendría unos { $millilitres } ml. Comprobar la cifra y la unidad.
holds-nothing = En un azulejo no cabe nada. Dar la superficie de la cara esmaltada.
height-of-plate = La altura de un plato no dice nada de su tamaño. Dar su anchura.

too-few-points = Un perfil necesita al menos tres puntos: el pie, lo más ancho y el borde.
too-many-points = Son más de { $most } puntos. Dejar solo aquellos donde el contorno cambia.
out-of-reach = El punto { $point } no es una medida posible para una pieza: como máximo, 1,5 m de alto y 1,5 m de ancho. Revisar las cifras y la unidad.
same-height = Los puntos { $first } y { $second } están a la misma altura. Corregir uno; si hay un escalón, poner un extremo medio milímetro más alto.
crosses = El contorno se cruza consigo mismo cerca del punto { $point }. Comprobar que los puntos siguen la pared de abajo arriba.
no-wall = La pared debe tener algún grosor. Medirlo en el borde o cortar una pieza vieja.
wall-too-thick = En el punto { $point } la pared es más gruesa que la anchura de la pieza. Revisar la pared y la anchura.
floor = El fondo y el anillo del pie son más altos que la pieza. Revisar el fondo, el anillo y la unidad.
foot-ring = El anillo del pie es más ancho que el pie. Revisar su anchura: contar solo el barro, en un lado.
no-weight = El peso y la densidad del bizcocho deben ser mayores que cero. Revisar las dos cifras.
nothing-to-glaze = El pie sin esmalte llega al borde, así que por fuera no queda nada que esmaltar. Revisar la altura a la que empieza el esmalte.

shrinkage = La pasta se contrae de 0 a 30 % desde el torneado hasta la cocción, y al menos tanto como en bizcocho. Revisar las dos cifras: cada una se mide desde la medida torneada.

photo-no-picture = Este archivo no es una imagen JPEG ni PNG. Repetir la foto o poner la cámara en JPEG.
photo-cut-short = Falta parte de esta imagen. Repetir la foto.
photo-too-large = Esta imagen tiene más de 50 megapíxeles, y son demasiados. Poner la cámara en un tamaño menor.
photo-too-small = Esta imagen es demasiado pequeña para medir. Repetirla con el tamaño completo de la cámara.
photo-too-dark = Está demasiado oscuro para ver el borde de la pieza. Repetir la foto con más luz, sin el sol detrás.
photo-busy = El fondo tiene demasiadas cosas. Colgar detrás de la pieza una tela o sábana lisa, de un color distinto.
photo-nothing = Ninguna pieza destaca del fondo. Usar un fondo mucho más claro o más oscuro que la pieza.
photo-cut-off = La pieza se sale de la imagen. Retroceder hasta ver fondo por todos lados.
photo-too-far = La pieza es demasiado pequeña en la imagen. Acercarse hasta que ocupe al menos un tercio de la altura.
photo-not-alone = Hay más de una cosa en la imagen. Dejar solo la pieza, y la regla bien a un lado.
photo-too-tilted = El teléfono estaba demasiado inclinado. Sostenerlo recto, para que la pieza se vea vertical.
photo-lopsided = Los dos lados son demasiado distintos para una pieza redonda. Girar el asa justo hacia un lado y evitar sombras y ventanas luminosas.
photo-from-above = El teléfono miraba la pieza desde arriba. Sostener el objetivo a media altura de la pieza.
photo-stacked = Parecen dos piezas, una dentro o encima de otra. Fotografiar cada pieza sola, sin tapa.
photo-too-flat = Una pieza tan plana no se puede medir de lado. Medir unas cuantas anchuras y alturas.
photo-size = Esta medida no encaja con la imagen. Revisar la cifra, su unidad y que las marcas estén en sus extremos.
