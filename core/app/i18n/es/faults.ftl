### Not yet read by a native potter.

crawling = A menudo demasiado grueso, o polvo o grasa en el bizcocho.
raw-cracking = A menudo demasiado grueso, o un esmalte que encoge demasiado al secar.
running = A menudo demasiado grueso, sobre todo cerca del borde y donde se solapan esmaltes; o demasiado calor.
pooling = A menudo quedó demasiado dentro: vaciar enseguida y dejar escurrir.
blistering = A menudo demasiado grueso o demasiado calor, o gas de la pasta.
thin = A menudo muy poco esmalte, o un cubo que se diluyó.
dry = A menudo muy poco esmalte, o falta de calor.
bare-spot = A menudo una huella de dedo, o un sitio al que no llegó el esmalte.
crazing = Casi siempre es el acuerdo entre esmalte y pasta, menos veces la cantidad; una capa gruesa lo muestra más. Las piezas cuarteadas pueden rezumar y romperse con agua hirviendo.
shivering = Es el acuerdo entre esmalte y pasta, no la cantidad. Las esquirlas cortan: no usar una pieza así.
dunting = Casi siempre el enfriamiento o la pasta, no la cantidad.
pinholing = Casi siempre gas de la pasta o un mantenimiento corto, menos veces la cantidad.
bloating = La pasta, cocida de más; no la cantidad.
overfired = La cocción, no la cantidad.
underfired = La cocción se quedó corta, no la cantidad. Leer los conos testigo.
stuck = A menudo demasiado grueso abajo, o esmalte en el pie. El esmalte roto corta: usar protección ocular.
warped = El barro, un secado desigual o la cocción, no la cantidad.
cracked = Sobre todo el secado o una unión, no la cantidad.
plucked = El pie se pegó a una placa gastada: renovar el engobe. Los bordes cortan.
matting = Casi siempre la cocción, el enfriamiento o la receta.
speck = Polvo, una miga de la placa o hierro en la pasta.
metal-marking = La receta, no la cantidad. Solo un análisis de laboratorio puede decir si la superficie desprende algo.
about = { $fault ->
    [crawling] El esmalte se retiró y dejó barro desnudo.
    [pinholing] Agujeritos hasta el barro.
    [blistering] Burbujas, enteras o rotas, de bordes cortantes.
    [running] El esmalte corrió pared abajo.
    [crazing] Una red de grietas finas en el esmalte.
    [delayed_crazing] La misma red, días o meses después.
    [shivering] Saltan esquirlas de esmalte de los bordes.
    [dunting] La pieza se rajó entera al enfriarse.
    [underfired] Sin fundir: mate o polvoriento.
    [overfired] Demasiada cocción: esmalte corrido o barro hundido.
    [stuck] El esmalte pegó el pie a la placa.
    [warped] La pieza perdió su redondez o quedó torcida.
    [cracked] Una grieta en borde, fondo o unión.
    [plucked] Trozos del pie se quedaron en la placa.
    [bloating] El barro se hinchó.
    [thin] Poco esmalte ahí.
    [dry] Áspero al dedo.
    [bare_spot] Un punto sin esmalte.
    [pooling] El esmalte se juntó en el fondo.
    [sagging] El esmalte resbaló en un pliegue.
    [pitting] Hoyuelos que no llegan al barro.
    [beading] El esmalte se juntó en gotas.
    [raw_cracking] La capa seca se agrietó antes de cocer.
    [flaking] La capa seca se desprendió.
    [matting] Mate donde debería brillar.
    [scumming] Un velo pálido en la superficie.
    [blushing] Color llegado de otra parte.
    [speck] Puntos de otra cosa.
   *[metal_marking] Líneas grises de cubiertos.
}

cone-as-aimed = Cono { $cone } { $reading ->
    [standing] sin doblar
    [soft] algo doblado
    [at] doblado
    [hard] muy doblado
   *[flat] tumbado
}: justo en el objetivo.
cone-near-aim = Cono { $cone } { $reading ->
    [standing] sin doblar
    [soft] algo doblado
    [at] doblado
    [hard] muy doblado
   *[flat] tumbado
}: cerca del objetivo.
cone-over-aim = Cono { $cone } { $reading ->
    [standing] sin doblar
    [soft] algo doblado
    [at] doblado
    [hard] muy doblado
   *[flat] tumbado
}: por encima del objetivo.
cone-under-aim = Cono { $cone } { $reading ->
    [standing] sin doblar
    [soft] algo doblado
    [at] doblado
    [hard] muy doblado
   *[flat] tumbado
}: por debajo del objetivo.
