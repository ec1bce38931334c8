### Not yet read by a native potter.

new = Lote de bizcocho nuevo
title = Lote de bizcocho
archive = Archivar este lote
name-hint = Bizcocho 14
body = Pasta
cone = Cono
not-known = Sin anotar
fired-on = Cocido el
soaking = Empapado por
soaking-help = Mantener un solo modo: solo se comparan lotes empapados igual.
way = { $way ->
    [boil] Hervir 5 horas y dejar un día en el agua. Cuidado con el vapor y la olla caliente.
    [cold] Un día en agua fría. Llena menos poros.
   *[vacuum] Al vacío. Llena la mayoría.
}
dry = Completamente seco
dry-help = Basta un trozo sin esmaltar, de 50 g o más. Secarlo dos horas en el horno a 110 °C y dejarlo enfriar.
soaked = Empapado
soaked-help = Secar la película de agua con un paño húmedo y pesar enseguida.
suspended = Colgado en agua, si se pesó
suspended-help = La pieza empapada de un hilo, bajo el agua y sin tocar el fondo. Da densidad y poros.
temperature = Temperatura del agua, °C
drinks = Absorbe { $percent } (±{ $doubt }) de su peso seco, { $way }.
usual = El bizcocho de cono 06 a 04 suele absorber de { $from } a { $to }.
pores = Densidad aparente { $density } g/ml; los poros abiertos son { $porosity } de su volumen.
as-before = Como los lotes anteriores, { $mean } de media.
drinks-more = Más que los lotes anteriores, { $mean } de media: la misma inmersión toma más. ¿Se coció a menos temperatura o menos tiempo?
drinks-less = Menos que los lotes anteriores, { $mean } de media: la misma inmersión toma menos. ¿Se coció a más temperatura o más tiempo?
no-weight = Una pieza seca pesa algo. Revisar el peso.
soaked-under-dry = Empapada pesa menos que seca. Cambiar los pesos o pesar otra vez.
too-much = Ningún bizcocho absorbe tanto. Revisar los dos pesos.
suspended-over-dry = Colgada en agua, una pieza pesa menos que seca. Revisar qué peso es cuál.
no-water = Revisar la temperatura del agua.
row = absorbe { $percent } ({ $way }), { $day }
wet = { $bare } es { $over } más que las piezas secas de esta forma, unos { $usual }. Si se enjuagó, esa agua sigue dentro: dejarla secar, o tomará poco esmalte.
