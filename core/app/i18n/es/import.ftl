### Not yet read by a native potter.

intro = Comprobar qué entiende laydown por cada columna y cambiar lo que esté mal. Nada se guarda hasta importar, y con deshacer una vez se quita todo.
take-in-nothing = Nada que importar
take-in = { $readings ->
    [one] Importar { $readings } pesada
   *[other] Importar { $readings } pesadas
}

found-but-open = { $lines ->
    [one] Se encontró { $lines } línea. Responder primero a las preguntas.
   *[other] Se encontraron { $lines } líneas. Responder primero a las preguntas.
}
would-be-imported = { $readings ->
    [one] Se importaría { $readings } pesada.
   *[other] Se importarían { $readings } pesadas.
}
nothing-would-be-imported = No se importaría nada.
with-results = { $readings ->
    [one] { $readings } de ellas dice cómo salió del horno.
   *[other] { $readings } de ellas dicen cómo salieron del horno.
}
here-already = { $lines ->
    [one] { $lines } línea ya está aquí.
   *[other] { $lines } líneas ya están aquí.
}
cannot-be-imported = { $lines ->
    [one] { $lines } línea no se puede importar.
   *[other] { $lines } líneas no se pueden importar.
}
imported = { $readings ->
    [one] Importado: { $readings } pesada.
   *[other] Importado: { $readings } pesadas.
}
left-out = { $lines ->
    [one] Se omitió { $lines } línea.
   *[other] Se omitieron { $lines } líneas.
}

sg-assumed = { $readings ->
    [one] { $readings } pesada no tiene densidad en la hoja ni comprobación anterior. Se supone densidad { $sg }, y el veredicto vale lo que valga ese dato.
   *[other] { $readings } pesadas no tienen densidad en la hoja ni comprobación anterior. Se supone densidad { $sg }, y el veredicto vale lo que valga ese dato.
}
sg-very-thin = { $readings ->
    [one] { $readings } pesada tiene una densidad menor que { $least }, muy diluida para un esmalte. Comprobar que es la columna correcta.
   *[other] { $readings } pesadas tienen una densidad menor que { $least }, muy diluida para un esmalte. Comprobar que es la columna correcta.
}
new-buckets = Cubos nuevos: { $buckets }.
new-buckets-and-more = { $more ->
    [one] Cubos nuevos: { $buckets } y { $more } más.
   *[other] Cubos nuevos: { $buckets } y { $more } más.
}
read-as-windows = El archivo no está en UTF-8 y se leyó como un archivo antiguo de Windows. Comprobar que las letras con acento estén bien.

role = { $role ->
    [date] fecha
    [time] hora
    [form] forma
    [glaze] esmalte
    [bucket] cubo
    [zone] zona
    [wet] peso húmedo
    [bare] pieza sin esmaltar
    [glazed] pieza esmaltada
    [specific_gravity] densidad
    [piece] pieza
    [code] código en el pie
    [control] pieza de referencia, sí o no
    [note] nota
    [aim] objetivo
    [low] mínimo aceptado
    [high] máximo aceptado
    [verdict] veredicto
    [fired] día de la cocción
    [cone] cono
    [result] fino, correcto o grueso
    [faults] defectos
    [liking] valoración, de 1 a 5
   *[nothing] omitir
}
column-number = Columna { $number }
column-empty = Vacía

ask-order = Orden de la fecha
ask-order-help = Algunas fechas se leen de dos maneras: 3/11 es en marzo o en noviembre.
date-order = { $order ->
    [month_first] Mes, día, año
   *[day_first] Día, mes, año
}
ask-decimal = Signo decimal
ask-decimal-help = 1,234 puede ser poco más de uno, o más de mil.
ask-unit = Unidad de peso
ask-unit-help = Se usa donde ni la columna ni la celda dan una.
unit = { $unit ->
    [kg] Kilogramos
    [oz] Onzas
    [lb] Libras
   *[g] Gramos
}
ask-form = Forma, todas las líneas
ask-glaze = Esmalte, todas las líneas
ask-zone = Zona, todas las líneas
ask-cone = Cono, todas las cocciones
ask-kiln = Horno
ask-scale = Báscula
ask-scale-help = Aquella en que se pesó. El veredicto depende de su división.
ask-form-name = Forma “{ $cell }”
ask-glaze-name = Esmalte “{ $cell }”
ask-name-help = { $lines ->
    [one] En { $lines } línea. En el taller no hay nada con este nombre.
   *[other] En { $lines } líneas. En el taller no hay nada con este nombre.
}
leave-lines-out = Omitir estas líneas
make-glaze = Añadir este esmalte
make-glaze-help = Con los valores habituales; corregirlos después en Taller.

two-columns = Hay dos columnas puestas como “{ $role }”. Omitir una.
no-date-column = Ninguna columna está puesta como “Fecha”. Elegir una.
no-weight-column = Ninguna columna está puesta como “Peso húmedo”. Elegir una, o una para la pieza sin esmaltar y otra para la esmaltada.
no-form-column = Ninguna columna está puesta como “Forma”. Elegir una, o una forma para todas las líneas.
no-glaze-column = Ninguna columna está puesta como “Esmalte”. Elegir una, o un esmalte para todas las líneas.
no-zone-column = Ninguna columna está puesta como “Zona”. Elegir una, o una zona para todas las líneas.
no-fired-column = Ninguna columna es el día de la cocción. Elegir una, o dejar fuera los resultados.
no-cone-column = Ninguna columna es el cono. Elegir una, o un cono para todas las cocciones.
no-kiln-yet = Aún no hay ningún horno aquí. Añadir primero el de las cocciones: Taller, Hornos.
no-scale-yet = Todavía no hay ninguna báscula. Añadir primero aquella en que se pesó: Taller, Básculas.
say-order = Elegir qué va primero en las fechas: el día o el mes.
say-decimal = Elegir el signo decimal de los pesos: 1,234 se puede leer de dos maneras.

