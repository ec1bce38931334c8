### Not yet read by a native potter.

liked-on-average = puntuación media de { $mean } de 5
page-not-painted = No se pudo dibujar una página. Abrir de nuevo la hoja de contactos.
