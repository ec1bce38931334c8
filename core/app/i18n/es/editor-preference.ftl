### Not yet read by a native potter.

title = Unidades, sonido y vibración
mass = Pesos
volume = Volúmenes
area = Superficies
length = Longitudes
decimal = Signo decimal
speak = Decir el veredicto en voz alta
tick = Vibrar con cada tecla
code-pieces = Código en cada pieza
code-pieces-help = Se marca en el pie, para reconocer la pieza tras la cocción. Desactivado: las piezas iguales se cuentan juntas como tanda.
phone = Nombre del teléfono
phone-hint = Tableta junto al fregadero
hand = Quién esmalta
hand-hint = Dejar vacío si no importa
hand-help = Este nombre queda en cada capa nueva hasta que se cambie. Los resultados dicen entonces lo iguales que son las capas de cada mano.
ask-dip = Pedir los tiempos de inmersión
ask-dip-help = Al pesar: cuánto se sumergió o vertió cada capa. Tras cuatro capas de un cubo hay una idea de cuánto.
