### Not yet read by a native potter.

headline-within = BIEN
headline-short = FALTA
headline-over = SOBRA
headline-cannot-tell = NO SE SABE
headline-near = { $because ->
    [guess] CERCA DE LA PRIMERA ESTIMACIÓN
    [tiles] CERCA DE LAS PLAQUETAS
    [bucket] CERCA: DENSIDAD SIN COMPROBAR
    [pots] CERCA: AÚN POCAS PIEZAS
   *[area] CERCA: SUPERFICIE SIN MEDIR
}
headline-under = { $because ->
    [guess] BAJO LA PRIMERA ESTIMACIÓN
    [tiles] POR DEBAJO DE LAS PLAQUETAS
    [bucket] POR DEBAJO: DENSIDAD SIN COMPROBAR
    [pots] POR DEBAJO: AÚN POCAS PIEZAS
   *[area] POR DEBAJO: SUPERFICIE SIN MEDIR
}
headline-above = { $because ->
    [guess] SOBRE LA PRIMERA ESTIMACIÓN
    [tiles] POR ENCIMA DE LAS PLAQUETAS
    [bucket] POR ENCIMA: DENSIDAD SIN COMPROBAR
    [pots] POR ENCIMA: AÚN POCAS PIEZAS
   *[area] POR ENCIMA: SUPERFICIE SIN MEDIR
}

save-it = Guardar
add = Añadir { $amount }
take-off = Quitar { $amount }
use-finer-scale = Usar una báscula más precisa
add-and-use-finer-scale = Añadir algo y usar una báscula más precisa
take-off-and-use-finer-scale = Quitar algo y usar una báscula más precisa
add-or-save = Añadir { $amount } o guardar
take-off-or-save = Quitar { $amount } o guardar
add-to-be-sure = Añadir { $amount } para asegurar
take-off-to-be-sure = Quitar { $amount } para asegurar

on-the-aim = Justo en el objetivo.
under-the-aim = { $amount } por debajo del objetivo, dentro de { $span }.
over-the-aim = { $amount } por encima del objetivo, dentro de { $span }.
target-too-coarse = Objetivo { $span }. Esta báscula es poco precisa para estar seguro.
target-add = Objetivo { $span }. Añadir { $amount } para llegar justo.
target-take-off = Objetivo { $span }. Quitar { $amount } con esponja, raspando o lavando, para quedar justo.
guess-on-the-aim = En el objetivo. Lo correcto es quizá { $span }.
guess-under-the-aim = { $amount } por debajo del objetivo. Lo correcto es quizá { $span }.
guess-over-the-aim = { $amount } por encima del objetivo. Lo correcto es quizá { $span }.
scale-too-coarse = Poco precisa: esta báscula tiene una división de { $step }, y el objetivo es { $span }.
too-near-the-edge = Demasiado cerca del límite de { $span } para una báscula con división de { $step }.

rests-on-fired = { $right ->
    [one] Se basa en 1 pieza de referencia que salió bien.
   *[other] Se basa en { $right } piezas de referencia que salieron bien.
}
rests-on-controls = { $pieces ->
    [one] Se basa en 1 pieza de referencia, sin juzgar tras la cocción.
   *[other] Se basa en { $pieces } piezas de referencia, ninguna juzgada tras la cocción.
}
rests-on-tiles = Se basa en plaquetas de prueba, no en piezas.
rests-on-start = Aún no hay piezas ni plaquetas con este esmalte.
sg-checked = Densidad comprobada { $when }.
sg-not-checked = Densidad sin comprobar.
area-not-measured = Superficie estimada.

certainty = Exacto a ±{ $half_width }.
carries = { $dry } en seco, { $laydown }
on-control = En la pieza de referencia esta capa pesaría { $amount }.

