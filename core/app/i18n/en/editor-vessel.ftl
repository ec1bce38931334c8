### The editor of a vessel for checking SG: weighed once empty and once full of water.

new = New vessel
title = Vessel
archive = Archive this vessel
name-hint = Jam jar
empty = Empty and dry
with-water = Full of water
with-water-help = To the brim or to a scratched line; fill it with glaze to the same place.
temperature = Temperature of the water, °C
# $volume: a volume.
holds = It holds { $volume }.
