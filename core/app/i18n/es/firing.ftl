### Not yet read by a native potter.

checklist = { $item ->
    [dust] Polvo limpiado con esponja húmeda. Soplado o barrido, acaba en los pulmones.
    [foot] Pie limpio de esmalte, y un poco de la pared.
    [rim] Bordes y cantos repasados con el dedo: lo que ahora raspa, luego corta.
    [knocks] Golpes y desconchones retocados y anotados.
    [cracks] Sin grietas en la capa seca. Frotarlas, o el esmalte se recoge ahí.
   *[overlap] Donde se solapan dos esmaltes: no demasiado grueso, y con sitio debajo para correr.
}
waiting-label = En espera: tocar para poner en una placa
left-out-label = Añadir una pieza olvidada
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
in-another-load = Esta pieza está en otra carga: { $firing }. Quitarla primero de allí.
is-done = Esta cocción está terminada. Abrirla primero de nuevo.

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

shelf-title = { $pieces ->
    [one] Placa { $shelf }: { $pieces } pieza, { $free } % libre
   *[other] Placa { $shelf }: { $pieces } piezas, { $free } % libre
}
shelf-help = Desde arriba, con el frente abajo. Arrastrar una pieza para moverla; tocarla para quitarla.

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
