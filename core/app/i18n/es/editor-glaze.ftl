### Not yet read by a native potter.

new = Esmalte nuevo
title = Esmalte
archive = Archivar este esmalte y sus cubos
name-hint = Blanco ceniza
sensitivity = Sensibilidad al grosor
accepted = Se acepta ±{ $percent }
sg = Densidad del cubo, si se comprobó
sg-help = Un litro que pesa 1450 g tiene densidad { $sg }. Se puede comprobar más tarde.
powder-density = Densidad del polvo
powder-density-help = { $density } sirve para la mayoría de los esmaltes. Poner más si lleva mucho circonio, bario u otros óxidos pesados.
starting-laydown = Gramaje inicial, g por 100 cm²
starting-laydown-help = Esmalte seco. Se usa mientras no haya plaqueta de prueba ni pieza de referencia.
powder-in-bucket = El cubo es { $powder } polvo en peso.
first-bucket = Primer cubo
