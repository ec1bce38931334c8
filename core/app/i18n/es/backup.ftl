### Not yet read by a native potter.

intro = Todo en un archivo: pesos, cocciones y fotos. Conviene guardar una copia fuera de este teléfono; se puede restaurar en cualquier teléfono. Quien tenga el archivo puede leerlo todo.
last-backup = Última copia: { $moment }.
none-yet = Todavía no hay ninguna copia de seguridad de este teléfono.
saved-and-verified = Copia guardada y verificada: { $contents }.
restored = Restaurado: { $new }. Contenido del archivo: { $held }.
all-here-already = Nada que restaurar. Este teléfono ya tiene { $contents }.
nothing-new = No había nada nuevo que restaurar.
photos-left-out = { $photos ->
    [one] { $photos } foto no se pudo leer y se omitió: { $names }.
   *[other] { $photos } fotos no se pudieron leer y se omitieron: { $names }.
}
photo-name = “{ $letters }…”

entries = { $entries ->
    [one] { $entries } entrada
   *[other] { $entries } entradas
}
entries-and-photos = { $entries ->
    [one] { $entries } entrada
   *[other] { $entries } entradas
} y { $photos ->
    [one] { $photos } foto
   *[other] { $photos } fotos
}
with-missing-photos = { $missing ->
    [one] { $contents } ({ $missing } foto más no se encontró)
   *[other] { $contents } ({ $missing } fotos más no se encontraron)
}

last-backup-line = Última copia: { $moment }
none-yet-line = Todo en un archivo, para guardar fuera de este teléfono

too-long-ago = { $days ->
    [one] La última copia tiene { $days } día. Si se pierde este teléfono, se pierde todo lo posterior.
   *[other] La última copia tiene { $days } días. Si se pierde este teléfono, se pierde todo lo posterior.
}
never = Todavía no hay copia de seguridad. Si se pierde este teléfono, se pierde todo: hacer una en Taller, Copia de seguridad.

rhythm = { $rhythm ->
    [week] Cada semana
    [month] Cada mes
   *[never] Nunca
}
rhythm-not-listed = Elegir en la lista cada cuánto.
no-folder = No se eligió ninguna carpeta.
folder-first = Elegir primero una carpeta para las copias.
off = La copia automática está desactivada.
choose-folder = Elegir una carpeta para las copias automáticas: en una tarjeta de memoria, o una que otra aplicación copie a otro equipo.
automatic = { $rhythm ->
    [month] Hace una copia cada mes si hay algo nuevo. Conserva las { $backups } más recientes y solo quita copias anteriores hechas por laydown.
   *[week] Hace una copia cada semana si hay algo nuevo. Conserva las { $backups } más recientes y solo quita copias anteriores hechas por laydown.
}
automatic-and-last = { $automatic } Última copia: { $moment }.
not-made = { $trouble ->
    [place_gone] No se hizo la copia ({ $moment }): no se encuentra la carpeta. Los datos están a salvo en este teléfono. Volver a poner la tarjeta o elegir otra carpeta.
    [not_allowed] No se hizo la copia ({ $moment }): laydown ya no puede escribir en la carpeta. Elegir la carpeta de nuevo.
    [place_full] No se hizo la copia ({ $moment }): la carpeta está llena. Liberar espacio allí o elegir otra carpeta.
    [phone_full] No se hizo la copia ({ $moment }): este teléfono está lleno. Liberar espacio e intentarlo otra vez.
    [not_made] No se hizo la copia ({ $moment }): algo falló en este teléfono. Tocar “Hacer una copia” para ver por qué.
    [not_whole] No se hizo la copia ({ $moment }): el archivo de la carpeta no coincide con lo que escribió laydown. Intentarlo otra vez o elegir otra carpeta.
   *[no_answer] No se hizo la copia ({ $moment }): la carpeta no respondió. Intentarlo otra vez o elegir otra carpeta.
}

journal = Diario en líneas JSON
journal-detail = Cada entrada tal como se hizo, para otros programas. Sin fotos. laydown puede restaurarlo.
all-tables = Todas las tablas
all-tables-detail = Un zip con un archivo por tabla
table = { $table ->
    [readings] Pesadas
    [pieces] Piezas cocidas
    [firings] Cocciones
    [buckets] Cubos
    [checks] Comprobaciones de densidad
    [glazes] Esmaltes
   *[forms] Formas
}
table-detail = { $table ->
    [readings] Una línea por capa: forma, esmalte, peso, veredicto
    [pieces] Una línea por pieza de una cocción
    [firings] Una línea por cocción
    [buckets] Una línea por cubo, con su última densidad
    [checks] Una línea por comprobación
    [glazes] Una línea por esmalte
   *[forms] Una línea por forma, con sus superficies
}
table-not-listed = Elegir una tabla de la lista.
journal-written = { $entries ->
    [one] Guardado: { $entries } entrada. laydown puede restaurarla como una copia de seguridad.
   *[other] Guardado: { $entries } entradas. laydown puede restaurarlas como una copia de seguridad.
}
tables-written = { $tables ->
    [one] Guardado: { $tables } tabla en un zip.
   *[other] Guardado: { $tables } tablas en un zip.
}
table-written = Guardado: { $table }. Abrir el archivo con una hoja de cálculo.
