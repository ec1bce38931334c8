### Not yet read by a native potter.

saved = Guardado
wet-weight = Peso húmedo
bare-glazed = Sin esmaltar, esmaltada
verdict = Veredicto
target-then = Objetivo al pesar
aim-and-span = { $aim } ({ $span })
laydown = Gramaje
glaze-bucket = Esmalte, cubo
sg = Densidad
area = Superficie
make-control = Usar como pieza de referencia
no-longer-control = Dejar de usar como pieza de referencia
control-marked = Ya es pieza de referencia. Los objetivos la usan.
control-unmarked = Ya no es pieza de referencia.
removed = Capa quitada.
