### What a reading of the scale means, and why it is not judged. Weights come with their units.

## Read at arm's length: one or two words.
headline-within = WITHIN
headline-short = SHORT
headline-over = OVER
headline-cannot-tell = CAN'T TELL
# $because: why the target is a guess: guess, tiles, bucket, pots or area.
headline-near = { $because ->
    [guess] NEAR YOUR FIRST GUESS
    [tiles] NEAR YOUR TILES
    [bucket] NEAR: SG NOT CHECKED
    [pots] NEAR: TOO FEW POTS YET
   *[area] NEAR: AREA NOT MEASURED
}
headline-under = { $because ->
    [guess] UNDER YOUR FIRST GUESS
    [tiles] UNDER YOUR TILES
    [bucket] UNDER: SG NOT CHECKED
    [pots] UNDER: TOO FEW POTS YET
   *[area] UNDER: AREA NOT MEASURED
}
headline-above = { $because ->
    [guess] OVER YOUR FIRST GUESS
    [tiles] OVER YOUR TILES
    [bucket] OVER: SG NOT CHECKED
    [pots] OVER: TOO FEW POTS YET
   *[area] OVER: AREA NOT MEASURED
}

## What to do. $amount: a weight.
save-it = Save it
add = Add { $amount }
take-off = Take off { $amount }
use-finer-scale = Use a finer scale
add-and-use-finer-scale = Add some, then use a finer scale
take-off-and-use-finer-scale = Take some off, then use a finer scale
add-or-save = Add { $amount }, or save it
take-off-or-save = Take off { $amount }, or save it
add-to-be-sure = Add { $amount } to be sure
take-off-to-be-sure = Take off { $amount } to be sure

## Why. $span: the weights that are right, such as "18.0 to 20.8 g". $step: the step of the scale.
on-the-aim = Right on the aim.
under-the-aim = { $amount } under the aim, within { $span }.
over-the-aim = { $amount } over the aim, within { $span }.
target-too-coarse = Target { $span }. This scale is too coarse to be certain.
target-add = Target { $span }. Add { $amount } for the aim.
target-take-off = Target { $span }. Sponge, scrape or wash off { $amount } for the aim.
# The target is a guess: all of $span may be right.
guess-on-the-aim = On the aim. Right may be { $span }.
guess-under-the-aim = { $amount } under the aim. Right may be { $span }.
guess-over-the-aim = { $amount } over the aim. Right may be { $span }.
scale-too-coarse = Too coarse: this scale reads in { $step } steps, and the target is { $span }.
too-near-the-edge = Too near the edge of { $span } for a scale that reads in { $step } steps.

## What the target rests on, in a line of up to three sentences.
# $right of $pieces control pieces were fired and judged right.
rests-on-fired = { $right ->
    [one] Rests on 1 control piece that came out right.
   *[other] Rests on { $right } control pieces that came out right.
}
rests-on-controls = { $pieces ->
    [one] Rests on 1 control piece, not judged after firing.
   *[other] Rests on { $pieces } control pieces, none judged after firing.
}
rests-on-tiles = Rests on test tiles, no pots.
rests-on-start = No pots or tiles of this glaze yet.
# $when: how long ago.
sg-checked = SG checked { $when }.
sg-not-checked = SG not checked.
area-not-measured = Area estimated.

certainty = Accurate to ±{ $half_width }.
# $dry: a weight. $laydown: dry glaze on an area, with its unit.
carries = { $dry } dry, { $laydown }
on-control = On your control piece this coat would weigh { $amount }.

