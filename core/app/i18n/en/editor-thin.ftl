### How much water brings a bucket to another SG.

# $glaze, $bucket: their names.
title = Thin { $glaze }, { $bucket }
from = SG now
to = SG wanted
volume = Glaze in bucket
there-already = It already has this SG.
# $water: a volume.
add-water = Add { $water } of water.
add-in-parts = Add two thirds of it, stir, check, then add the rest: you cannot take water out again the same day.
# $water: a volume.
take-off-water = Let it settle and take off { $water } of clear water.
# $powder: a weight.
or-add-powder = Or stir in { $powder } of the dry glaze.
dust = Dry glaze is dust: wear a respirator, add it to water, wipe up wet.
