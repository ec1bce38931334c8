### Not yet read by a native potter.

decimal-mark = {","}
span = { $low } a { $high }
percent = { $number } %
laydown-unit = { $mass } por 100 { $area }
laydown = { $number } { $unit }

empty = { $quantity ->
    [weight] Escribir el peso, por ejemplo { $example }.
    [volume] Escribir el volumen, por ejemplo { $example }.
    [surface] Escribir la superficie, por ejemplo { $example }.
    [length] Escribir la longitud, por ejemplo { $example }.
    [time] Escribir el tiempo, por ejemplo { $example }.
    [temperature] Escribir la temperatura, por ejemplo { $example }.
    [specific_gravity] Escribir la densidad, por ejemplo { $example }.
   *[number] Escribir el número, por ejemplo { $example }.
}
not-a-number = { $quantity ->
    [weight] “{ $text }” no se entiende como peso. Usar cifras, por ejemplo { $example }.
    [volume] “{ $text }” no se entiende como volumen. Usar cifras, por ejemplo { $example }.
    [surface] “{ $text }” no se entiende como superficie. Usar cifras, por ejemplo { $example }.
    [length] “{ $text }” no se entiende como longitud. Usar cifras, por ejemplo { $example }.
    [time] “{ $text }” no se entiende como tiempo. Usar cifras, por ejemplo { $example }.
    [temperature] “{ $text }” no se entiende como temperatura. Usar cifras, por ejemplo { $example }.
    [specific_gravity] “{ $text }” no se entiende como densidad. Usar cifras, por ejemplo { $example }.
   *[number] “{ $text }” no se entiende como número. Usar cifras, por ejemplo { $example }.
}
unknown-unit = { $quantity ->
    [weight] “{ $unit }” no es una unidad de peso. Escribir como { $example }, o solo cifras.
    [volume] “{ $unit }” no es una unidad de volumen. Escribir como { $example }, o solo cifras.
    [surface] “{ $unit }” no es una unidad de superficie. Escribir como { $example }, o solo cifras.
    [length] “{ $unit }” no es una unidad de longitud. Escribir como { $example }, o solo cifras.
    [time] “{ $unit }” no es una unidad de tiempo. Escribir como { $example }, o solo cifras.
    [temperature] “{ $unit }” no es una unidad de temperatura. Escribir como { $example }, o solo cifras.
    [specific_gravity] “{ $unit }” no es una unidad de densidad que laydown conozca. Escribir como { $example }, o solo cifras.
   *[number] “{ $unit }” no es una unidad que laydown conozca para un número. Escribir como { $example }, o solo cifras.
}
us-or-imperial = { $unit } no mide lo mismo en EE. UU. que en Gran Bretaña. Escribir “us { $unit }” o “imp { $unit }”.
mixed-units = “{ $text }” mezcla unidades. Escribir primero la mayor y nombrar cada una, por ejemplo 1 lb 2 oz.
two-marks = “{ $text }” tiene más de un signo decimal. Quitar el signo de los miles.
thousands-or-decimal = ¿“{ $text }” es { $whole }, o poco más de { $part }? Escribir { $whole }, o usar “{ $mark }” como signo decimal.
space-in-number = “{ $text }” tiene un espacio dentro de un número. Escribirlo sin él.
negative = { $quantity ->
    [weight] Un peso no puede ser menor que cero. Revisar el signo menos o tarar otra vez la báscula.
    [volume] Un volumen no puede ser menor que cero. Revisar el signo menos.
    [surface] Una superficie no puede ser menor que cero. Revisar el signo menos.
    [length] Una longitud no puede ser menor que cero. Revisar el signo menos.
    [time] Un tiempo no puede ser menor que cero. Revisar el signo menos.
    [temperature] Aquí la temperatura no puede ser menor que cero. Revisar el signo menos.
    [specific_gravity] Una densidad no puede ser menor que cero. Revisar el signo menos.
   *[number] Aquí el número no puede ser menor que cero. Revisar el signo menos.
}
too-large = { $quantity ->
    [weight] Ese peso pasa del límite de 100 kg. Revisar la cifra y la unidad.
    [volume] Ese volumen pasa del límite de 1000 litros. Revisar la cifra y la unidad.
    [surface] Esa superficie pasa del límite de 10 m². Revisar la cifra y la unidad.
    [length] Esa longitud pasa del límite de 10 m. Revisar la cifra y la unidad.
    [time] Ese tiempo pasa del límite de 24 horas. Revisar la cifra y la unidad.
    [temperature] Esa temperatura pasa del límite de 1500 °C. Revisar la cifra y la unidad.
    [specific_gravity] Esa densidad pasa del límite de 2,2. Revisar la cifra y la unidad.
   *[number] Ese número pasa del límite de 1 000 000 000. Revisar la cifra y la unidad.
}
no-temperature = Ningún taller ni horno llega a { $degrees } °C. Revisar la cifra y la unidad.

