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

glaze-and-bucket = { $glaze }, { $bucket }
tolerance = Se acepta ±{ $tolerance }: { $glaze } está puesto como “{ $sensitivity ->
    [low] tolerante
    [high] sensible
   *[medium] normal
}”.

no-sg-yet = { $bucket } aún no tiene densidad: se supone { $sg }, y el objetivo vale lo que valga ese dato. Comprobar el cubo.
old-sg = Densidad comprobada { $when }. Remover y comprobar el cubo: el esmalte se espesa y se asienta.
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
