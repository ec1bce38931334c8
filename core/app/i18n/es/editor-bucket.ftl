### Not yet read by a native potter.

new = { $glaze }: cubo nuevo
title = { $glaze }: cubo
archive = Archivar este cubo
name-hint = Cubo grande
volume = Volumen al preparar, si se sabe
diameter = Ancho interior
diameter-help = A media altura. Con él, un nivel en el cubo es un volumen.
depth = Profundidad hasta el borde
holds = Caben { $volume } hasta el borde.
empty = Peso vacío
empty-help = Con él, el peso del cubo dice cuánto esmalte hay dentro.
