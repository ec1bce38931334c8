### Not yet read by a native potter.

forms = Formas
add-form = Añadir una forma
no-forms = Las formas que se tornean una y otra vez.
bodies = Pastas
add-body = Añadir una pasta
no-bodies = Las pastas y cómo se contraen, para medir una pieza cocida y saber su medida en bizcocho.
bisque-lots = Lotes de bizcocho
add-bisque-lot = Añadir un lote de bizcocho
no-bisque-lots = Cuánta agua absorbe cada lote de bizcocho: cambia lo que toma una inmersión.
glazes = Esmaltes
add-glaze = Añadir un esmalte
no-glazes = Cada uno con su sensibilidad al grosor.
controls = Piezas de referencia
add-control = Añadir una pieza de referencia
no-controls = Una pieza que salió bien. Usar como referencia una capa guardada, o escribir una cantidad de confianza.
tiles = Plaquetas de prueba
add-tile = Añadir una plaqueta de prueba
no-tiles = Pesar la capa de una plaqueta para ver lo gruesas que son de verdad las pruebas.
scales = Básculas
add-scale = Añadir una báscula
no-scales = Cada una con su capacidad y su división.
scale-tests = Pruebas de báscula
add-scale-test = Probar una báscula
no-scale-tests = Pesar una pieza diez veces: así se sabe cómo se repite la báscula.
kilns = Hornos
add-kiln = Añadir un horno
no-kilns = Cada uno con sus placas, para planear la carga.
vessels = Recipientes
add-vessel = Añadir un recipiente
no-vessels = Cualquier tarro: pesado una vez con agua, sirve siempre para comprobar la densidad.

shrinks = se contrae { $bisque } en bizcocho, { $fired } cocida
thickness = { $sensitivity ->
    [low] Grosor: tolerante
    [high] Grosor: sensible
   *[medium] Grosor: normal
}
oblong-shelves = { $count ->
    [one] { $count } placa de { $across } por { $deep }
   *[other] { $count } placas de { $across } por { $deep }
}
round-shelves = { $count ->
    [one] { $count } placa de { $across } de diámetro
   *[other] { $count } placas de { $across } de diámetro
}
weighed-control = { $glaze }: { $wet } en húmedo, { $moment }
typed-control = { $glaze }: { $wet } en húmedo
tile = { $glaze }, { $laydown }: { $result }
tile-not-asked = { $glaze }, { $laydown }: indicar cómo salió
scale-repeats = desviación estándar { $deviation }, probada { $when }
scale-checked = peso conocido comprobado { $when }
planned-tile = { $glaze }: prevista con { $wet }
