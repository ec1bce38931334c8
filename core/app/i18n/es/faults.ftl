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
matting = Casi siempre la cocción, el enfriamiento o la receta.
speck = Polvo, una miga de la placa o hierro en la pasta.
metal-marking = La receta, no la cantidad. Solo un análisis de laboratorio puede decir si la superficie desprende algo.

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
