### What was done to a bucket, or seen of it.

# $glaze, $bucket: their names.
title = Note: { $glaze }, { $bucket }
remove = Remove this entry
what = What
volume = How much water
amount = How much dry glaze
amount-if-known = How much, if you weighed it
never-dosed = laydown only notes this. For how much to add, go by your own tests and the maker's data sheet.
weight = Weight of bucket and glaze
tare-bucket = Give this bucket its empty weight, and its weight becomes a volume.
level = Level above the bottom
level-help = Measure from the bottom up to the glaze.
# $volume: a volume.
level-is = That is { $volume }.
measure-bucket = Give this bucket its width, and a level becomes a volume.
date = Day
note = Note
dust = Dry glaze is dust: wear a respirator, add it to water, wipe up wet.
# $bucket: the name of the bucket.
saved = Noted for { $bucket }.
