### Not yet read by a native potter.

nothing = No hay nada archivado.
section = { $kind ->
    [form] Formas
    [glaze] Esmaltes
    [bucket] Cubos
    [bisque_lot] Lotes de bizcocho
    [body] Pastas
    [control] Piezas de referencia
    [tile] Plaquetas de prueba
    [firing] Cocciones
    [piece] Piezas sin pesar
    [scale_test] Pruebas de báscula
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
is-archived = Archivado: { $name }.
firing-removed = Cocción quitada.
piece-removed = La pieza está quitada.
piece-was-fired = Está anotado cómo salió esta pieza del horno, así que se queda.
control-archived = Pieza de referencia archivada.
cannot-be-removed = Esto no se puede quitar.
entry-removed = Quitado del cuaderno.
