### Not yet read by a native potter.

new = Cocción nueva
title = Cocción
begin = Empezar a cargar
delete = Quitar esta cocción
kiln = Horno
fires = Qué se cuece
glazed-ware = Piezas esmaltadas
bisque = Bizcocho
bisque-detail = Barro crudo, sin esmalte
date = Fecha
fired-on = Cocida el
number = Número de cocción
number-impossible = Usar un número entero, como 12.
name-hint = Mercado de otoño
cone-aimed-at = Cono objetivo
cone = Cono { $cone }
cone-kind = Tipo de cono
cone-kind-help = Cada tipo se dobla a su propia temperatura.
program = Programa
program-hint = 100 °C por hora hasta 600, luego 150 por hora, mantener 10 minutos
note = Nota
saved = Cono { $cone }, { $kiln }.

witnesses = Conos testigo
witnesses-help = Leerlos después de la cocción: muestran cuánto calor recibieron las piezas.
no-witnesses = Ninguno
cones = Conos { $cones }
cone-below = Cono testigo inferior
cone-at-aim = Cono testigo del objetivo
cone-above = Cono testigo superior
witness-cone = Cono testigo { $cone }
witness-help = Doblado: la punta está a la altura de la base. Algo doblado es menos; muy doblado, más.
not-read-yet = Sin leer todavía
none-stood = No había
cone-reading = { $reading ->
    [standing] Cono { $cone } sin doblar
    [soft] Cono { $cone } algo doblado
    [hard] Cono { $cone } muy doblado
    [flat] Cono { $cone } tumbado
   *[at] Cono { $cone } doblado
}

top = Temperatura máxima, °C
top-impossible = Una cocción acaba entre 500 y 1500 °C. Revisar la cifra.
hours = Duración de la cocción, horas
hours-impossible = Una cocción dura de unos minutos a una semana. Revisar la cifra.
