### Not yet read by a native potter.

nothing = No hay nada archivado.
section = { $kind ->
    [form] Formas
    [glaze] Esmaltes
    [bucket] Cubos
    [body] Pastas
    [control] Piezas de referencia
    [tile] Plaquetas de prueba
    [firing] Cocciones
    [piece] Piezas sin pesar
    [scale] Básculas
    [kiln] Hornos
    [check] Comprobaciones
    [bucket_entry] Notas de los cubos
   *[vessel] Recipientes
}
archived-when = Archivado { $moment }, { $phone }
bucket-of = { $glaze }, { $bucket }
control-of = { $form }, { $glaze }
is-back = { $name } ha vuelto.
never-archived = Esto nunca se archiva.
