### Not yet read by a native potter.

title = Peso seco
title-of = { $piece }: peso seco
piece = Pieza
bare-was = Pesada sin esmaltar: { $bare }.
bare-help = Lo que pesaba esta pieza antes de su primera capa. Sin eso, el peso seco no dice nada.
bone-dry = Pieza completamente seca
bone-dry-help = Está seca cuando dos pesadas con una hora de diferencia son iguales. Sujetarla por el pie sin esmalte y lavarse el polvo de esmalte de las manos.
weigh-it = Pesar la pieza completamente seca y escribir lo que muestra la báscula.
dry-and-by-sg = Esmalte seco: { $dry } pesado; { $by-sg } según la densidad del cubo.
with-doubt = { $number } ±{ $doubt }
of-all-coats = { $coats ->
    [one] Es el peso de { $coats } capa.
   *[other] Es el peso de { $coats } capas juntas. Se reparte según sus pesos húmedos, así que cada una es menos segura.
}
of-one-coat = { $zone }: { $dry }, { $laydown }.
agree = El peso seco y la densidad coinciden.
disagree = { $direction ->
    [more] El peso seco da { $percent } más de esmalte que la densidad. Algo de esto está mal:
   *[less] El peso seco da { $percent } menos de esmalte que la densidad. Algo de esto está mal:
}
suspect-sg = { $direction ->
    [more] La densidad era { $would-be }, no { $checked }: se evaporó agua tras el control, o el recipiente, su marca o su temperatura no eran correctos.
   *[less] La densidad era { $would-be }, no { $checked }: el esmalte se había asentado, se añadió agua, o el recipiente, su marca o su temperatura no eran correctos.
}
suspect-powder = La densidad del polvo es { $would-be }, no { $set }: se ajusta en el esmalte.
suspect-wet-bisque = { $water } de agua estaban en el bizcocho al pesarlo sin esmaltar, como tras enjuagarlo.
suspect-lost = { $lost } de esmalte seco se perdieron después de pesar, como al limpiar el pie.
suspect-not-dry = { $water } de agua siguen en la pieza: volver a pesarla mañana.
saved = Peso seco guardado. Los objetivos lo cuentan junto a la densidad.
removed = Peso seco quitado.
was-fired = Esta pieza está cocida y su esmalte ya pesa otra cosa. Solo cuenta el peso seco de antes de la cocción.
no-bare = Escribir lo que pesaba la pieza sin esmaltar.
not-over-bare = No es más que la pieza sin esmaltar, { $bare }. Revisar los dos pesos.
not-under-wet = La capa pesaría igual seca que húmeda, { $wet }. Revisar los pesos o dejarla secar.
over-capacity = La báscula pesa { $capacity } como máximo. Revisar el peso.
weigh-dry = Pesar la pieza seca
weigh-a-dry-piece = Pesar una pieza seca
weighed-dry = { $dry } seco
