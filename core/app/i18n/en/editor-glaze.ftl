### The editor of a glaze; a new one comes with its first bucket.

new = New glaze
title = Glaze
archive = Archive this glaze and its buckets
name-hint = Ash white
sensitivity = Sensitivity to thickness
# $percent: how far a coat may be out either way.
accepted = ±{ $percent } is accepted
sg = Bucket SG, if checked
# $sg: an SG, "1.45".
sg-help = A litre that weighs 1450 g has SG { $sg }. You can check it later.
powder-density = Powder density
# $density: a density, "2.6".
powder-density-help = { $density } suits most glazes. Use more with a lot of zircon, barium or other heavy oxides.
starting-laydown = Starting laydown, g per 100 cm²
starting-laydown-help = Dry glaze. Used until you have a test tile or a control piece.
# $powder: a percentage.
powder-in-bucket = The bucket is { $powder } powder by weight.
# The name that the bucket of a new glaze gets.
first-bucket = First bucket
materials = Materials
materials-hint = Potash feldspar 42.5
materials-help = One line each: the name, then the parts. Start an addition with +, in percent. After semicolons you can add the density and the price per kg. Paste a recipe here if you have one.
density-from-materials = From the materials
density-own = My own figure
# $computed and $own: densities.
density-differs = The materials make { $computed }, and { $own } is used.
# $price: an amount in the potter's own currency.
price = The dry glaze costs { $price } per kg.
correct-hazards = Correct the hazards
correct-hazards-help = laydown knows common materials by name only.
# $hazards: names, with commas.
contains = By name these materials contain { $hazards }.
data-sheet = Read the safety data sheet of every material: it comes before anything said here.
working-sg = Working SG
working-sg-help = The SG you use this glaze at, if you have one. Thinning and new lots start from it.
