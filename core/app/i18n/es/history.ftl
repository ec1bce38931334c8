### Not yet read by a native potter.

recent-changes = Cambios recientes
nothing-done = Todavía no hay cambios.
how-to-read = Lo más reciente primero. Los cambios hechos en este teléfono se pueden deshacer y rehacer.
how-to-read-one = Lo más reciente primero. Si dos teléfonos guardaron valores distintos, cuenta el posterior. El otro sigue aquí en la lista.
nothing-to-redo = Nada que rehacer.
redone = Rehecho.

kind = { $kind ->
    [glaze] Esmalte
    [bucket] Cubo
    [vessel] Recipiente
    [form] Forma
    [body] Pasta
    [scale] Báscula
    [kiln] Horno
    [tile] Plaqueta de prueba
    [check] Comprobación
    [bucket_entry] Nota del cubo
    [control] Pieza de referencia
    [coat] Capa
    [firing] Cocción
    [piece] Pieza
    [placement] En el horno
    [finding] Resultado
    [photo] Foto
    [scale_test] Prueba de báscula
    [bisque_lot] Bizcocho
    [preference] Unidades, sonido y vibración
   *[other] Algo de una versión más nueva
}
kind-and-name = { $kind }: { $name }
title-and-more = { $more ->
    [one] { $title }, y { $more } más
   *[other] { $title }, y { $more } más
}
not-here = no está en este teléfono

when-and-where = { $moment }, { $phone }
changed = cambiado: { $fields }
undone = deshecho
came-back = deshecho en { $undone ->
    [this] este teléfono
    [this-named] este teléfono ({ $undone-name })
    [another] otro teléfono
   *[named] “{ $undone-name }”
}, pero { $edited ->
    [this] este teléfono
    [this-named] este teléfono ({ $edited-name })
    [another] otro teléfono
   *[named] “{ $edited-name }”
} lo había cambiado, así que volvió. Deshacerlo otra vez para quitarlo
set-anew = { $phone ->
    [this] cambiado después en este teléfono
    [this-named] cambiado después en este teléfono ({ $name })
    [another] cambiado después en otro teléfono
   *[named] cambiado después en “{ $name }”
}
not-shown = oculto, porque aquello a lo que pertenece se deshizo o no ha llegado
left-out = omitido por imposible: { $fields }
its-was-undone = { $thing ->
    [glaze] se deshizo su esmalte: rehacerlo para recuperar esto
    [bucket] se deshizo su cubo: rehacerlo para recuperar esto
    [vessel] se deshizo su recipiente: rehacerlo para recuperar esto
    [form] se deshizo su forma: rehacerla para recuperar esto
    [body] se deshizo su pasta: rehacerla para recuperar esto
    [scale] se deshizo su báscula: rehacerla para recuperar esto
    [kiln] se deshizo su horno: rehacerlo para recuperar esto
    [firing] se deshizo su cocción: rehacerla para recuperar esto
   *[other] se deshizo su { $thing }: rehacerlo para recuperar esto
}

