### The dry materials of a glaze: why they cannot be read, and what can hurt in them.

## $line: the number of the line.
no-amount = Line { $line }: write how much after the name, for example Silica 30.
which-amount = Line { $line } has a number at both ends. Write the name, a semicolon, then the amount.
no-name = Line { $line } has no name. Write the material, then the amount.
long-name = Line { $line }: the name is too long. Use 80 letters at most.
# $why: a sentence about the number.
figure = Line { $line }: { $why }
nothing = These materials add up to nothing. Give the parts of at least one that is not an addition.
# $most: a whole number.
too-many = A glaze has { $most } materials at most. Remove lines that are not materials.

## What a material does, and what to do against it.
hurts-silica = Silica: the dust damages the lungs for good. Wear a respirator, add powder to water, wipe up wet.
hurts-barium = Barium: poisonous to swallow or breathe. Wear gloves and a respirator, and wash your hands.
hurts-manganese = Manganese: dust and kiln fumes damage the nerves. Wear a respirator, and vent the kiln.
hurts-lithium = Lithium: poisonous to swallow. Wear gloves, and keep it away from food and children.
hurts-cobalt = Cobalt: can cause allergies and may cause cancer. Wear gloves and a respirator.
hurts-chromium = Chromium: some kinds cause cancer, and firing can form them. Wear gloves and a respirator, and vent the kiln.
hurts-nickel = Nickel: can cause allergies, and the dust may cause cancer. Wear gloves and a respirator.
hurts-vanadium = Vanadium: poisonous, and the dust burns the lungs. Wear gloves and a respirator.
hurts-copper = Copper: harmful to swallow, and many glazes let it leach. Only a laboratory test of the fired piece can tell.
hurts-soluble = Soluble material: harsh on skin and eyes. Wear gloves, and do not pour it down the drain.
hurts-lead = Lead: a poison that builds up in the body. Do not use it on anything for food or drink, and ask an expert before you handle it.
hurts-cadmium = Cadmium: poisonous, and causes cancer. Do not use it on anything for food or drink, and ask an expert before you handle it.
