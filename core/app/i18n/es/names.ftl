### Not yet read by a native potter.

verdict-within = bien
verdict-short = falta
verdict-over = sobra
verdict-cannot-tell = no se sabe
verdict-guess = estimado
verdict-probably-within = seguramente bien

zone-inside = interior
zone-outside = exterior
zone-whole = interior y exterior

sensitivity-low = tolerante
sensitivity-medium = normal
sensitivity-high = sensible

part-foot = pie sin esmalte
part-outside-wall = pared exterior
part-overlap-band = franja de solape
part-rim = borde
part-inside-wall = pared interior
part-inside-floor = fondo interior

shape-cylinder-mug = taza recta
shape-rounded-mug = taza redondeada
shape-open-bowl = cuenco abierto
shape-deep-bowl = cuenco hondo
shape-plate = plato
shape-bottle = botella
shape-jar = tarro
shape-vase = florero
shape-teapot = tetera
shape-planter = macetero
shape-tile = azulejo

stage-bisque = en bizcocho
stage-thrown = recién torneada
stage-fired = esmaltada y cocida

side-left = izquierda
side-right = derecha

mass-gram = gramos
mass-ounce = onzas
volume-millilitre = mililitros
volume-us-fluid-ounce = onzas líquidas de EE. UU.
volume-imperial-fluid-ounce = onzas líquidas imperiales
area-square-centimetre = centímetros cuadrados
area-square-inch = pulgadas cuadradas
length-centimetre = centímetros
length-millimetre = milímetros
length-inch = pulgadas

decimal-point = punto, 19.4
decimal-comma = coma, 19,4

tile-not-fired = aún sin cocer
tile-thin = demasiado fina
tile-right = bien
tile-thick = demasiado gruesa

thickness-thin = fino
thickness-right = correcto
thickness-thick = grueso

fault-crawling = recogido
fault-beading = perlado
fault-raw-cracking = grietas de secado
fault-flaking = descascarillado
fault-crazing = cuarteado
fault-delayed-crazing = cuarteado tardío
fault-shivering = desconchado
fault-dunting = grieta de enfriamiento
fault-pinholing = pinchazos
fault-pitting = hoyuelos
fault-blistering = ampollas
fault-bloating = hinchado
fault-running = chorreo
fault-pooling = encharcado
fault-sagging = descuelgue
fault-thin = zonas finas
fault-dry = demasiado seco
fault-overfired = pasado de cocción
fault-underfired = falto de cocción
fault-stuck = pegado a la placa
fault-warped = deformado
fault-cracked = agrietado
fault-plucked = pie arrancado
fault-matting = mate
fault-scumming = eflorescencia
fault-blushing = sonrojo
fault-speck = motas
fault-bare-spot = calvas
fault-metal-marking = marcas de cubiertos

cone-kind-self-supporting = autosoportado
cone-kind-large = grande

cone-reading-standing = sin doblar
cone-reading-soft = algo doblado
cone-reading-at = doblado
cone-reading-hard = muy doblado
cone-reading-flat = tumbado

sureness-sure = El contorno parece claro, pero las fotos engañan: comprobar la altura y el ancho en la pieza.
sureness-fair = El contorno parece claro, pero las fotos engañan: comprobar la altura y el ancho en la pieza.
sureness-doubtful = El contorno es dudoso. Compararlo con la pieza o repetir la foto.
soaking-boiled = hervido
soaking-cold = remojado en frío
soaking-vacuum = al vacío
hazard-silica = sílice
hazard-barium = bario
hazard-manganese = manganeso
hazard-lithium = litio
hazard-cobalt = cobalto
hazard-chromium = cromo
hazard-nickel = níquel
hazard-vanadium = vanadio
hazard-copper = cobre
hazard-soluble = álcalis o boratos solubles
hazard-lead = plomo
hazard-cadmium = cadmio
entry-water = agua añadida
entry-water-off = agua retirada
entry-powder = esmalte seco añadido
entry-flocculant = floculante añadido
entry-deflocculant = defloculante añadido
entry-sieved = tamizado
entry-level = nivel
entry-weighed = pesado con el esmalte
entry-note = nota
cup-ford-1 = copa Ford n.º 1
cup-ford-2 = copa Ford n.º 2
cup-ford-3 = copa Ford n.º 3
cup-ford-4 = copa Ford n.º 4
cup-ford-5 = copa Ford n.º 5
cup-zahn-1 = copa Zahn n.º 1
cup-zahn-2 = copa Zahn n.º 2
cup-zahn-3 = copa Zahn n.º 3
cup-zahn-4 = copa Zahn n.º 4
cup-zahn-5 = copa Zahn n.º 5
cup-iso-3 = copa ISO 2431, 3 mm
cup-iso-4 = copa ISO 2431, 4 mm
cup-iso-5 = copa ISO 2431, 5 mm
cup-iso-6 = copa ISO 2431, 6 mm
