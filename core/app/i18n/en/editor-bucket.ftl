### The editor of a bucket: one mixed lot of a glaze.

# $glaze: the name of the glaze.
new = { $glaze }: new bucket
# $glaze: the name of the glaze.
title = { $glaze }: bucket
archive = Archive this bucket
name-hint = Big bucket
volume = Volume when mixed, if known
diameter = Width inside
diameter-help = Half way up. With it a level in the bucket is a volume.
depth = Depth to the rim
# $volume: a volume.
holds = Holds { $volume } up to the rim.
empty = Weight empty
empty-help = With it, the weight of the bucket says how much glaze is in it.
