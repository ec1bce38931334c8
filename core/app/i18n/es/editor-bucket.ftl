### Not yet read by a native potter.

new = { $glaze }: cubo nuevo
title = { $glaze }: cubo
archive = Archivar este cubo
name-hint = Cubo grande
volume = Volumen, si se sabe
