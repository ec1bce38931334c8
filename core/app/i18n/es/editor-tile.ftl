### Not yet read by a native potter.

new = Plaqueta de prueba nueva
title = Plaqueta de prueba
archive = Archivar esta plaqueta de prueba
name-hint = Plaqueta 12
area = Superficie esmaltada
area-help = Largo por ancho de lo esmaltado; las dos caras si se esmaltaron ambas.
net = Peso húmedo de la capa
dry = Peso seco de la capa
dry-help = Completamente seca. Mejor que el peso húmedo, si se esperó.
no-weight = Dar el peso seco, o el peso húmedo y la densidad.
