### Not yet read by a native potter.

title = Preparar { $glaze }
save = Guardar como cubo nuevo
by = Cuánto
by-powder = Por esmalte seco
by-powder-detail = Sin añadidos: van aparte, encima
by-volume = Por volumen
powder = Esmalte seco
volume = Esmalte deseado
sg = Densidad deseada
scale = Báscula
lot-of = Preparación del { $day }
water = Agua
weigh = { $name }: { $weight }
weighed = { $done } de { $all } pesados.
rounded = { $name }: esta báscula muestra { $weight } por { $exact }, { $off } de error. Usar una más fina o preparar más.
over-capacity = { $name }: { $weight } es más de lo que pesa esta báscula. Pesar por partes.
makes = Da { $volume } con densidad { $sg }, con { $powder } de esmalte seco.
by-weight = Pesar cada polvo: una taza de uno esponjoso puede tener un quinto de lo que tiene de uno denso.
