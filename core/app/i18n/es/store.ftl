### Not yet read by a native potter.

not-a-studio = El archivo del taller no lo hizo laydown, y se dejó sin cambios. Moverlo a otro sitio e intentarlo otra vez.
newer = Una versión más nueva guardó este taller, y se dejó sin cambios. Actualizar laydown y abrirlo de nuevo.
damaged = El archivo del taller está dañado y se dejó sin cambios. Salvar lo que se pueda leer: se hace un archivo nuevo y se conserva el dañado.
busy = Este taller está abierto en otra copia de laydown. No se ha perdido nada: cerrar la otra copia e intentarlo otra vez.
full = El teléfono está lleno y esto no se guardó; no se ha perdido nada más. Liberar espacio y guardarlo de nuevo.
not-allowed = El teléfono no deja a laydown escribir su archivo. Permitirlo en los ajustes del teléfono e intentarlo otra vez.
no-folder = Falta la carpeta de este taller. Crearla e intentarlo otra vez.
removed = El archivo del taller se movió o se borró con laydown abierto, y esto no se guardó. Devolver el archivo a su sitio y abrir laydown de nuevo.
io = El almacenamiento del teléfono no respondió y esto no se hizo; no se ha perdido nada. Intentarlo otra vez.
forked = Dos teléfonos han escrito con el mismo nombre, como cuando un taller se copia de uno a otro. Aquí no se cambió nada: configurar uno de ellos como teléfono nuevo.
bad-event = Este registro no se puede usar. No se cambió nada.
fault = Algo falló en laydown, pero no se ha perdido nada. Se agradece que se comunique el fallo.

photo-empty = La cámara dio una imagen vacía. Repetir la foto.
photo-heic = Esta imagen es HEIC y laydown no la puede leer. Poner la cámara en JPEG y repetir la foto.
photo-no-picture = Esta imagen no es JPEG ni PNG, o le falta una parte. Repetir la foto o poner la cámara en JPEG.
photo-too-large = Esta imagen es demasiado grande: el límite son 60 megapíxeles y 64 MB. Poner la cámara en un tamaño menor.

not-a-backup = Este archivo no es una copia de seguridad de laydown. Elegir otro.
backup-gone = No se encuentra el archivo. Elegirlo de nuevo.
backup-unreadable = Este archivo no se puede leer. Copiarlo al teléfono y elegirlo allí.
backup-newer = Una versión más nueva hizo esta copia. Actualizar laydown y restaurarla.
backup-damaged = Esta copia está dañada (“{ $file }” ha cambiado) y no se restauró nada. Usar otra copia.
backup-behind = A esta copia le falta algo de lo que tiene este taller; los datos están a salvo en este teléfono. Hacer la copia de nuevo.
journal-damaged = Este diario está dañado y no se restauró nada. Usar otro archivo.
backup-partly = { $events ->
    [one] Se añadió { $events } entrada de este archivo y se detuvo. { $why } Lo añadido está a salvo: restaurar el archivo otra vez para el resto.
   *[other] Se añadieron { $events } entradas de este archivo y se detuvo. { $why } Lo añadido está a salvo: restaurar el archivo otra vez para el resto.
}

refused = { $entries ->
    [one] Sin añadir: { $entries } entrada que laydown no puede haber hecho ({ $why ->
        [too_large] demasiado grande
        [too_many] demasiadas sobre una misma cosa
        [too_many_devices] demasiados teléfonos
       *[no_such_number] números imposibles
    }). Se añadió todo lo demás.
   *[other] Sin añadir: { $entries } entradas que laydown no puede haber hecho ({ $why ->
        [too_large] demasiado grandes
        [too_many] demasiadas sobre una misma cosa
        [too_many_devices] demasiados teléfonos
       *[no_such_number] números imposibles
    }). Se añadió todo lo demás.
}
refused-forked = { $entries ->
    [one] Sin añadir: { $entries } entrada de un teléfono cuyo nombre se usa dos veces. Los datos están a salvo: configurar uno de los dos como teléfono nuevo en Taller, Teléfonos.
   *[other] Sin añadir: { $entries } entradas de un teléfono cuyo nombre se usa dos veces. Los datos están a salvo: configurar uno de los dos como teléfono nuevo en Taller, Teléfonos.
}
refused-of-others = { $entries ->
    [one] Sin añadir: { $entries } entrada de otros teléfonos.
   *[other] Sin añadir: { $entries } entradas de otros teléfonos.
}

recovered-nothing = No se pudo leer ninguna entrada. El archivo dañado se conservó junto a uno nuevo y vacío: si hay una copia de seguridad, restaurarla ahora.
recovered-all = { $saved ->
    [one] Se salvó la única entrada conocida. El archivo dañado se conservó junto al nuevo.
   *[other] Se salvaron las { $saved } entradas conocidas. El archivo dañado se conservó junto al nuevo.
}
recovered-some = { $saved ->
    [one] Se salvó { $saved } de { $all } entradas, y el archivo dañado se conservó junto al nuevo. Si hay una copia de seguridad, restaurarla ahora: puede devolver el resto.
   *[other] Se salvaron { $saved } de { $all } entradas, y el archivo dañado se conservó junto al nuevo. Si hay una copia de seguridad, restaurarla ahora: puede devolver el resto.
}

segment-name = El archivo de diario “{ $name }” no se puede usar: laydown no da ese nombre.
segment-cut = El archivo de diario “{ $name }” no se puede usar: le falta una parte.
segment-packing = El archivo de diario “{ $name }” no se puede usar: está dañado.
segment-sum = El archivo de diario “{ $name }” no se puede usar: está dañado (su suma de comprobación no cuadra).
segment-foreign = El archivo de diario “{ $name }” no se puede usar: no es de laydown.
segment-newer = El archivo de diario “{ $name }” no se puede usar: lo escribió una versión más nueva. Actualizar laydown.
segment-device = El archivo de diario “{ $name }” no se puede usar: contiene entradas de otro teléfono.
segment-gap = El archivo de diario “{ $name }” no se puede usar: no contiene las entradas que dice su nombre.
segment-line = El archivo de diario “{ $name }” no se puede usar: la línea { $line } no se puede leer.
segment-too-large = El archivo de diario “{ $name }” no se puede usar: es demasiado grande.
