### Not yet read by a native potter.

how-to-begin = Pesar las capas y cocer las piezas. Después, abrir la cocción, mirar cada pieza y tocar fino, correcto o grueso. Ocho piezas de un esmalte dan un primer resultado.
amount-only = Esto trata solo de la cantidad. Solo un análisis de laboratorio puede decir si una superficie es apta para comida o bebida.
only-the-newest = { $coats ->
    [one] Basado en la capa más reciente del taller y, para cada esmalte, en sus { $pots } piezas cocidas más recientes como máximo. Las anteriores no cuentan.
   *[other] Basado en las { $coats } capas más recientes del taller y, para cada esmalte, en sus { $pots } piezas cocidas más recientes como máximo. Las anteriores no cuentan.
}
no-coat = Todavía no hay capas pesadas.
none-looked-at = { $coats ->
    [one] { $coats } capa pesada, sin revisar todavía tras la cocción.
   *[other] { $coats } capas pesadas, ninguna revisada todavía tras la cocción.
}
scope-and-finding = { $scope }: { $finding }

no-best = Todavía no hay una cantidad mejor de la que partir.
now-starts-from = { $glaze } parte ahora de { $best }.
start-from = Partir de { $best }
start-from-help = Para cada forma y zona de este esmalte sin pieza de referencia ni plaqueta de prueba. Ahora parte de { $now }.

controls-outside-window = { $zone ->
    [inside] Interior: la media de las piezas de referencia es { $average }, fuera de la ventana. Usar como pieza de referencia una cercana a { $best }.
    [outside] Exterior: la media de las piezas de referencia es { $average }, fuera de la ventana. Usar como pieza de referencia una cercana a { $best }.
   *[whole] Interior y exterior: la media de las piezas de referencia es { $average }, fuera de la ventana. Usar como pieza de referencia una cercana a { $best }.
}
tiles-outside-window = { $zone ->
    [inside] Interior: la media de las plaquetas de prueba es { $average }, fuera de la ventana. Usar como pieza de referencia una cercana a { $best }.
    [outside] Exterior: la media de las plaquetas de prueba es { $average }, fuera de la ventana. Usar como pieza de referencia una cercana a { $best }.
   *[whole] Interior y exterior: la media de las plaquetas de prueba es { $average }, fuera de la ventana. Usar como pieza de referencia una cercana a { $best }.
}

one-cone = cono { $cone }
cones-together = conos { $cones }
zones-together = { $zones ->
    [inside_outside] capas solo interiores y solo exteriores
    [inside_whole] capas solo interiores y completas
    [outside_whole] capas solo exteriores y completas
   *[inside_outside_whole] capas solo interiores, solo exteriores y completas
}
no-body = sin pasta indicada
bodies-together = { $bodies ->
    [one] { $bodies } pasta
   *[other] { $bodies } pastas
}

