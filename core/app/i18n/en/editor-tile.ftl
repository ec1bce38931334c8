### The editor of a test tile: its area and its coat say how thick the test was.

new = New test tile
title = Test tile
archive = Archive this test tile
name-hint = Tile 12
area = Glazed area
area-help = Length times width of what was glazed; both sides if both were.
net = Wet coat weight
dry = Dry coat weight
dry-help = When bone dry. Better than the wet weight, if you waited.
no-weight = Give the dry weight, or the wet weight and the SG.
size = Measured by
by-sides = Its sides
by-area = Its glazed area
long = Length
wide = Width
sides-help = Of the glazed face.
came-out = Result
came-out-help = Targets use a tile only after it was fired and came out right.
# $wet: a weight. $sg: a specific gravity. $laydown: dry glaze on an area, such as "5.5 g/dm²".
takes = At SG { $sg } this tile takes { $wet } for this glaze's target of { $laydown }.
# What the tile does for targets. $result: the stored code of how it came out.
counts = { $result ->
    [right] Targets use this tile.
    [thin] It came out too thin: targets leave it out.
    [thick] It came out too thick: targets leave it out.
   *[not_fired] Targets leave it out until it is fired and comes out right.
}
coats = Coats
coats-help = How many coats its weight is of.
so-many-coats = { $coats ->
    [one] { $coats } coat
   *[other] { $coats } coats
}
compare-with = Compare with a form
no-form = None
# $wet: a weight. $form: its name. $zone: the name of a zone.
as-thick-as = As thick as { $wet } on { $form }, { $zone }.
# $wet: a weight.
planned = Planned: { $wet } wet.
