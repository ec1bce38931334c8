### The mixing sheet: what to weigh for a new lot of a glaze, ticked off as it is weighed.

# $glaze: the name of the glaze.
title = Mix { $glaze }
save = Save as a new bucket
by = How much
by-powder = By dry glaze
by-powder-detail = Without additions: they come on top
by-volume = By volume
powder = Dry glaze
volume = Glaze wanted
sg = SG wanted
scale = Scale
# The name of a new bucket. $day: the day it is mixed, such as "28 Nov 2026".
lot-of = Lot of { $day }
water = Water
# A weight to tick off. $name: a material, or water. $weight: how much.
weigh = { $name }: { $weight }
# $done and $all: how many weights.
weighed = { $done } of { $all } weighed.
# $exact: the weight as calculated. $weight: the same as the scale can show it. $off: how far that is out.
rounded = { $name }: this scale shows { $weight } for { $exact }, { $off } out. Use a finer scale, or mix more.
over-capacity = { $name }: { $weight } is more than this scale can weigh. Weigh it in parts.
# $volume and $powder: how much.
makes = Makes { $volume } at SG { $sg }, with { $powder } of dry glaze.
by-weight = Weigh every powder: a cup of a fluffy one can hold a fifth of what it holds of a dense one.
