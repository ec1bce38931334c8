### Names of the values of closed lists, as labels and within a line of names: small letters where a sentence would have them.

## What the scale says about a coat.
verdict-within = within
verdict-short = short
verdict-over = over
verdict-cannot-tell = can't tell
verdict-guess = a guess
verdict-probably-within = probably within

## A part of a form that takes one coat.
zone-inside = inside
zone-outside = outside
zone-whole = inside and outside

## How much a glaze minds a thicker or thinner coat.
sensitivity-low = forgiving
sensitivity-medium = normal
sensitivity-high = sensitive

## A part of a form's surface.
part-foot = bare foot
part-outside-wall = outside wall
part-overlap-band = overlap band
part-rim = rim
part-inside-wall = inside wall
part-inside-floor = inside floor

## Classes of shape.
shape-cylinder-mug = straight mug
shape-rounded-mug = rounded mug
shape-open-bowl = open bowl
shape-deep-bowl = deep bowl
shape-plate = plate
shape-bottle = bottle
shape-jar = jar
shape-vase = vase
shape-teapot = teapot
shape-planter = planter
shape-tile = tile

## When a pot was measured.
stage-bisque = as bisque
stage-thrown = just thrown
stage-fired = glaze-fired

## A side of the picture.
side-left = left
side-right = right

## Units, as a setting.
mass-gram = grams
mass-ounce = ounces
volume-millilitre = millilitres
volume-us-fluid-ounce = US fluid ounces
volume-imperial-fluid-ounce = imperial fluid ounces
area-square-centimetre = square centimetres
area-square-inch = square inches
length-centimetre = centimetres
length-millimetre = millimetres
length-inch = inches

## The decimal mark, as a setting.
decimal-point = point, 19.4
decimal-comma = comma, 19,4

## How a test tile came out of the kiln.
tile-not-fired = not fired yet
tile-thin = too thin
tile-right = right
tile-thick = too thick

## How thick the fired glaze looks.
thickness-thin = thin
thickness-right = right
thickness-thick = thick

## Faults of a fired glaze or pot. Where ASTM F109 has a term, it is that of the trade.
fault-crawling = crawling
fault-beading = beading
fault-raw-cracking = drying cracks
fault-flaking = flaking
fault-crazing = crazing
fault-delayed-crazing = late crazing
fault-shivering = shivering
fault-dunting = dunting
fault-pinholing = pinholes
fault-pitting = pits
fault-blistering = blisters
fault-bloating = bloated
fault-running = runs
fault-pooling = pooling
fault-sagging = sags
fault-thin = thin spots
fault-dry = too dry
fault-overfired = overfired
fault-underfired = underfired
fault-stuck = stuck to the shelf
fault-warped = warped
fault-cracked = cracked
fault-plucked = plucked
fault-matting = dull
fault-scumming = scum
fault-blushing = blushing
fault-speck = specks
fault-bare-spot = bare spots
fault-metal-marking = cutlery marks

## Kinds of pyrometric cone.
cone-kind-self-supporting = self-supporting
cone-kind-large = large

## How a witness cone looks after the firing: standing, begun to bend, tip level with its base, bent further, flat.
cone-reading-standing = not bent
cone-reading-soft = soft
cone-reading-at = bent
cone-reading-hard = hard
cone-reading-flat = flat

## How far an outline from a photograph is to be trusted: each a sentence.
sureness-sure = The outline looks clear, but pictures deceive: check the height and width against the piece.
sureness-fair = The outline looks clear, but pictures deceive: check the height and width against the piece.
sureness-doubtful = The outline is doubtful. Compare it with the piece, or take the picture again.

## How bisque was filled with water to see how much it drinks.
soaking-boiled = boiled
soaking-cold = cold-soaked
soaking-vacuum = vacuum-soaked

## What can hurt in a material, within a line of names.
hazard-silica = silica
hazard-barium = barium
hazard-manganese = manganese
hazard-lithium = lithium
hazard-cobalt = cobalt
hazard-chromium = chromium
hazard-nickel = nickel
hazard-vanadium = vanadium
hazard-copper = copper
hazard-soluble = soluble alkalis or borates
hazard-lead = lead
hazard-cadmium = cadmium

## What is written down of a bucket beside its checks.
entry-water = water added
entry-water-off = water taken off
entry-powder = dry glaze added
entry-flocculant = flocculant added
entry-deflocculant = deflocculant added
entry-sieved = sieved
entry-level = level
entry-weighed = weighed with its glaze
entry-note = note

## Flow cups.
cup-ford-1 = Ford cup No. 1
cup-ford-2 = Ford cup No. 2
cup-ford-3 = Ford cup No. 3
cup-ford-4 = Ford cup No. 4
cup-ford-5 = Ford cup No. 5
cup-zahn-1 = Zahn cup No. 1
cup-zahn-2 = Zahn cup No. 2
cup-zahn-3 = Zahn cup No. 3
cup-zahn-4 = Zahn cup No. 4
cup-zahn-5 = Zahn cup No. 5
cup-iso-3 = ISO 2431 cup, 3 mm
cup-iso-4 = ISO 2431 cup, 4 mm
cup-iso-5 = ISO 2431 cup, 5 mm
cup-iso-6 = ISO 2431 cup, 6 mm
