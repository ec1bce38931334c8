### Not yet read by a native potter.

checklist = { $item ->
    [dust] Polvo limpiado con esponja húmeda. Soplado o barrido, acaba en los pulmones.
    [foot] Pie limpio de esmalte, y un poco de la pared.
    [rim] Bordes y cantos repasados con el dedo: lo que ahora raspa, luego corta.
    [knocks] Golpes y desconchones retocados y anotados.
    [cracks] Sin grietas en la capa seca. Frotarlas, o el esmalte se recoge ahí.
    [bone_dry] Cada pieza seca del todo, sin notarse fría en la mejilla. Una pieza húmeda revienta.
    [closed] Ningún hueco cerrado sin un agujerito para el aire.
    [stacked] Apiladas pie sobre pie o borde sobre borde, nada pesado sobre un borde fino.
    [clay_cracks] Sin grietas en bordes, fondos y uniones de asas.
   *[overlap] Donde se solapan dos esmaltes: no demasiado grueso, y con sitio debajo para correr.
}
waiting-label = En espera: tocar para poner en una placa
left-out-label = Añadir una pieza olvidada
add-unweighed = Añadir piezas sin pesar
all-of-form = { $pieces ->
    [one] { $form }: { $pieces } pieza
   *[other] { $form }: las { $pieces }
}
place-cones = Conos testigo
no-cones-yet = Ninguno todavía. Junto a las piezas muestran cuánto calor recibieron.
read-cones = Leer los conos
read-without-cones = Temperatura, duración y los conos puestos
look-again = Volver a mirar las piezas
look = Mirar las piezas
look-left = { $left ->
    [one] Mirar las piezas: queda { $left }
   *[other] Mirar las piezas: quedan { $left }
}

no-room = Esta placa está llena. Usar otra o quitar algo de ella.
loaded = { $pieces ->
    [one] { $pieces } pieza en la placa { $shelf }.
   *[other] { $pieces } piezas en la placa { $shelf }.
}
loaded-and-overlapping = { $pieces ->
    [one] { $pieces } pieza en la placa { $shelf }.
   *[other] { $pieces } piezas en la placa { $shelf }.
} { $overlapping ->
    [one] { $overlapping } pareja se solapa: mover una.
   *[other] { $overlapping } parejas se solapan: mover algunas.
}
all-loaded = { $pieces ->
    [one] { $pieces } pieza cargada.
   *[other] { $pieces } piezas cargadas.
}
some-loaded = { $pieces ->
    [one] { $pieces } pieza cargada. Sin sitio para { $left }.
   *[other] { $pieces } piezas cargadas. Sin sitio para { $left }.
}
moved = Movida.
taken-out = Quitada de la carga.
was-in-firing = Esta pieza se revisó tras la cocción, así que estuvo en ella. No se puede quitar.
not-on-checklist = Esto no está en la lista de antes de la cocción.
looked-at = Revisado.
not-looked-at = Por revisar.
fired-answer = Marcada como cocida. Dejar enfriar antes de abrir y mirar luego las piezas una a una.
done-answer = Marcada como terminada.
opened-answer = Abierta de nuevo.
in-another-load = Esta pieza sigue en otra cocción: { $firing }. Descargarla o quitarla primero de allí.
is-done = Esta cocción está terminada. Abrirla primero de nuevo.
is-fired = Esta cocción ya pasó: su plano se queda como estaba.

to-fired = Marcar como cocida
to-done = Marcar como terminada
to-open = Abrir de nuevo
ask-fired-empty = No hay nada en sus placas. Las piezas se pueden añadir después.
ask-fired = Hacerlo cuando el horno haya cocido. Después se pueden mirar las piezas una a una.
ask-done = { $left ->
    [one] Queda { $left } pieza por mirar. La cocción se puede abrir de nuevo.
   *[other] Quedan { $left } piezas por mirar. La cocción se puede abrir de nuevo.
}

begun = Empezada
number = Número
name = Nombre
pieces = Piezas
cone = Cono
cone-and-kind = { $kind ->
    [large] { $cone }, grande
    [self_supporting] { $cone }, autosoportado
   *[newer] { $cone }, de una versión más nueva
}
bends-at = Se dobla a
bends-at-rates = { $slow } a 60 °C por hora, { $fast } a 150 °C por hora
program = Programa
witness-cones = Conos testigo
fired = Cocida
top-temperature = Temperatura máxima
it-took = Duración de la cocción
note = Nota
place-and-found = { $place }: { $found }

kiln-caution = La instalación eléctrica, el gas y la salida de gases del horno son cosa de profesionales autorizados. Ventilar la sala, alejar bien todo lo que pueda arder y seguir el manual del fabricante.
hot-ware = Las piezas calientes queman, y se rajan con una corriente de aire. Descargar cuando se puedan sostener con la mano desnuda.
crowded = { $pairs ->
    [one] Placa { $shelf }: { $pairs } pareja está a menos de { $air } mm en lo más ancho, según el dibujo. Los esmaltes que se tocan se funden juntos.
   *[other] Placa { $shelf }: { $pairs } parejas están a menos de { $air } mm en lo más ancho, según el dibujo. Los esmaltes que se tocan se funden juntos.
}
overlapping = { $pairs ->
    [one] Placa { $shelf }: { $pairs } pareja se solapa, según el dibujo. Una quedaría sobre la otra: moverla.
   *[other] Placa { $shelf }: { $pairs } parejas se solapan, según el dibujo. Una quedaría sobre la otra: moverlas.
}

shelf-title = { $pieces ->
    [one] Placa { $shelf }: { $pieces } pieza, { $free } % libre
   *[other] Placa { $shelf }: { $pieces } piezas, { $free } % libre
}
shelf-title-fired = { $pieces ->
    [one] Placa { $shelf }: { $pieces } pieza
   *[other] Placa { $shelf }: { $pieces } piezas
}
shelf-help = Desde arriba, con el frente abajo. Mantener una pieza y arrastrarla para moverla; tocarla para quitarla.
shelf-as-fired = Como se coció, desde arriba, con el frente abajo. Tocar una pieza para ver cuál es.

witness = { $reading ->
    [standing] cono { $cone } sin doblar
    [soft] cono { $cone } algo doblado
    [at] cono { $cone } doblado
    [hard] cono { $cone } muy doblado
   *[flat] cono { $cone } tumbado
}
against-the-last = Comparada con la última cocción a cono { $cone } en este horno: { $difference }.
against-the-last-both = Comparada con la última cocción a cono { $cone } en este horno: { $heat } y { $time }.
hotter = { $degrees } más caliente
cooler = { $degrees } menos caliente
as-hot = igual de caliente
longer = { $time } más larga
shorter = { $time } más corta
as-long = igual de larga
