### Not yet read by a native potter.

waiting = { $pieces ->
    [0] Ninguna pieza esmaltada espera una cocción.
    [one] { $pieces } pieza espera una cocción.
   *[other] { $pieces } piezas esperan una cocción.
}
no-firing-yet = Empezar una cuando las piezas estén secas: elegir un horno y un cono y cargar las placas.
pieces = { $pieces ->
    [one] { $pieces } pieza
   *[other] { $pieces } piezas
}
state = { $state ->
    [loading] cargándose
    [fired] cocida, por descargar
    [done] descargada
   *[newer] de una versión más nueva
}
firing-title = cono { $cone }, { $kiln }
bisque-title = bizcocho a cono { $cone }, { $kiln }
numbered-title = Cocción { $number }: { $title }
unknown-form = Forma desconocida
unknown-piece = Pieza desconocida
never-weighed = sin pesar
glaze-on-zone = { $zone ->
    [inside] { $glaze } por dentro
    [outside] { $glaze } por fuera
    [whole] { $glaze } por dentro y por fuera
   *[newer] { $glaze }, de una versión más nueva
}
unknown-glaze-on-zone = { $zone ->
    [inside] esmalte desconocido por dentro
    [outside] esmalte desconocido por fuera
    [whole] esmalte desconocido por dentro y por fuera
   *[newer] esmalte desconocido, de una versión más nueva
}
to-be-fired-again = por cocer de nuevo
coat-label = { $zone ->
    [inside] Interior, { $glaze }
    [outside] Exterior, { $glaze }
    [whole] Interior y exterior, { $glaze }
   *[newer] De una versión más nueva, { $glaze }
}
unknown-glaze-coat-label = { $zone ->
    [inside] Interior, esmalte desconocido
    [outside] Exterior, esmalte desconocido
    [whole] Interior y exterior, esmalte desconocido
   *[newer] De una versión más nueva, esmalte desconocido
}
weighed = { $verdict ->
    [within] { $weight }, bien (objetivo { $aim })
    [short] { $weight }, falta (objetivo { $aim })
    [over] { $weight }, sobra (objetivo { $aim })
    [cannot_tell] { $weight }, no se sabe (objetivo { $aim })
   *[newer] { $weight } (objetivo { $aim })
}
place = { $place ->
    [front_left] placa { $shelf }, delante a la izquierda
    [front] placa { $shelf }, delante
    [front_right] placa { $shelf }, delante a la derecha
    [left] placa { $shelf }, izquierda
    [right] placa { $shelf }, derecha
    [back_left] placa { $shelf }, detrás a la izquierda
    [back] placa { $shelf }, detrás
    [back_right] placa { $shelf }, detrás a la derecha
   *[middle] placa { $shelf }, centro
}
