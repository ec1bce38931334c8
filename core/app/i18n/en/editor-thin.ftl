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
done = Done: check it next
goal = Bring it to
to-working = The working SG
to-control = As for the control piece
# $when: when the check was made.
to-check = As checked { $when }
to-typed = Another SG
by = How
by-water = Take off water
by-powder = Add dry glaze
done-water = Water, as you did it
done-powder = Dry glaze, as you did it
done-help = Change it if you stopped sooner.
