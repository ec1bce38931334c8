### Not yet read by a native potter.

position = { $pieces ->
    [one] { $number } de { $pieces }
   *[other] { $number } de { $pieces }
}
fault-and-place = { $fault }, { $place }
fault-and-hint = { $fault }. { $about } { $hint }
inside = Interior
outside = Exterior
overlap = Solape
saved = Guardado.
saved-found = Guardado: { $found }.
no-outline = Esta forma no tiene contorno donde tocar.
fault-first = Tocar primero un defecto y luego el punto donde está.
liking-range = Puntuar de 1 a 5.
note-too-long = { $letters ->
    [one] Esta nota es demasiado larga. Como máximo, { $letters } carácter.
   *[other] Esta nota es demasiado larga. Como máximo, { $letters } caracteres.
}

photo-unreadable = Esta imagen no se puede leer. Repetir la foto o elegir otra.
photo-saved = Foto guardada.
photo-removed = Foto quitada.

sharp = Los bordes y las esquirlas cortan. Usar guantes y protección ocular, y no llevar esta pieza a la mesa.
crazed = Las piezas cuarteadas pueden rezumar y romperse con agua hirviendo. Solo un análisis de laboratorio puede decir si algo pasa a los alimentos.
thick-and-over = Al pesarla sobraba esmalte, y cuadra. La próxima vez, ceñirse al objetivo.
thick-but-short = Al pesarla faltaba esmalte: buscar otra causa, como la cocción, la densidad del cubo o un goteo.
thick-but-within = Al pesarla estaba bien. Si salen más piezas gruesas, quizá el objetivo sea demasiado alto.
thin-and-short = Al pesarla faltaba esmalte, y cuadra. La próxima vez, ceñirse al objetivo.
thin-but-over = Al pesarla sobraba esmalte: buscar otra causa, como la cocción, la densidad del cubo o un bizcocho húmedo.
thin-but-within = Al pesarla estaba bien. Si salen más piezas finas, quizá el objetivo sea demasiado bajo.
