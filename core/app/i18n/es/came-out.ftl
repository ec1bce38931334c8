### Not yet read by a native potter.

inside-looks = { $thickness ->
    [thin] fino por dentro
    [thick] grueso por dentro
    [right] correcto por dentro
   *[newer] por dentro, de una versión más nueva
}
outside-looks = { $thickness ->
    [thin] fino por fuera
    [thick] grueso por fuera
    [right] correcto por fuera
   *[newer] por fuera, de una versión más nueva
}
overlap-looks = { $thickness ->
    [thin] solape fino
    [thick] solape grueso
    [right] solape correcto
   *[newer] solape de una versión más nueva
}
liked = puntuada con { $stars } de 5
fault-at-place = { $fault } { $place }
fault-counted = { $fault } ({ $pieces })
place = { $place ->
    [rim] en el borde
    [floor] en el fondo interior
    [foot] en el pie
    [low_inside] abajo por dentro
    [low_outside] abajo por fuera
    [halfway_inside] a media altura por dentro
    [halfway_outside] a media altura por fuera
    [high_inside] arriba por dentro
   *[high_outside] arriba por fuera
}
where-is = { $fault ->
    [crawling] ¿Dónde se recogió?
    [beading] ¿Dónde se perló?
    [raw_cracking] ¿Dónde se agrietó?
    [flaking] ¿Dónde se descascarilló?
    [crazing] ¿Dónde se cuarteó?
    [delayed_crazing] ¿Dónde se cuarteó?
    [shivering] ¿Dónde se desconchó?
    [dunting] ¿Dónde se rajó?
    [pinholing] ¿Dónde están los pinchazos?
    [pitting] ¿Dónde están los hoyuelos?
    [blistering] ¿Dónde están las ampollas?
    [bloating] ¿Dónde se hinchó?
    [running] ¿Dónde chorreó?
    [pooling] ¿Dónde se encharcó?
    [sagging] ¿Dónde se descolgó?
    [thin] ¿Dónde están las zonas finas?
    [dry] ¿Dónde está demasiado seco?
    [overfired] ¿Dónde está pasado de cocción?
    [underfired] ¿Dónde le falta cocción?
    [stuck] ¿Dónde se pegó?
    [warped] ¿Dónde está deformado?
    [cracked] ¿Dónde está la grieta?
    [plucked] ¿Dónde está arrancado?
    [matting] ¿Dónde está mate?
    [scumming] ¿Dónde está la eflorescencia?
    [blushing] ¿Dónde está el sonrojo?
    [speck] ¿Dónde están las motas?
    [bare_spot] ¿Dónde están las calvas?
   *[metal_marking] ¿Dónde están las marcas de cubiertos?
}
tap-the-place = Tocar el punto: el interior a la izquierda, el exterior a la derecha.
