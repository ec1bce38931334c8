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
