### The editor of a piece weighed again when it is bone dry: how much glaze powder it carries.

title = Dry weight
# $piece: what the piece is called.
title-of = { $piece }: dry weight
piece = Piece
# $bare: a weight.
bare-was = Weighed bare: { $bare }.
bare-help = What this piece weighed before its first coat. Without it the dry weight means nothing.
bone-dry = Piece, bone dry
bone-dry-help = It is dry when two weighings an hour apart agree. Hold it by its bare foot, and wash glaze dust off your hands.
weigh-it = Weigh the bone-dry piece and type what the scale shows.
# $dry and $by-sg: weights with how sure they are, such as "10.5 ±0.3 g".
dry-and-by-sg = Dry glaze: { $dry } weighed; { $by-sg } by the bucket’s SG.
# $number: a number. $doubt: a weight.
with-doubt = { $number } ±{ $doubt }
of-all-coats = { $coats ->
    [one] This is the weight of { $coats } coat.
   *[other] This is the weight of { $coats } coats together. It is shared out by their wet weights, so each is less sure.
}
# $zone: the name of a zone. $dry: a weight with how sure it is. $laydown: dry glaze on an area.
of-one-coat = { $zone }: { $dry }, { $laydown }.
agree = Dry weight and SG agree.
# $percent: a percentage. $direction: a code.
disagree = { $direction ->
    [more] The dry weight is { $percent } more glaze than the SG says. One of these is wrong:
   *[less] The dry weight is { $percent } less glaze than the SG says. One of these is wrong:
}
# $would-be and $checked: specific gravities. $direction: a code.
suspect-sg = { $direction ->
    [more] The SG was { $would-be }, not { $checked }: water evaporated after the check, or the vessel, its mark or its temperature was off.
   *[less] The SG was { $would-be }, not { $checked }: the glaze had settled, water was added, or the vessel, its mark or its temperature was off.
}
# $would-be and $set: densities, such as "2.6".
suspect-powder = The powder density is { $would-be }, not { $set }: it is set in the glaze.
# $water: a weight.
suspect-wet-bisque = { $water } of water was in the bisque when it was weighed bare, as after rinsing.
# $lost: a weight.
suspect-lost = { $lost } of dry glaze came off after weighing, as when the foot was wiped.
# $water: a weight.
suspect-not-dry = { $water } of water is still in the piece: weigh it again tomorrow.
saved = Dry weight saved. Targets count it beside the SG.
removed = Dry weight removed.
was-fired = This piece is fired, so its glaze has changed weight. Only a piece weighed dry before its firing counts.
no-bare = Type what the bare piece weighed.
# $bare: a weight.
not-over-bare = That is no more than the bare piece, { $bare }. Check both weights.
# $wet: a weight.
not-under-wet = The coat would weigh as much dry as wet, { $wet }. Check the weights, or let it dry.
# $capacity: a weight.
over-capacity = The scale weighs { $capacity } at most. Check the weight.
# The button that opens this, on the piece’s page and where pieces wait.
weigh-dry = Weigh the dry piece
weigh-a-dry-piece = Weigh a dry piece
# In a record. $dry: a weight with how sure it is.
weighed-dry = { $dry } dry
