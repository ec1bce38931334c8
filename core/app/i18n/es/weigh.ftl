### Not yet read by a native potter.

add-to-weigh = Añadir primero una forma, un esmalte y una báscula. Después se puede pesar una pieza.
no-area-to-glaze = “{ $form }” no tiene superficie que esmaltar. Abrirla en Taller y dar una.
form = Una forma
form-help = Una forma que se tornea una y otra vez, y cuánto cabe en ella.
glaze = Un esmalte
glaze-help = Su nombre, su sensibilidad al grosor y la densidad del cubo.
scale = Una báscula
scale-help = Su capacidad y su división.

net = Capa, tras tarar
bare = Pieza sin esmaltar
glazed = Pieza esmaltada

right-is = Correcto: { $span }
may-be = Quizá { $span }
every-digit = Escribir todas las cifras que muestra la báscula, como { $example }.

did-you-mean = ¿Quizá { $weight }?
wrong-way-round = La pieza pesa menos esmaltada que sin esmaltar. ¿Están cambiados los dos pesos?
exchange = Intercambiar
tare-forgotten = { $weight } es más o menos una pieza sin esmaltar ({ $bare }) con su capa. ¿Faltó tarar?
weigh-two = Escribir también el peso sin esmaltar
twice-the-aim = { $weight } es el doble del objetivo de { $aim }. ¿Son las dos capas juntas, o faltó tarar?
dry-already = { $weight } es lo que queda de { $wet } sin el agua. ¿Ya está seca?
far-off = { $weight } está lejos del objetivo de { $aim }. ¿Es correcto?
other-scale = { $scale } no puede mostrar este peso. ¿Qué báscula se usó?
it-is-right = Es correcto
it-is-wet = No, está húmeda

glaze-and-bucket = { $glaze }, { $bucket }
tolerance = Se acepta ±{ $tolerance }: { $glaze } está puesto como “{ $sensitivity ->
    [low] tolerante
    [high] sensible
   *[medium] normal
}”.

no-sg-yet = { $bucket } aún no tiene densidad: se supone { $sg }, y el objetivo vale lo que valga ese dato. Comprobar el cubo.
old-sg = Densidad comprobada { $when }. Remover y comprobar el cubo: el esmalte se espesa y se asienta.
tiles-not-asked = { $count ->
    [one] Una plaqueta de prueba de este esmalte aún no cuenta: indicar en Taller cómo salió del horno.
   *[other] { $count } plaquetas de prueba de este esmalte aún no cuentan: indicar en Taller cómo salieron del horno.
}
sides-differ = Interior y exterior llevan { $sides } según sus propias piezas de referencia, pero una sola inmersión lleva { $dip } según la suya. Dejar de usar la pieza de referencia equivocada.
impossible-density = La densidad del polvo de “{ $glaze }” es imposible, así que laydown usa { $density }. Corregirla en el esmalte.

next-inside = Interior de esta pieza
next-outside = Exterior de esta pieza
saved = Guardado: { $form }, { $zone }, { $wet }, { $verdict }.
saved-with-code = Guardado: { $form }, { $zone }, { $wet }, { $verdict }. Escribir { $code } a lápiz en el pie.

some-form = Forma desconocida
nothing-today = Hoy no se ha pesado nada.
today = { $coats ->
    [one] 1 capa hoy, { $within } bien.
   *[other] { $coats } capas hoy, { $within } bien.
}
