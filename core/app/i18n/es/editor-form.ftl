### Not yet read by a native potter.

new = Forma nueva
title = Forma
archive = Archivar esta forma
name-hint = Taza de desayuno
shape = Tipo de forma
shape-help = Elegir el contorno más parecido.

way = Medida por
way-capacity = Capacidad
way-capacity-detail = Llenar una pieza bizcochada hasta el borde y pesar o medir el agua. Rápido y algo aproximado.
way-points = Puntos medidos
way-points-detail = Unas cuantas anchuras con el calibre, más la pared y el pie. Lo más exacto.
way-photograph = Foto de lado
way-photograph-detail = De lado, a media altura de la pieza, sobre un fondo liso, con una medida conocida.
way-one-measure = Una sola medida
way-one-measure-detail = Solo su anchura, su altura o su barro. Lo menos preciso, pero para un plato basta la anchura.
clay = Peso del barro
clay-detail = El barro húmedo con que se tornea, antes de retornear y sin el asa.
way-areas = Superficies
way-areas-detail = Si se conocen las superficies esmaltadas. Las medidas tienen prioridad.
capacity = Capacidad hasta el borde
capacity-help = De una pieza bizcochada, no de una ya esmaltada y cocida.
capacity-if-measured = Capacidad hasta el borde, si se ha medido
area-inside = Superficie esmaltada interior
area-outside = Superficie esmaltada exterior
tile-has-no-profile = Un azulejo no tiene perfil. Elegir “{ way-areas }” y dar la superficie de la cara esmaltada.

points = Perfil exterior
points-help = De abajo arriba: la altura y la anchura donde el contorno cambia, como pie, panza, cuello y borde.
height-in = Altura, { $unit }
across-in = Anchura, { $unit }
wall-in = Pared, { $unit }
point-half-given = Punto { $number }: dar su altura y su anchura.
point-error = Punto { $number }: { $error }

photograph = Foto
photograph-help = Poner la pieza delante de una pared o tela lisa, con el asa a un lado. Sostener el teléfono recto, a media altura de la pieza y a un brazo de distancia.
take-photograph = Hacer una foto
choose-picture = Elegir una imagen
photograph-missing = Foto: hacer una o elegir una imagen.
photograph-unreadable = Esta imagen no se puede leer. Repetir la foto o elegir otra.
photograph-too-large = Esta imagen pasa de 64 MB. Repetirla con la cámara en un tamaño menor.
known = Medida conocida
known-height = Altura
known-width = Anchura máxima
known-width-detail = Sin el asa.
known-length = Moneda o regla
known-length-detail = En la imagen, de pie o junto a la pieza, a la misma distancia del teléfono que el centro de la pieza.
size = Medida
camera-distance = Del teléfono a la pieza
camera-distance-help = Basta una cifra aproximada.
sureness-and-handle = { $side ->
    [left] { $sureness } El asa de la izquierda no se cuenta: dar su medida abajo.
   *[right] { $sureness } El asa de la derecha no se cuenta: dar su medida abajo.
}

stage = Cuándo se midió
stage-help = Se esmalta el bizcocho; las demás medidas se convierten a él.
body = Pasta
body-not-said = Sin indicar
add-body-first = Añadir primero su pasta en Taller: la contracción da la medida en bizcocho.
choose-body = Elegir su pasta: la contracción da la medida en bizcocho.
wall = Grosor de la pared
wall-help = El habitual; un punto puede tener el suyo.
more = Pie, límites del esmalte, asa, peso
floor = Grosor del fondo
floor-help = En el centro.
foot-width = Anchura del anillo del pie
foot-width-help = Solo el barro, en un lado. Vacío si la base es plana.
foot-height = Altura del anillo del pie
bare-foot = Pie sin esmalte
bare-foot-help = A qué altura sobre la base empieza el esmalte.
overlap = Solape
overlap-help = Hasta dónde por debajo del borde, por fuera, se solapan los dos esmaltes. Vacío si no hay.
fill = Línea de llenado
fill-help = Hasta dónde por debajo del borde se llena, para saber cuánto cabe en el uso.
handle-length = Longitud del asa
handle-girth = Contorno del asa
handle-girth-help = Rodearla con una tira de papel.
extra-area = Superficie esmaltada extra
extra-area-help = Pomo, pico y similares.
bisque-weight = Peso en bizcocho
bisque-weight-help = Con el asa. Delata una medida mal tecleada.

holds = Caben { $volume } hasta el borde
holds-in-use = Caben { $volume } hasta el borde, { $in-use } llenando hasta { $depth } por debajo
zone-area = { $zone ->
    [inside] Interior: { $area }, con un margen de { $percent }
    [outside] Exterior: { $area }, con un margen de { $percent }
   *[whole] Interior y exterior: { $area }, con un margen de { $percent }
}
targets-change = Los objetivos de esta forma que vienen de otras formas cambian un { $change }.
targets-of-zone-change = { $zone ->
    [inside] En el interior, los objetivos de esta forma que vienen de otras formas cambian un { $change }.
    [outside] En el exterior, los objetivos de esta forma que vienen de otras formas cambian un { $change }.
   *[whole] En interior y exterior juntos, los objetivos de esta forma que vienen de otras formas cambian un { $change }.
}
targets-change-by-capacity = Los objetivos basados en la capacidad cambian un { $change }.
own-targets-stay = Sus propias piezas de referencia conservan su peso. Si ahora se hace en otro tamaño, añadir una forma nueva.
part-area = { $part ->
    [foot] pie sin esmalte { $area }
    [outside_wall] pared exterior { $area }
    [overlap_band] franja de solape { $area }
    [rim] borde { $area }
    [inside_wall] pared interior { $area }
   *[inside_floor] fondo interior { $area }
}
parts = { $parts }.
capacities-differ = { $difference ->
    [more] La capacidad medida supera en { $percent } la que dan los puntos. Buscar una anchura o altura mal tecleada.
   *[less] La capacidad medida está { $percent } por debajo de la que dan los puntos. Buscar una anchura o altura mal tecleada.
}

drawing = A la izquierda abierta, a la derecha entera: { $height } de alto, { $width } de ancho. Arrastrar un punto o una línea; tocar la pared para añadir un punto.
drawing-of-photograph = La foto con el contorno que se encontró en ella.
bare-foot-line = El esmalte empieza a { $height } de la base
overlap-line = Los dos esmaltes se solapan en los { $depth } de arriba
no-overlap-line = Sin solape
fill-line = Llena hasta { $depth } por debajo del borde
point = Punto { $number }: { $height } de alto, { $width } de ancho
mark-from = Un extremo de la longitud conocida
mark-to = El otro extremo

foot-lip-handle = Pie, borde, asa
waxed-foot-help = A qué altura empieza el esmalte, por ejemplo en el borde de la cera. Vacío: { $usual }, como es usual.
handle = Asa
handle-none = Sin asa
handle-code = { $code ->
    [small] Asa de taza pequeña
    [large] Asa grande o de jarra
   *[usual] Asa de taza
}
handle-size = { $long } de largo, { $around } de contorno
handle-own = Medida propia
handle-is = Asa: { $handle } de { $outside } por fuera