line-error = Línea { $line }: { $why }
more-line-errors = { $lines ->
    [one] Y { $lines } línea más.
   *[other] Y { $lines } líneas más.
}
more-cells = Tiene más celdas que columnas hay. Buscar una coma en un número o en un nombre sin comillas.
no-zone = Falta la zona. Escribir interior, exterior o ambos.
not-a-zone = “{ $cell }” no es una zona. Escribir interior, exterior o ambos.
no-firing-date = Dice cómo salió, pero no cuándo se coció. Dar el día de la cocción.
fired-before-glazed = Se coció antes de esmaltarse. Comprobar las dos fechas.
no-cone = Sin cono. Escribir el cono de la cocción, como 6 o 06.
not-a-cone = “{ $cell }” no es un cono. Escribir su número, como 6 o 06.
not-a-result = “{ $cell }” no es un resultado. Escribir fino, correcto o grueso.
not-a-fault = “{ $cell }” no es un defecto que laydown conozca. Escribirlo como la pantalla después de una cocción, o pasarlo a las notas.
not-a-rating = “{ $cell }” no es una valoración. Escribir un número del 1 al 5.
places-not-known = Importado de una hoja de cálculo. No se sabe dónde estaban las piezas en las placas.
not-a-code = “{ $cell }” no es un código de laydown. Poner esa columna como “Pieza”.
not-yes-or-no = “{ $cell }” no es ni sí ni no, en la columna “pieza de referencia”.
note-too-long = La nota pasa de { $most } caracteres. Acortarla.
name-too-long = El nombre “{ $cell }” pasa de { $most } caracteres. Acortarlo.
no-date = Falta la fecha.
a-formula = “{ $cell }” es una fórmula. Guardar la hoja con su resultado.
not-a-date = “{ $cell }” no es una fecha. Escribirla así, por ejemplo: 2026-11-25.
not-a-time = “{ $cell }” no es una hora. Escribirla así, por ejemplo: 14:30.
still-to-come = { $cell } está en el futuro. Revisar la fecha.
too-long-ago = { $cell } es demasiado antigua. Se pueden importar pesadas desde 1970.
no-form = Falta la forma.
form-not-here = Aquí no hay ninguna forma “{ $cell }”. Añadirla primero o elegir una arriba.
no-glaze = Falta el esmalte.
glaze-not-here = Aquí no hay ningún esmalte “{ $cell }”. Añadirlo primero o elegir uno arriba.
no-weight = Falta el peso.
weights-differ = El peso húmedo es { $wet }, pero esmaltada menos sin esmaltar da { $difference }. Corregir uno de los dos.
aim-outside = El objetivo de { $aim } no está entre { $low } y { $high }. Corregirlos u omitir esas columnas.
not-a-verdict = “{ $cell }” no es un veredicto. Escribir bien, falta, sobra o no se sabe, u omitir esa columna.
code-taken = El código { $code } ya está en otra pieza, o esta zona ya tiene una capa. Mirar el pie.
no-area = { $zone ->
    [inside] “{ $form }” no tiene superficie esmaltada interior. Abrirla en Taller y dar una.
    [outside] “{ $form }” no tiene superficie esmaltada exterior. Abrirla en Taller y dar una.
   *[whole] “{ $form }” no tiene superficie esmaltada interior y exterior. Abrirla en Taller y dar una.
}
no-scale = Todavía no hay ninguna báscula.

piece-in-note = Pieza { $piece }
piece-and-note = Pieza { $piece }. { $note }
bucket-name = De la hoja de cálculo

unreadable = Este archivo no se puede leer: { $details }. Elegirlo de nuevo.
gone = No se encuentra el archivo. Elegirlo de nuevo.
no-file = Esto no es un archivo. Elegir la hoja de cálculo guardada como CSV.
too-large = Este archivo pasa de 20 MB, demasiado para una hoja de pesadas. Elegir otro o dividirlo.
empty = Este archivo está vacío. Elegir la hoja de cálculo guardada como CSV.
workbook = Esta hoja está en el formato propio de su programa. En ese programa, elegir Guardar como, CSV, e importar ese archivo.
no-text = Este no es un archivo de texto. Guardar la hoja como CSV y elegirla.
too-many-columns = { $columns ->
    [one] Esta hoja tiene { $columns } columna; el límite es { $most }. Guardar solo las que tengan pesadas.
   *[other] Esta hoja tiene { $columns } columnas; el límite es { $most }. Guardar solo las que tengan pesadas.
}
too-many-lines = Esta hoja tiene más de { $most } líneas. Dividirla en varios archivos e importarlos uno a uno.
open-quote = Línea { $line }: unas comillas se abren y no se cierran. Cerrarlas o quitarlas y guardar de nuevo.
no-lines = No hay pesadas debajo de la primera línea. Elegir otro archivo.