spoken-grams = { $form ->
    [single] { $number } gramo
   *[several] { $number } gramos
}
spoken-ounces = { $form ->
    [single] { $number } onza
   *[several] { $number } onzas
}
spoken-within = Bien. Guardar.
spoken-short = Falta. Añadir { $amount }.
spoken-over = Sobra. Quitar { $amount }.
spoken-near = { $because ->
    [guess] Cerca de la primera estimación. Guardar.
    [tiles] Cerca de las plaquetas. Guardar.
    [bucket] Cerca, pero la densidad está sin comprobar. Guardar.
    [pots] Cerca, pero aún de pocas piezas. Guardar.
   *[area] Cerca, pero la superficie está sin medir. Guardar.
}
spoken-under = { $because ->
    [guess] Por debajo de la primera estimación. Añadir { $amount } o guardar.
    [tiles] Por debajo de las plaquetas. Añadir { $amount } o guardar.
    [bucket] Por debajo, pero la densidad está sin comprobar. Añadir { $amount } o guardar.
    [pots] Por debajo, pero aún de pocas piezas. Añadir { $amount } o guardar.
   *[area] Por debajo, pero la superficie está sin medir. Añadir { $amount } o guardar.
}
spoken-above = { $because ->
    [guess] Por encima de la primera estimación. Quitar { $amount } o guardar.
    [tiles] Por encima de las plaquetas. Quitar { $amount } o guardar.
    [bucket] Por encima, pero la densidad está sin comprobar. Quitar { $amount } o guardar.
    [pots] Por encima, pero aún de pocas piezas. Quitar { $amount } o guardar.
   *[area] Por encima, pero la superficie está sin medir. Quitar { $amount } o guardar.
}
spoken-short-too-coarse = Falta. Añadir algo y usar una báscula más precisa.
spoken-over-too-coarse = Sobra. Quitar algo y usar una báscula más precisa.
spoken-too-coarse = No se sabe. Esta báscula es poco precisa.
spoken-add-to-be-sure = No se sabe. Añadir { $amount } para asegurar.
spoken-take-off-to-be-sure = No se sabe. Quitar { $amount } para asegurar.

no-number = Eso no es un peso. Escribir lo que muestra la báscula.
no-bare = La pieza sin esmaltar debe pesar algo. Pesarla antes de esmaltar.
glazed-under-bare = Pesa menos esmaltada ({ $glazed }) que sin esmaltar ({ $bare }). Comprobar que los dos pesos son de esta pieza y no están cambiados.
negative = El peso es menor que cero. Tarar con la pieza sin esmaltar en la báscula y pesar de nuevo.
nothing = La báscula no muestra esmalte. Pesar la pieza después de aplicar la capa.
over-capacity = { $weight } es más de lo que pesa esta báscula ({ $capacity }). Usar una mayor o elegir la báscula que se usó.
under-minimum = { $weight } es menos de lo que esta báscula debería pesar ({ $minimum }). Usar una más precisa.
finer-than-step = Esta báscula tiene una división de { $step } y no puede mostrar { $weight }. Escribir lo que muestra o elegir la báscula que se usó.
more-than-piece-holds = { $weight } es más esmalte del que esta pieza puede llevar (unos { $most } como máximo). Comprobar que se taró la báscula con la pieza sin esmaltar.

read-at-once = Leer la báscula en cuanto deje de gotear. La capa pierde agua desde el primer minuto.
weigh-again-first = Pesar otra vez la pieza justo antes de esta capa y usar ese peso como tara: la pared aún guarda agua de la capa anterior. Después, leer en cuanto deje de gotear.

no-step = Dar la división de la báscula, por ejemplo 0,1 g.
no-capacity = Dar lo máximo que pesa la báscula. Debe ser muchas veces su división.
minimum = El mínimo de la báscula debe ser menor que su capacidad. Dejarlo vacío si no se sabe.
repeatability = La repetibilidad de la báscula no puede ser correcta. Pesar una misma cosa diez veces o dejarla vacía.

scale-decides = Esta báscula tiene una división de { $step }, lo bastante precisa para esta capa.
scale-decides-only-just = Esta báscula tiene una división de { $step }, apenas lo bastante precisa para esta capa. Una más precisa diría más.
scale-is-too-coarse = Esta báscula tiene una división de { $step }: ningún peso que muestre puede estar bien.
weigh-together = Pesar { $together } piezas juntas (objetivo { $total }).
weigh-finer = Usar una báscula con división de { $fine } o menor.
weigh-together-or-finer = Pesar { $together } piezas juntas (objetivo { $total }), o usar una báscula con división de { $fine }.
scale-is-too-small = La pieza con su capa es más de lo que pesa esta báscula ({ $capacity }).
laboratory-balance = Solo una balanza de laboratorio pesa { $capacity } con división de { $step }. Mirar la etiqueta otra vez.
very-few-steps = Una báscula para { $capacity } con división de { $step } tiene muy pocas divisiones. Mirar la etiqueta otra vez.
