### Not yet read by a native potter.

verdict-within = passt
verdict-short = zu wenig
verdict-over = zu viel
verdict-cannot-tell = unklar
verdict-guess = geschätzt
verdict-probably-within = passt wohl

zone-inside = innen
zone-outside = außen
zone-whole = innen und außen

sensitivity-low = gutmütig
sensitivity-medium = normal
sensitivity-high = empfindlich

part-foot = glasurfreier Fuß
part-outside-wall = Außenwand
part-overlap-band = Überlappungsband
part-rim = Rand
part-inside-wall = Innenwand
part-inside-floor = Innenboden

shape-cylinder-mug = gerader Becher
shape-rounded-mug = bauchiger Becher
shape-open-bowl = offene Schale
shape-deep-bowl = tiefe Schüssel
shape-plate = Teller
shape-bottle = Flasche
shape-jar = Dose
shape-vase = Vase
shape-teapot = Teekanne
shape-planter = Übertopf
shape-tile = Fliese

stage-bisque = geschrüht
stage-thrown = frisch gedreht
stage-fired = glasurgebrannt

side-left = links
side-right = rechts

mass-gram = Gramm
mass-ounce = Unzen
volume-millilitre = Milliliter
volume-us-fluid-ounce = US-Flüssigunzen
volume-imperial-fluid-ounce = britische Flüssigunzen
area-square-centimetre = Quadratzentimeter
area-square-inch = Quadratzoll
length-centimetre = Zentimeter
length-millimetre = Millimeter
length-inch = Zoll

decimal-point = Punkt, 19.4
decimal-comma = Komma, 19,4

tile-not-fired = noch nicht gebrannt
tile-thin = zu dünn
tile-right = richtig
tile-thick = zu dick

thickness-thin = dünn
thickness-right = richtig
thickness-thick = dick

fault-crawling = Abrollen
fault-beading = Abperlen
fault-raw-cracking = Trockenrisse
fault-flaking = Abblättern
fault-crazing = Haarrisse
fault-delayed-crazing = späte Haarrisse
fault-shivering = Abplatzen
fault-dunting = Kühlriss
fault-pinholing = Nadelstiche
fault-pitting = Grübchen
fault-blistering = Blasen
fault-bloating = aufgebläht
fault-running = Ablaufen
fault-pooling = Zusammenlaufen
fault-sagging = Wülste
fault-thin = dünne Stellen
fault-dry = zu trocken
fault-overfired = überbrannt
fault-underfired = zu schwach gebrannt
fault-stuck = an der Platte fest
fault-warped = verzogen
fault-cracked = gerissen
fault-plucked = am Fuß ausgebrochen
fault-matting = matt
fault-scumming = Ausblühung
fault-blushing = Anflug
fault-speck = Flecken
fault-bare-spot = kahle Stellen
fault-metal-marking = Besteckspuren

cone-kind-self-supporting = selbststehend
cone-kind-large = groß

cone-reading-standing = steht
cone-reading-soft = angeneigt
cone-reading-at = gefallen
cone-reading-hard = stark gefallen
cone-reading-flat = liegt flach

sureness-sure = Der Umriss wirkt klar, aber Bilder täuschen: Höhe und Breite am Stück nachmessen.
sureness-fair = Der Umriss wirkt klar, aber Bilder täuschen: Höhe und Breite am Stück nachmessen.
sureness-doubtful = Der Umriss ist zweifelhaft. Mit dem Stück vergleichen oder neu aufnehmen.
soaking-boiled = gekocht
soaking-cold = kalt gewässert
soaking-vacuum = unter Vakuum
hazard-silica = Quarz
hazard-barium = Barium
hazard-manganese = Mangan
hazard-lithium = Lithium
hazard-cobalt = Kobalt
hazard-chromium = Chrom
hazard-nickel = Nickel
hazard-vanadium = Vanadium
hazard-copper = Kupfer
hazard-soluble = lösliche Alkalien oder Borate
hazard-lead = Blei
hazard-cadmium = Cadmium
entry-water = Wasser zugegeben
entry-water-off = Wasser abgenommen
entry-powder = trockene Glasur zugegeben
entry-flocculant = Stellmittel zugegeben
entry-deflocculant = Verflüssiger zugegeben
entry-sieved = gesiebt
entry-level = Füllstand
entry-weighed = mit der Glasur gewogen
entry-note = Notiz
cup-ford-1 = Auslaufbecher Ford Nr. 1
cup-ford-2 = Auslaufbecher Ford Nr. 2
cup-ford-3 = Auslaufbecher Ford Nr. 3
cup-ford-4 = Auslaufbecher Ford Nr. 4
cup-ford-5 = Auslaufbecher Ford Nr. 5
cup-zahn-1 = Auslaufbecher Zahn Nr. 1
cup-zahn-2 = Auslaufbecher Zahn Nr. 2
cup-zahn-3 = Auslaufbecher Zahn Nr. 3
cup-zahn-4 = Auslaufbecher Zahn Nr. 4
cup-zahn-5 = Auslaufbecher Zahn Nr. 5
cup-iso-3 = Auslaufbecher ISO 2431, 3 mm
cup-iso-4 = Auslaufbecher ISO 2431, 4 mm
cup-iso-5 = Auslaufbecher ISO 2431, 5 mm
cup-iso-6 = Auslaufbecher ISO 2431, 6 mm
