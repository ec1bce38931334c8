### Not yet read by a native potter.

save = Guardar
name = Nombre
glaze = Esmalte
form = Forma
dipped-at = Densidad al sumergir
laydown-is = Gramaje { $laydown }.
add-first = { $kind ->
    [form] Añadir primero una forma.
    [kiln] Añadir primero un horno.
   *[glaze] Añadir primero un esmalte.
}
saved = Guardado.
is-saved = Guardado: { $name }.
nothing-to-save = Aquí no hay nada que guardar.
write-here = { $field }: escribir algo aquí.
type-here = { $field }: escribirlo aquí.
choose-here = { $field }: elegir aquí.
fill-in = { $field }: rellenar.
choose-from-list = { $field }: elegir de la lista.
too-long = Demasiado largo. Como máximo, { $most } caracteres.
too-short = Demasiado corto. Como mínimo, { $fewest } caracteres.
no-day = Elegir un día, como mucho un año por delante.
not-on-this-phone = No está en este teléfono
secret-saved = Guardado en este teléfono. Escribir para sustituirlo.
