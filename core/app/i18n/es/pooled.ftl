pots = { $pots ->
    [one] 1 pieza cocida
   *[other] { $pots } piezas cocidas
}
controls = { $controls ->
    [one] 1 pieza de referencia
   *[other] { $controls } piezas de referencia
}
from-pots = De { $pots }.
from-pots-and-controls = De { $pots } y { $controls }.
from-kept = La cantidad que se mantiene para esta forma.
rests-on = Se basa en { $pots }.
rests-on-both = Se basa en { $pots } y { $controls }.

more-than-nine = más de 9 de cada 10
about = unas { $tenths } de cada 10
less-than-one = menos de 1 de cada 10
comes-out-right = Probabilidad de salir bien: { $odds }.
right-on-aim = En el objetivo salen bien { $odds }.
accepted = Se acepta lo que sale bien al menos 4 de cada 5 veces.

headline-probably = SEGURAMENTE BIEN
probably = Es probable que esté bien. Una división de { $step } es demasiado gruesa para estar seguro de { $span }.
not-sure = Demasiado lejos del objetivo para estar seguro. Seguro: { $span }.
spoken-probably = Seguramente bien. Guardar.

moved = Tras { $pots }: { $before } pasa a { $after }.
back-to = Volver a { $before }
keep = Mantener { $now }
use-all = Usar las piezas cocidas
uses-all = Los objetivos siguen a las piezas cocidas.
uses-best = Aquí los objetivos son como antes de las piezas cocidas.
keeps = Objetivo mantenido en { $now }.
sets-targets = Al pesar, estas piezas cocidas fijan el objetivo junto con todo lo que se sabe.

all-right = Todas las piezas cocidas salieron bien. Aún no se sabe cuánto es demasiado.
all-thin = Todas las piezas cocidas salieron finas. El objetivo puede ser todavía demasiado bajo.
all-thick = Todas las piezas cocidas salieron gruesas. El objetivo puede ser todavía demasiado alto.
ratings-inverted = Las piezas juzgadas finas llevan más esmalte que las gruesas. ¿Están cambiados los juicios?
mixed = Fino, correcto y grueso se solapan. Ninguna cantidad saldrá bien con seguridad.
controls-apart = Dos piezas de referencia difieren un { $ratio }: { $less } y { $more }. Quitar la marca a la equivocada.
tiles-above = Las plaquetas de prueba llevan un { $ratio } más de lo que necesitan las piezas.
tiles-below = Las plaquetas de prueba llevan un { $ratio } menos de lo que necesitan las piezas.
start-above = El valor inicial está un { $ratio } por encima de lo que necesitan las piezas.
start-below = El valor inicial está un { $ratio } por debajo de lo que necesitan las piezas.
odd = { $piece } no encaja con las demás y apenas cuenta. Comprobar su peso y su juicio.
groups-apart = { $kind ->
    [body] La necesidad difiere: { $more } lleva un { $ratio } más que { $less }. El objetivo de cada forma sigue su pasta.
    [cone] La necesidad difiere: { $more } lleva un { $ratio } más que { $less }. Para separarlos, añadir un esmalte por cono.
   *[zone] La necesidad difiere: { $more } lleva un { $ratio } más que { $less }. Cada zona tiene su propio objetivo.
}
some-piece = Pieza desconocida
some-body = Pasta desconocida
typed-amount = { $form }, cantidad escrita
cone = cono { $cone }

why-button = ¿Por qué este objetivo?
why = ¿Por qué { $aim }?
weights-add-up = Los porcentajes dicen cuánto cuenta cada dato.
pots-say = Las piezas cocidas dicen { $wet }.
too-few-pots = { $pots ->
    [one] Cuenta 1 capa cocida y juzgada de este esmalte. A partir de { $enough } fijan el objetivo.
   *[other] Cuentan { $pots } capas cocidas y juzgadas de este esmalte. A partir de { $enough } fijan el objetivo.
}
piece-and-zone = { $piece }, { $zone }
control-piece = Pieza de referencia: { $piece }
test-tile = Plaqueta de prueba: { $tile }
starting-value = Valor inicial
starts-with = { $laydown }.
usual = Lo habitual
usual-help = Lo que laydown supone de todo esmalte y toda forma.
when-and-weight = { $when }: { $wet }.
when-weight-and-look = { $when }: { $wet }, { $look }.
facts-and-without = { $facts } Sin esto: { $without }.
does-not-count = { $facts } No cuenta.
leave-out = No contar
count-again = Contar de nuevo
is-left-out = Ya no cuenta.
counts-again = Cuenta de nuevo.
and-so = { $done } { $before } pasa a { $after }.
