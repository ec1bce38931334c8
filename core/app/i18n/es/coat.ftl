### Not yet read by a native potter.

saved = Guardado
wet-weight = Peso húmedo
bare-glazed = Sin esmaltar, esmaltada
added = Añadido en un retoque
rubbed-off = Frotado
verdict = Veredicto
reading = Lectura
confirmed = Lejos del objetivo, confirmado
target-then = Objetivo al pesar
aim-and-span = { $aim } ({ $span })
aim-and-guess = { $aim }, estimado: quizá { $span }
laydown = Gramaje
weighed-dry = Pesado seco
dipped = Sumergido o vertido
seconds = { $time } s
glaze-bucket = Esmalte, cubo
sg = Densidad
area = Superficie
make-control = Usar como pieza de referencia
no-longer-control = Dejar de usar como pieza de referencia
control-marked = Ya es pieza de referencia. Los objetivos la usan.
control-unmarked = Ya no es pieza de referencia.
removed = Capa quitada.
control-came-out = { $thickness ->
    [thin] Esta pieza salió demasiado fina. Elegir como pieza de referencia una que saliera bien.
   *[thick] Esta pieza salió demasiado gruesa. Elegir como pieza de referencia una que saliera bien.
}
control-was-off = { $verdict ->
    [short] A esta capa le faltaba esmalte al pesarla, y no se ha indicado cómo salió del horno. ¿Basar los objetivos en ella de todos modos?
   *[over] A esta capa le sobraba esmalte al pesarla, y no se ha indicado cómo salió del horno. ¿Basar los objetivos en ella de todos modos?
}
control-not-judged = Aún no se ha indicado si esta pieza salió bien. ¿Basar los objetivos en ella de todos modos?
control-not-fired = Esta pieza aún no se ha cocido, así que no se puede saber si está bien. ¿Basar los objetivos en ella de todos modos?
note = Nota