too-few = { $place ->
    [after_colon] { $pots ->
        [one] aún faltan piezas: { $pots } hasta ahora ({ $looks }). Un primer resultado necesita { $enough }.
       *[other] aún faltan piezas: { $pots } hasta ahora ({ $looks }). Un primer resultado necesita { $enough }.
    }
   *[alone] { $pots ->
        [one] Aún faltan piezas: { $pots } hasta ahora ({ $looks }). Un primer resultado necesita { $enough }.
       *[other] Aún faltan piezas: { $pots } hasta ahora ({ $looks }). Un primer resultado necesita { $enough }.
    }
}
none-right = { $place ->
    [after_colon] { $pots ->
        [one] la única pieza no salió bien, con { $range }: { $looks }.
       *[other] ninguna de { $pots } piezas salió bien, con { $range }: { $looks }.
    }
   *[alone] { $pots ->
        [one] La única pieza no salió bien, con { $range }: { $looks }.
       *[other] Ninguna de { $pots } piezas salió bien, con { $range }: { $looks }.
    }
}
try-more = Probar con más.
try-less = Probar con menos.
mixed = { $place ->
    [after_colon] los resultados se mezclan con { $range } ({ $pots ->
        [one] { $pots } pieza). La cantidad sola no decide: comprobar la densidad del cubo, la cocción y el sitio en el horno.
       *[other] { $pots } piezas). La cantidad sola no decide: comprobar la densidad del cubo, la cocción y el sitio en el horno.
    }
   *[alone] Los resultados se mezclan con { $range } ({ $pots ->
        [one] { $pots } pieza). La cantidad sola no decide: comprobar la densidad del cubo, la cocción y el sitio en el horno.
       *[other] { $pots } piezas). La cantidad sola no decide: comprobar la densidad del cubo, la cocción y el sitio en el horno.
    }
}
window = { $place ->
    [after_colon] bien entre { $from } y { $to } ({ $pots ->
        [one] { $pots } pieza). Por debajo salió fino; por encima, grueso.
       *[other] { $pots } piezas). Por debajo salió fino; por encima, grueso.
    }
   *[alone] Bien entre { $from } y { $to } ({ $pots ->
        [one] { $pots } pieza). Por debajo salió fino; por encima, grueso.
       *[other] { $pots } piezas). Por debajo salió fino; por encima, grueso.
    }
}
window-upwards = { $place ->
    [after_colon] bien desde { $from } ({ $pots ->
        [one] { $pots } pieza). Por debajo salió fino; aún no se sabe cuánto es demasiado.
       *[other] { $pots } piezas). Por debajo salió fino; aún no se sabe cuánto es demasiado.
    }
   *[alone] Bien desde { $from } ({ $pots ->
        [one] { $pots } pieza). Por debajo salió fino; aún no se sabe cuánto es demasiado.
       *[other] { $pots } piezas). Por debajo salió fino; aún no se sabe cuánto es demasiado.
    }
}
window-downwards = { $place ->
    [after_colon] bien hasta { $to } ({ $pots ->
        [one] { $pots } pieza). Por encima salió grueso; aún no se sabe cuánto es demasiado poco.
       *[other] { $pots } piezas). Por encima salió grueso; aún no se sabe cuánto es demasiado poco.
    }
   *[alone] Bien hasta { $to } ({ $pots ->
        [one] { $pots } pieza). Por encima salió grueso; aún no se sabe cuánto es demasiado poco.
       *[other] { $pots } piezas). Por encima salió grueso; aún no se sabe cuánto es demasiado poco.
    }
}
all-right = { $place ->
    [after_colon] { $pots ->
        [one] la única pieza salió bien, con { $range }. Aún no se sabe cuánto menos o más también vale.
       *[other] las { $pots } piezas salieron bien, con { $range }. Aún no se sabe cuánto menos o más también vale.
    }
   *[alone] { $pots ->
        [one] La única pieza salió bien, con { $range }. Aún no se sabe cuánto menos o más también vale.
       *[other] Las { $pots } piezas salieron bien, con { $range }. Aún no se sabe cuánto menos o más también vale.
    }
}
most-right = { $pots ->
    [one] { $right } de { $pots } pieza salió bien, con { $range }. Aún no se sabe cuánto menos o más también vale.
   *[other] { $right } de { $pots } piezas salieron bien, con { $range }. Aún no se sabe cuánto menos o más también vale.
}
looks = { $thickness ->
    [thin] { $pots ->
        [one] { $pots } fina
       *[other] { $pots } finas
    }
    [thick] { $pots ->
        [one] { $pots } gruesa
       *[other] { $pots } gruesas
    }
   *[right] { $pots ->
        [one] { $pots } correcta
       *[other] { $pots } correctas
    }
}
range = { $from } a { $to }
best-near = Lo mejor, cerca de { $best }; muy probablemente entre { $low } y { $high }. Dentro de la ventana deberían salir bien al menos { $sure } de cada 100 piezas.

came-out = { $thickness ->
    [thin] Salió fino
    [thick] Salió grueso
   *[right] Salió bien
}
the-window = Ventana
best-amount = Lo mejor, { $amount }
aimed-at-today = Objetivo de hoy, { $amount }
laydown-axis = Gramaje, { $unit }
looks-at = { $thickness ->
    [thin] { $pots ->
        [one] { $pots } fina con { $range }
       *[other] { $pots } finas con { $range }
    }
    [thick] { $pots ->
        [one] { $pots } gruesa con { $range }
       *[other] { $pots } gruesas con { $range }
    }
   *[right] { $pots ->
        [one] { $pots } correcta con { $range }
       *[other] { $pots } correctas con { $range }
    }
}
chart-words = { $scope }. { $finding } { $looks }. Objetivo de hoy: { $aim }.

