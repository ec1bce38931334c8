### Not yet read by a native potter.

title = Escalera de plaquetas de prueba
save = Guardar estas plaquetas
count = Cuántas plaquetas
count-help = En pasos iguales del 60% al 140% del objetivo del esmalte. Un número impar pone una en el objetivo.
count-impossible = Una escalera tiene de { $fewest } a { $most } plaquetas.
sg = Densidad del cubo
firing = Añadirlas a una cocción
no-firing = Todavía no
aim = Objetivo de este esmalte: { $laydown }.
rung = { $label }: { $wet } húmedo, { $share } del objetivo.
scratch = Rayar la marca en cada plaqueta antes del bizcocho, o escribirla con bajo cubierta: el lápiz se quema.
thin-ones = Las plaquetas por debajo del { $share } del objetivo solo muestran el extremo fino; los objetivos no las usan.
planned = { $tiles ->
    [one] { $tiles } plaqueta prevista. Pesar su capa y anotarla en su ficha.
   *[other] { $tiles } plaquetas previstas. Pesar cada capa y anotarla en su ficha.
}
piece = Plaqueta de prueba { $label }
section = Escaleras de plaquetas
add = Planear una escalera
none = Un esmalte de fino a grueso en una fila de plaquetas muestra el grosor que quiere.