no-heavier-than-water = Densidad { $number }: no pesa más que el agua, y un esmalte siempre pesa más. Remover el cubo hasta el fondo y pesar de nuevo.
too-thin-for-glaze = Densidad { $number }: es casi agua, y un esmalte tiene 1,02 o más. Remover el cubo hasta el fondo y pesar de nuevo.
too-heavy-for-glaze = Densidad { $number }: pesa más que cualquier esmalte que se pueda verter. Revisar la cifra: 1450 g por litro son 1,45.
very-thin-for-glaze = Densidad { $number }: muy diluido para un esmalte. Remover el cubo hasta el fondo y comprobarlo de nuevo.
no-laydown = Un gramaje está entre 0 y { $most } g por 100 cm², y { $number } g no lo está. La mayoría empieza cerca de 5,5.
no-powder-density = La densidad del polvo { $number } no está entre 1,5 y 7. La mayoría de los esmaltes ronda 2,6.

heavier-than-powder = La densidad { $number } es tan alta como la del propio polvo seco ({ $density }). Revisar la lectura y la densidad del polvo de este esmalte.
no-fraction = La parte de esmalte seco debe estar entre 0 y 1, y { $number } no lo está. Pesar de nuevo el esmalte húmedo y seco.
nothing-to-mix = Tanto el polvo como el agua deben pesar algo. Pesarlos de nuevo.
empty-vessel = El recipiente no pesa más lleno que vacío. Pesarlo vacío y seco, y después lleno hasta su línea.
too-unsure = Esta báscula es poco precisa para tan poco esmalte. Usar una más precisa o pesar más cantidad.
no-volume = Dar cuánto cabe en el recipiente hasta su línea.
water-temperature = El agua a { $degrees } °C no sirve para medir un recipiente. Usar agua entre 0 y 40 °C.

unknown-code = “{ $code }” no es { $what ->
    [zone] una zona
    [verdict] un veredicto
    [sensitivity] una sensibilidad
    [shape] un tipo de forma
    [stage] un estado de medida
    [thickness] un grosor
    [fault] un defecto
    [cone] un cono
    [cone_kind] un tipo de cono
    [reading] una lectura
    [part] una parte
    [side] un lado
    [sureness] un grado de certeza
    [mass_unit] una unidad de masa
    [volume_unit] una unidad de volumen
    [area_unit] una unidad de superficie
    [length_unit] una unidad de longitud
    [decimal_mark] un signo decimal
    [rhythm] un ritmo de copias
    [firing_state] un estado de cocción
   *[other] un código
} que esta versión de laydown conozca. Actualizar laydown y abrir el taller de nuevo.

code-length = El código de una pieza tiene cinco caracteres o más. Mirar el pie otra vez.
code-character = Ningún código contiene “{ $character }”. Mirar el pie otra vez.
code-check = Este código se leyó o se escribió mal: su último carácter no concuerda con los demás. Mirar el pie otra vez.
above-rim = Eso queda por encima del borde: el cubo tiene { $depth } de hondo. Revisar el nivel o la profundidad del cubo.
more-water-than-there-is = En este esmalte solo hay { $water } de agua. Revisar la cifra y cuánto esmalte hay en el cubo.
outside-cup = Hecha para { $from } a { $to } segundos: { $cup }. Serviría: { $better }; aun así, estos segundos comparan el cubo consigo mismo.
outside-every-cup = Hecha para { $from } a { $to } segundos: { $cup }. Aun así, estos segundos comparan el cubo consigo mismo.
