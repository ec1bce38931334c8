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
seconds = Inmersión, vertido
seconds-unit = s

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
saved-with-code = Guardado: { $form }, { $zone }, { $wet }, { $verdict }. Escribir { $code } en el pie con lavado de hierro o cobalto, o con lápiz bajo esmalte: el lápiz común se quema.
saved-on-piece = Guardado: { $form } { $code }, { $zone }, { $wet }, { $verdict }.

some-form = Forma desconocida
nothing-today = Hoy no se ha pesado nada.
today = { $coats ->
    [one] 1 capa hoy, { $within } bien.
   *[other] { $coats } capas hoy, { $within } bien.
}

zone-of-piece = { $zone }, { $piece }
zone-of-same-piece = { $zone }, misma pieza
this-piece = Esta pieza
wall-is-wet = { $piece }: { $zone } esmaltado { $ago }. La pared sigue mojada y toma menos esmalte: dejar secar primero.
wall-may-be-damp = { $piece }: { $zone } esmaltado { $ago }. La pared puede seguir húmeda y tomar menos esmalte: dejar secar primero.
glazed-before = { $piece }: { $zone } esmaltado { $ago }.
insides-waiting = Interiores que esperan el exterior
other-unfired = Otras piezas sin cocer
new-piece = Pieza nueva
nothing-unfired = Ninguna pieza sin cocer tiene una capa.
no-piece-with-code = Ninguna pieza tiene el código { $code }. Revisar lo que hay en el pie.
form-and-code = { $form }, { $code }
its-coat-was-undone = Su capa se deshizo
glazes-and-ago = { $glazes }, { $ago }
weigh-again = Pesar otra vez
weigh-code-again = Pesar { $code } otra vez
already-carries = { $coats ->
    [one] Esta zona ya tiene una capa: { $laydown }.
   *[other] Esta zona ya tiene { $coats } capas: { $laydown } en total.
}
with-this-coat = Con esta capa lleva { $laydown }.
glazed-by = Esmaltado por { $hand }. Se cambia en el taller, en las unidades.
dip-hint = { $dips ->
    [one] Unos { $time } s para este objetivo, de { $from } a { $to }: según { $dips } capa de este cubo. Decide la báscula.
   *[other] Unos { $time } s para este objetivo, de { $from } a { $to }: según { $dips } capas de este cubo. Decide la báscula.
}