## For the ear. $amount: as spoken-grams or spoken-ounces.
# $form: "single" where $number is exactly 1, else "several".
spoken-grams = { $form ->
    [single] { $number } gram
   *[several] { $number } grams
}
spoken-ounces = { $form ->
    [single] { $number } ounce
   *[several] { $number } ounces
}
spoken-within = Within. Save it.
spoken-short = Short. Add { $amount }.
spoken-over = Over. Take off { $amount }.
# $because: as headline-near.
spoken-near = { $because ->
    [guess] Near your first guess. Save it.
    [tiles] Near your tiles. Save it.
    [bucket] Near, but the S G is not checked. Save it.
    [pots] Near, but from too few pots yet. Save it.
   *[area] Near, but the area is not measured. Save it.
}
spoken-under = { $because ->
    [guess] Under your first guess. Add { $amount }, or save it.
    [tiles] Under your tiles. Add { $amount }, or save it.
    [bucket] Under, but the S G is not checked. Add { $amount }, or save it.
    [pots] Under, but from too few pots yet. Add { $amount }, or save it.
   *[area] Under, but the area is not measured. Add { $amount }, or save it.
}
spoken-above = { $because ->
    [guess] Over your first guess. Take off { $amount }, or save it.
    [tiles] Over your tiles. Take off { $amount }, or save it.
    [bucket] Over, but the S G is not checked. Take off { $amount }, or save it.
    [pots] Over, but from too few pots yet. Take off { $amount }, or save it.
   *[area] Over, but the area is not measured. Take off { $amount }, or save it.
}
spoken-short-too-coarse = Short. Add some, then use a finer scale.
spoken-over-too-coarse = Over. Take some off, then use a finer scale.
spoken-too-coarse = Can't tell. This scale is too coarse.
spoken-add-to-be-sure = Can't tell. Add { $amount } to be sure.
spoken-take-off-to-be-sure = Can't tell. Take off { $amount } to be sure.

## Why a reading is not judged.
no-number = That is not a weight. Type what the scale shows.
no-bare = The bare piece must weigh something. Weigh it before glazing.
glazed-under-bare = It weighs less glazed ({ $glazed }) than bare ({ $bare }). Check that both are for this piece, and not swapped.
negative = The weight is below zero. Tare with the bare piece on the scale, then weigh again.
nothing = The scale shows no glaze. Weigh the piece after coating.
over-capacity = { $weight } is more than this scale weighs ({ $capacity }). Use a larger scale, or choose the scale you used.
under-minimum = { $weight } is less than this scale should weigh ({ $minimum }). Use a finer scale.
finer-than-step = This scale reads in { $step } steps and cannot show { $weight }. Type what it shows, or choose the scale you used.
more-than-piece-holds = { $weight } is more glaze than this piece can hold (about { $most } at most). Check that you tared the scale with the bare piece.

## When to read the scale.
read-at-once = Read the scale as soon as the drip stops. The coat loses water from the first minute.
weigh-again-first = Weigh the piece again just before this coat and use that as its tare: the wall still holds water from the coat before. Then read as soon as the drip stops.

## Why a scale cannot be.
no-step = Give the step of the scale, for example 0.1 g.
no-capacity = Give the most the scale weighs. It must be many times its step.
minimum = The scale's minimum must be less than its capacity. Leave it empty if you do not know it.
repeatability = The scale's repeatability cannot be right. Weigh one thing ten times, or leave it empty.

## Whether a scale can decide about a coat. $step: the step of its display.
scale-decides = This scale reads in { $step } steps, fine enough for this coat.
scale-decides-only-just = This scale reads in { $step } steps, only just fine enough for this coat. A finer one would tell you more.
# What would decide. $together: how many pieces; $total: what their coats should weigh; $fine: the step of a finer scale.
scale-is-too-coarse = This scale reads in { $step } steps: no weight it shows can pass.
weigh-together = Weigh { $together } pieces together (aim { $total }).
weigh-finer = Use a scale that reads in { $fine } steps or finer.
weigh-together-or-finer = Weigh { $together } pieces together (aim { $total }), or use a scale that reads in { $fine } steps.
scale-is-too-small = The piece with its coat is more than this scale weighs ({ $capacity }).
laboratory-balance = Only a laboratory balance weighs { $capacity } in steps of { $step }. Check the plate again.
very-few-steps = A scale for { $capacity } with steps of { $step } has very few steps. Check the plate again.
