### Not yet read by a native potter.

new = Recipiente nuevo
title = Recipiente
archive = Archivar este recipiente
name-hint = Tarro de mermelada
empty = Peso vacío
empty-help = Seco por dentro y por fuera.
with-water = Peso con agua
with-water-help = Lleno a ras o hasta una línea rayada. Con esmalte, llenar hasta la misma línea.
temperature = Temperatura del agua, °C
holds = Caben { $volume }.