faults-by-side = { $above } por encima de la ventana, { $within } dentro, { $below } por debajo.
faults-of-all = { $pots ->
    [one] { $share } pieza.
   *[other] { $share } piezas.
}
share = { $with } de { $of } ({ $low } a { $high } %)
no-pot-there = ninguna pieza
above-window = Encima
within-window = Ventana
below-window = Debajo
share-of-pots = Piezas con el defecto
so-far = Piezas hasta ahora
may-be-share = Pueden ser tantas, con tan pocas piezas
fault-chart-words = { $fault }: { $counts }
more-with-less = Más a menudo con menos esmalte.
more-within = Más a menudo dentro de la ventana.
more-with-more = Más a menudo con más esmalte.

rests-on-controls = { $pieces ->
    [one] { $pieces } pieza de referencia, { $laydown }
   *[other] { $pieces } piezas de referencia, media { $laydown }
}
rests-on-tiles = { $tiles ->
    [one] { $tiles } plaqueta de prueba, { $laydown }
   *[other] { $tiles } plaquetas de prueba, media { $laydown }
}
rests-on-start = Sin pieza de referencia ni plaqueta de prueba: valor inicial, { $laydown }

aims-title = Capas frente a su objetivo
aims-axis = { $coats ->
    [one] La última capa
   *[other] Las últimas { $coats } capas
}
aim = Objetivo
a-coat = Capa
far-off = Lejos de las demás
moving-average = Media móvil
the-aim = Objetivo
within-limits = Franja en que las capas cumplen el objetivo
aims-on = { $coats ->
    [one] La última capa está justo en el objetivo.
   *[other] La media de las últimas { $coats } capas está justo en el objetivo.
}
aims-over = { $coats ->
    [one] La última capa supera el objetivo en un { $percent }.
   *[other] La media de las últimas { $coats } capas supera el objetivo en un { $percent }.
}
aims-short = { $coats ->
    [one] La última capa queda un { $percent } por debajo del objetivo.
   *[other] La media de las últimas { $coats } capas queda un { $percent } por debajo del objetivo.
}
aims-steady = Se mantienen en el objetivo.
aims-outside = { $coats ->
    [one] Una está lejos de las demás.
   *[other] { $coats } están lejos de las demás.
}

last-set = { $zone ->
    [inside] Última tanda: { $form }, interior
    [outside] Última tanda: { $form }, exterior
   *[whole] Última tanda: { $form }, interior y exterior
}
last-set-weights = { $pieces ->
    [one] { $pieces } pieza, { $when }: media { $mean } en húmedo, { $least } a { $most }, desviación estándar { $spread }.
   *[other] { $pieces } piezas, { $when }: media { $mean } en húmedo, { $least } a { $most }, desviación estándar { $spread }.
}

drift-over = { $coats ->
    [one] Inicio { $since }: { $coats } capa está { $percent } por encima del objetivo.
   *[other] Inicio { $since }: { $coats } capas están de media { $percent } por encima del objetivo.
}
drift-short = { $coats ->
    [one] Inicio { $since }: { $coats } capa está { $percent } por debajo del objetivo.
   *[other] Inicio { $since }: { $coats } capas están de media { $percent } por debajo del objetivo.
}
drift-is-over = Después vuelven al objetivo.
near = Nuevo en ese momento: { $changes }.
nothing-near = Nada nuevo en ese momento: ni cubo, ni medida de densidad, ni báscula, ni pasta.
near-bucket = cubo { $name }
near-scale = báscula { $name }
near-body = pasta { $name }
near-check = densidad medida, { $sg }
check-when-over = Comprobar la densidad del cubo y cuánto se sumergen las piezas.
check-when-short = Comprobar la densidad del cubo y si el bizcocho está húmedo.
drift-began = Inicio del desvío
drift-noted = Visto: empezar de nuevo
drift-is-noted = Visto. Las capas se comparan de nuevo con su objetivo.

