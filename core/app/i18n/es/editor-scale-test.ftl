### Not yet read by a native potter.

new = Probar una báscula
title = Prueba de báscula
archive = Archivar esta prueba
scale = Báscula
readings = Diez lecturas
readings-help = Poner la báscula a cero. Colocar una pieza del peso que se suele esmaltar, leer, quitarla, esperar al cero. Diez veces.
shown-column = Mostrado, { $unit }
known = Peso conocido, si lo hay
known-help = Una pesa de calibración, o lo que muestra otra báscula fiable.
known-shown = Mostrado para él
both-weights = Escribir el peso conocido y lo que la báscula muestra para él.
weigh-something = Pesar una carga diez veces, o comprobar un peso conocido.
row-refused = Fila { $row }: { $why }
saved = { $scale }: prueba guardada.
saved-and-used = { $scale }: prueba guardada. Al pesar se cuenta con ella desde ahora.
repeats = { $loads ->
    [one] { $loads } lectura: media { $mean }, desviación estándar { $deviation } ({ $low } a { $high }, 95 veces de cada 100).
   *[other] { $loads } lecturas: media { $mean }, desviación estándar { $deviation } ({ $low } a { $high }, 95 veces de cada 100).
}
repeats-as-its-step = Se repite tan bien como su división.
repeats-worse = Se repite peor que su división. Nivelarla, protegerla de corrientes de aire y probarla otra vez; mientras tanto se tiene en cuenta al pesar.
good-from = Buena para capas desde { $from } a ±{ $tolerance }; desde { $barely } solo decide algunas.
class-allows = La clase { $class } permite ±{ $allowed } en uso con { $load }.
class-impossible = Ninguna báscula de esta división y capacidad es de clase { $class }. Revisar su etiqueta.
known-right = Correcta con el peso conocido: se desvía { $off }, se permite ±{ $allowed }.
known-over = Muestra { $off } de más; se permite ±{ $allowed }. Calibrarla o revisar la pesa. A las capas pesadas tras tarar apenas les afecta.
known-under = Muestra { $off } de menos; se permite ±{ $allowed }. Calibrarla o revisar la pesa. A las capas pesadas tras tarar apenas les afecta.
too-few = { $loads ->
    [one] { $loads } lectura. Pesar la carga { $wanted } veces, { $fewest } al menos.
   *[other] { $loads } lecturas. Pesar la carga { $wanted } veces, { $fewest } al menos.
}
no-load = La fila { $row } no es un peso que esta báscula pueda mostrar.
stray = La fila { $row }, { $reading }, está lejos de las demás. ¿Era otra carga, o un error al escribir?
fits = { $advice ->
    [decides] buena para esta capa
    [only_just] solo decide algunas de estas capas
    [too_coarse] poco precisa para esta capa
   *[over_capacity] pequeña para esta pieza
}