field-and-value = { $field }: { $value }
field = { $field ->
    [name] nombre
    [sensitivity] sensibilidad al grosor
    [powder_density] densidad del polvo
    [starting_laydown] gramaje inicial
    [drift_answered_at] desvío anotado
    [gone] quitado o archivado
    [glaze] esmalte
    [volume] volumen
    [mixed_at] preparado
    [bucket] cubo
    [at] fecha
    [specific_gravity] densidad
    [standard_uncertainty] incertidumbre de la densidad
    [how] método
    [vessel] recipiente
    [full] peso con esmalte
    [temperature] temperatura del esmalte
    [flow] tiempo en la copa de flujo
    [note] nota
    [empty] peso vacío
    [with_water] peso con agua
    [water_temperature] temperatura del agua
    [class] tipo de forma
    [capacity] capacidad
    [inside_area] superficie esmaltada interior
    [outside_area] superficie esmaltada exterior
    [profile] perfil exterior
    [traced] incertidumbre del contorno de la foto
    [stage] cuándo se midió
    [body] pasta
    [wall] grosor de la pared
    [floor] grosor del fondo
    [foot_width] anchura del anillo del pie
    [foot_height] altura del anillo del pie
    [bare_foot] pie sin esmalte
    [overlap] solape
    [fill] línea de llenado
    [handle_length] longitud del asa
    [handle_girth] contorno del asa
    [extra_area] superficie esmaltada extra
    [bisque] peso en bizcocho
    [to_bisque] contracción hasta el bizcocho
    [to_fired] contracción hasta la cocción de esmalte
    [bisque_density] densidad del bizcocho
    [step] división
    [minimum] mínimo
    [repeatability] repetibilidad
    [piece] pieza
    [form] forma
    [zone] zona
    [scale] báscula
    [bare] peso sin esmaltar
    [glazed] peso esmaltada
    [net] peso húmedo
    [added] añadido en un retoque
    [rubbed_off] frotado
    [hand] quién esmaltó
    [sg_uncertainty] incertidumbre de la densidad
    [area] superficie esmaltada
    [aim] objetivo
    [low] mínimo aceptado
    [high] máximo aceptado
    [source] base del objetivo
    [verdict] veredicto
    [laydown] gramaje
    [control] pieza de referencia
    [code] código en el pie
    [round] placas redondas
    [across] anchura de las placas
    [deep] fondo de las placas
    [shelves] número de placas
    [kiln] horno
    [cone] cono objetivo
    [cone_kind] tipo de cono
    [state] estado de la cocción
    [number] número de cocción
    [fires] qué se cuece
    [program] programa
    [fired_at] cocida
    [top] temperatura máxima
    [minutes] duración de la cocción en minutos
    [witnesses] conos testigo
    [checked] lista de revisión
    [firing] cocción
    [shelf] placa
    [x] distancia desde la izquierda
    [y] distancia desde el frente
    [inside] interior
    [outside] exterior
    [faults] defectos
    [liking] puntuación
    [again] por cocer de nuevo
    [sha256] archivo de imagen
    [width] anchura de la imagen
    [height] altura de la imagen
    [dry] peso seco de la capa
    [dry_uncertainty] incertidumbre del peso seco
    [dip] tiempo de inmersión o vertido
    [ask_dip] pedir los tiempos
    [accuracy_class] clase de exactitud
    [readings] lecturas de la prueba
    [known] peso conocido
    [shown] peso conocido mostrado
    [soaking] modo de remojo
    [bone_dry] peso completamente seco
    [soaked] peso empapado
    [suspended] peso en agua
    [coats] número de capas
    [mass] pesos
    [length] longitudes
    [decimal] signo decimal
    [speak] decir el veredicto en voz alta
    [tick] sonido en cada tecla
    [code_pieces] código en cada pieza
    [phone] nombre del teléfono
    [materials] materiales
    [density_from] origen de la densidad del polvo
    [hazards] peligros corregidos
    [working_sg] densidad de trabajo
    [diameter] diámetro del cubo
    [depth] profundidad del cubo
    [cup] copa de flujo
    [what] lo que se hizo
    [amount] cantidad
    [level] nivel
   *[other] { $words }
}
value-none = nada
value-yes = sí
value-no = no
value-list = { $entries ->
    [one] { $entries } entrada
   *[other] { $entries } entradas
}
value-kept = guardado
value-code = { $code ->
    [class-cylinder_mug] taza recta
    [class-rounded_mug] taza redondeada
    [class-open_bowl] cuenco abierto
    [class-deep_bowl] cuenco hondo
    [class-plate] plato
    [class-bottle] botella
    [class-jar] tarro
    [class-vase] florero
    [class-teapot] tetera
    [class-planter] macetero
    [class-tile] azulejo
    [stage-bisque] en bizcocho
    [stage-thrown] recién torneada
    [stage-fired] esmaltada y cocida
    [sensitivity-low] tolerante
    [sensitivity-medium] normal
    [sensitivity-high] sensible
    [how-vessel] recipiente
    [how-volume] volumen medido
    [how-hydrometer] densímetro
    [how-typed] tecleado
    [source-control] pieza de referencia
    [source-control_by_area] pieza de referencia, por superficie
    [source-control_by_capacity] pieza de referencia, por capacidad
    [source-tile] plaqueta de prueba
    [source-starting] valor inicial
    [source-told] hoja de cálculo
    [verdict-within] bien
    [verdict-short] falta
    [verdict-over] sobra
    [verdict-cannot_tell] no se sabe
    [cone_kind-self_supporting] autosoportado
    [cone_kind-large] grande
    [state-loading] cargándose
    [state-fired] cocida, por descargar
    [state-done] descargada
    [fires-glazed] piezas esmaltadas
    [fires-bisque] bizcocho
    [soaking-boil] hervido
    [soaking-cold] remojado en frío
    [soaking-vacuum] al vacío
    [zone-inside] interior
    [zone-outside] exterior
    [zone-whole] interior y exterior
    [inside-thin] fino
    [inside-right] correcto
    [inside-thick] grueso
    [outside-thin] fino
    [outside-right] correcto
    [outside-thick] grueso
    [overlap-thin] fino
    [overlap-right] correcto
    [overlap-thick] grueso
    [density_from-materials] de los materiales
    [density_from-own] valor propio
    [what-water] agua añadida
    [what-water_off] agua retirada
    [what-powder] esmalte seco añadido
    [what-flocculant] floculante
    [what-deflocculant] defloculante
    [what-sieved] tamizado
    [what-level] nivel
    [what-weighed] pesado con el esmalte
    [what-note] nota
   *[other] { $words }
}
