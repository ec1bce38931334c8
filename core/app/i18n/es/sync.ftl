### Not yet read by a native potter.

none-chosen = También pueden sincronizarse por un lugar propio: una carpeta, un servidor WebDAV o un bucket S3. laydown solo va allí cuando se le pide.
choose-first = Aún no se ha elegido lugar de sincronización. Elegir uno.
at-folder = Los teléfonos se sincronizan en la carpeta «{ $folder }».
at-webdav = Los teléfonos se sincronizan en { $address }, como { $user }.
at-bucket = Los teléfonos se sincronizan en el bucket «{ $bucket }» de { $address }.
at-bucket-folder = Los teléfonos se sincronizan en «{ $folder }» del bucket «{ $bucket }» de { $address }.
encrypted = Cifrado con una frase de contraseña.
not-encrypted = Sin cifrar.
not-synced-yet = Aún sin sincronizar.
last-sync = Última sincronización: { $moment }. { $report }
tried = Intentado: { $moment }. { $why }
nothing-new = No había nada nuevo en ningún lado.
came = Recibido: { $what }.
went = Enviado: { $what }.
came-and-went = Recibido: { $came }. Enviado: { $went }.
entries = { $entries ->
    [one] { $entries } entrada
   *[other] { $entries } entradas
}
photos = { $photos ->
    [one] { $photos } foto
   *[other] { $photos } fotos
}
both = { $entries } y { $photos }
repaired = { $files ->
    [one] Se reparó { $files } archivo dañado.
   *[other] Se repararon { $files } archivos dañados.
}
more-problems = { $count ->
    [one] Y { $count } más como estos.
   *[other] Y { $count } más como estos.
}
photos-missing = { $photos ->
    [one] { $photos } foto no está ni aquí ni allí. En el teléfono que la tomó, elegir «Sincronizar ahora» en una red gratuita.
   *[other] { $photos } fotos no están ni aquí ni allí. En el teléfono que las tomó, elegir «Sincronizar ahora» en una red gratuita.
}
new-here = Nuevo en este teléfono: { $entries }.
photos-wait = { $photos ->
    [one] { $photos } foto espera una red gratuita.
   *[other] { $photos } fotos esperan una red gratuita.
}
progress = { $done } de { $all } archivos
no-network = Este teléfono no tiene red. No se ha perdido nada: sincronizar cuando esté conectado.
unknown-host = Ningún servidor tiene este nombre. No se ha perdido nada: comprobar la dirección y que el teléfono esté conectado.
no-answer = Sin respuesta. No se ha perdido nada: comprobar que el servidor esté encendido y sincronizar de nuevo.
timed-out = El servidor no respondió a tiempo. No se ha perdido nada: sincronizar de nuevo en una red mejor.
certificate-date = El certificado del servidor ha caducado, o el reloj de este teléfono va mal. No se envió nada: comprobar aquí la fecha y la hora, y luego preguntar a quien lleva el servidor.
certificate-host = El certificado es de otro servidor, así que no se envió nada. Comprobar la dirección; en una red con página de acceso, entrar primero.
certificate = Este teléfono no se fía del certificado del servidor, así que no se envió nada. Comprobar la dirección, o instalar en este teléfono el certificado del servidor propio.
broken = La conexión se cortó. Lo que llegó está guardado: sincronizar de nuevo.
stopped = Detenido. Los archivos terminados se quedan; el resto sigue la próxima vez.
plain-http = Por http:// cualquiera en internet podría leer la contraseña y los archivos. Usar https:// para este servidor.
wrong-password = El servidor no acepta el nombre y la contraseña, o la clave y su secreto. Escribirlos de nuevo.
wrong-address = No hay nada en esta dirección. Comprobarla letra por letra.
no-folder = Carpeta no encontrada, o su aplicación no responde. Los datos están a salvo en este teléfono: elegir de nuevo la carpeta.
full = El lugar de sincronización está lleno. Liberar espacio allí o elegir otro lugar.
not-allowed = laydown no puede escribir en esa carpeta. Permitirlo o elegir otra.
wrong-passphrase = { $keys ->
    [one] Esta no es la frase de contraseña de los archivos de allí: no abre la clave de { $keys } teléfono. Escribirla de nuevo, o elegir empezar allí de cero.
   *[other] Esta no es la frase de contraseña de los archivos de allí: no abre las claves de { $keys } teléfonos. Escribirla de nuevo, o elegir empezar allí de cero.
}
no-passphrase = Los archivos de allí están cifrados. Escribir su frase de contraseña.
strange-files = { $files ->
    [one] { $files } archivo de allí no está cifrado con esta frase de contraseña y se dejó fuera. Si lo puso otro teléfono propio, escribir en él la misma frase.
   *[other] { $files } archivos de allí no están cifrados con esta frase de contraseña y se dejaron fuera. Si los puso otro teléfono propio, escribir en él la misma frase.
}
encrypted-files = { $files ->
    [one] { $files } archivo de allí está cifrado y se dejó fuera. Si los teléfonos usan una frase de contraseña, escribirla aquí también.
   *[other] { $files } archivos de allí están cifrados y se dejaron fuera. Si los teléfonos usan una frase de contraseña, escribirla aquí también.
}
older-than-last-time = El lugar de sincronización muestra datos más antiguos que la última vez. Los datos están a salvo en este teléfono y se pusieron allí de nuevo.
left-open = { $files ->
    [one] { $files } archivo de este teléfono sigue allí de antes, sin cifrar. Borrar el archivo cuyo nombre no termina en «.age».
   *[other] { $files } archivos de este teléfono siguen allí de antes, sin cifrar. Borrar los archivos cuyo nombre no termina en «.age».
}
damaged-file = { $why } Se dejó fuera. En el teléfono que lo escribió, elegir «Comprobar los archivos de allí».
newer = Otro teléfono tiene una versión más nueva. Actualizar laydown aquí y elegir de nuevo «Sincronizar ahora».
damaged-photo = La foto «{ $file }» está dañada allí y se dejó fuera. En el teléfono que la tomó, elegir «Comprobar los archivos de allí».
entry-missing = Allí falta la entrada { $entry } ({ $phone }). Elegir «Sincronizar ahora» en ese teléfono y luego aquí de nuevo.
entries-missing = Allí faltan las entradas { $first } a { $last } ({ $phone }). Elegir «Sincronizar ahora» en ese teléfono y luego aquí de nuevo.
file-too-long = Un archivo de allí es demasiado largo y se dejó fuera. No se ha perdido nada.
redirected = El servidor manda laydown a otro servidor, así que no se envió nada. Escribir la dirección actual de los archivos.
too-many-files = Allí hay más archivos de los que laydown lee. Los datos están a salvo en este teléfono: elegir otro lugar.
too-slow = El servidor responde demasiado despacio. Lo que llegó está guardado: probar de nuevo en una red mejor.
failed = El lugar de sincronización no respondió como se esperaba. No se ha perdido nada: probar más tarde.