sizes-title = { $zone ->
    [inside] Tamaños: { $shape }, interior
    [outside] Tamaños: { $shape }, exterior
   *[whole] Tamaños: { $shape }, interior y exterior
}
sizes-rest-on = { $pots ->
    [one] Según { $pots } pieza cocida de esta forma, para el cubo de hoy.
   *[other] Según { $pots } piezas cocidas de esta forma, para el cubo de hoy.
}
form-and-capacity = { $form }, { $volume }
next-size = Tamaño siguiente, { $volume }
size-amount = { $aim } ({ $low } a { $high })
holds = Capacidad, { $unit }
aim-may-be = Dónde puede estar el objetivo
sizes-words = { $title }; { $sizes }.
size-at = con { $volume } { $wet }

sets-title = Tandas que combinan
waiting-shelf = { $zone ->
    [inside] En espera: { $form }, interior
    [outside] En espera: { $form }, exterior
   *[whole] En espera: { $form }, interior y exterior
}
fired-shelf = { $zone ->
    [inside] Salieron bien: { $form }, interior
    [outside] Salieron bien: { $form }, exterior
   *[whole] Salieron bien: { $form }, interior y exterior
}
best-set = Las { $size } mejores, con { $percent } de diferencia: { $pieces }.
next-to-match = Siguiente pieza que combina: { $wet }.

use-title = Consumo
each-week = Por semana
weekly = { $coats ->
    [one] { $wet } húmedo, de { $coats } capa de las últimas { $weeks } semanas.
   *[other] { $wet } húmedo, de { $coats } capas de las últimas { $weeks } semanas.
}
bucket-left = { $coats ->
    [0] Quedan { $wet }: menos de un tercio de lo preparado. Mezclar más.
    [one] Quedan { $wet }: { $coats } capa más hasta el último tercio, para sumergir.
   *[other] Quedan { $wet }: unas { $coats } capas más hasta el último tercio, para sumergir.
}
to-fill-up = Para llenarlo: { $powder } de polvo y { $water } de agua. Usar mascarilla con filtro.

near-hand = primeras capas de { $name }
hands-title = Manos
hand-on = { $coats ->
    [one] { $coats } capa, justo en el objetivo
   *[other] { $coats } capas, de media justo en el objetivo
}
hand-over = { $coats ->
    [one] { $coats } capa, { $percent } por encima del objetivo
   *[other] { $coats } capas, de media { $percent } por encima del objetivo
}
hand-short = { $coats ->
    [one] { $coats } capa, { $percent } por debajo del objetivo
   *[other] { $coats } capas, de media { $percent } por debajo del objetivo
}
hand-spread = { $mean }. Desviación típica { $spread }.
bisque-title = Bizcocho: { $body }
newest-lot = El lote más nuevo absorbe { $percent }.
lots-axis = Lotes, del más antiguo al más nuevo
a-lot = Un lote
in-their-order = En su orden
usual-bisque = Usual para cono 06 a 04
repeats-title = Báscula: { $scale }
repeats-worse-now = Se repite en { $now }, peor que { $before } en la prueba anterior. Nivelarla, limpiar bajo el plato, cambiar la pila y probarla otra vez.
repeats-better-now = Se repite en { $now }, mejor que { $before } en la prueba anterior.
repeats-as-before = Se repite en { $now }, como en la prueba anterior.
tests-axis = Pruebas, de la más antigua a la más nueva
a-test = Desviación estándar de una prueba
test-reaches = Cuán segura es
the-step = Una división de la pantalla
sg-title = Densidad: { $bucket }
sg-steady = { $checks } comprobaciones, la densidad siguió en { $last }.
sg-rose = Se espesó: densidad { $first } el { $day }, { $last } ahora.
sg-fell = Se diluyó: densidad { $first } el { $day }, { $last } ahora.
working-sg = Densidad de trabajo { $sg }
flow-title = Flujo: { $bucket }
flow-went = { $first } s el { $day }, { $last } s ahora, copa: { $cup }.
any-cup = la misma
volume-title = Volumen: { $bucket }
volume-went = { $first } l el { $day }, { $last } l ahora, por el nivel.
one-check = Una lectura
over-time = Con el tiempo
