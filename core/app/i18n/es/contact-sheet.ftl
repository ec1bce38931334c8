### Not yet read by a native potter.

liked-on-average = puntuación media de { $mean } de 5
coat = { $coat }: { $weight }, { $laydown }
program = Programa: { $program }
top = Temperatura máxima { $degrees }
took = duró { $time }
page-not-painted = No se pudo dibujar una página. Abrir de nuevo la hoja de contactos.
