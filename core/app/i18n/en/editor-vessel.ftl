### The editor of a vessel for checking SG: weighed once empty and once full of water.

new = New vessel
title = Vessel
archive = Archive this vessel
name-hint = Jam jar
empty = Weight empty
empty-help = Dry inside and out.
with-water = Weight with water
with-water-help = Filled to the brim or to a scratched line. Fill it with glaze to the same line.
temperature = Water temperature, °C
# $volume: a volume.
holds = Holds { $volume }.
