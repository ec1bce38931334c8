### The Findings screen: what fired pots say about each glaze, beside what targets rest on today.

# While nothing is known of any glaze.
how-to-begin = Weigh the coats and fire the pots. Then open the firing, look at each pot and tap thin, right or thick. Eight pots of a glaze make a first finding.
amount-only = This is about the amount only. Only a laboratory test can tell whether a surface is fit for food or drink.
# $coats, $pots: whole numbers.
only-the-newest = { $coats ->
    [one] Based on the newest { $coats } coat in the studio and, for each glaze, on its newest { $pots } fired pots at most. Older ones are left out.
   *[other] Based on the newest { $coats } coats in the studio and, for each glaze, on its newest { $pots } fired pots at most. Older ones are left out.
}
no-coat = No coats weighed yet.
none-looked-at = { $coats ->
    [one] { $coats } coat weighed, not looked at after firing yet.
   *[other] { $coats } coats weighed, none looked at after firing yet.
}
# A glaze's line in the list. $scope: which pots, such as "Cone 6, inside". $finding: what they say, from "What pots say" below, with $place "after_colon".
scope-and-finding = { $scope }: { $finding }

## Taking the best over as the starting value. Amounts are laydowns with their unit

no-best = There is no best amount to start from yet.
# $glaze: the glaze's name.
now-starts-from = { $glaze } now starts from { $best }.
start-from = Start from { $best }
start-from-help = For every form and zone of this glaze with no control piece and no test tile. It starts from { $now } now.

## Where targets rest on what lies outside the window. Amounts are laydowns with their unit

controls-outside-window = { $zone ->
    [inside] Inside: your control pieces average { $average }, outside the window. Make a pot near { $best } a control piece.
    [outside] Outside: your control pieces average { $average }, outside the window. Make a pot near { $best } a control piece.
   *[whole] Inside and outside: your control pieces average { $average }, outside the window. Make a pot near { $best } a control piece.
}
tiles-outside-window = { $zone ->
    [inside] Inside: your test tiles average { $average }, outside the window. Make a pot near { $best } a control piece.
    [outside] Outside: your test tiles average { $average }, outside the window. Make a pot near { $best } a control piece.
   *[whole] Inside and outside: your test tiles average { $average }, outside the window. Make a pot near { $best } a control piece.
}

## Which pots: items of a list such as "Cones 5 and 6, inside, stoneware"; its first letter is made a capital

one-cone = cone { $cone }
# $cones: such as "5, 6 and 7".
cones-together = cones { $cones }
# $zones: the codes of the zones, joined by "_". All-over: inside and outside in one coat.
zones-together = { $zones ->
    [inside_outside] inside and outside coats
    [inside_whole] inside and all-over coats
    [outside_whole] outside and all-over coats
   *[inside_outside_whole] inside, outside and all-over coats
}
no-body = no body named
bodies-together = { $bodies ->
    [one] { $bodies } body
   *[other] { $bodies } bodies
}

## What pots say. $place: "alone" where the sentence begins a line, "after_colon" where it follows a colon. $range: one laydown with its unit, or "5.1 to 6.4 g per 100 cm²". $from, $to: laydowns with their unit

# $looks: such as "2 thin, 3 right". $enough: a whole number.
too-few = { $place ->
    [after_colon] { $pots ->
        [one] not enough pots yet: { $pots } so far ({ $looks }). A first finding needs { $enough }.
       *[other] not enough pots yet: { $pots } so far ({ $looks }). A first finding needs { $enough }.
    }
   *[alone] { $pots ->
        [one] Not enough pots yet: { $pots } so far ({ $looks }). A first finding needs { $enough }.
       *[other] Not enough pots yet: { $pots } so far ({ $looks }). A first finding needs { $enough }.
    }
}
# "try-more" or "try-less" may follow.
none-right = { $place ->
    [after_colon] { $pots ->
        [one] the only pot did not come out right, at { $range }: { $looks }.
       *[other] none of { $pots } pots came out right, at { $range }: { $looks }.
    }
   *[alone] { $pots ->
        [one] The only pot did not come out right, at { $range }: { $looks }.
       *[other] None of { $pots } pots came out right, at { $range }: { $looks }.
    }
}
try-more = Try more.
try-less = Try less.
mixed = { $place ->
    [after_colon] results overlap at { $range } ({ $pots ->
        [one] { $pots } pot). The amount alone does not decide: check the bucket's SG, the firing and the place in the kiln.
       *[other] { $pots } pots). The amount alone does not decide: check the bucket's SG, the firing and the place in the kiln.
    }
   *[alone] Results overlap at { $range } ({ $pots ->
        [one] { $pots } pot). The amount alone does not decide: check the bucket's SG, the firing and the place in the kiln.
       *[other] { $pots } pots). The amount alone does not decide: check the bucket's SG, the firing and the place in the kiln.
    }
}
# $from: without its unit, which $to has.
window = { $place ->
    [after_colon] right between { $from } and { $to } ({ $pots ->
        [one] { $pots } pot). Below that it came out thin, above that thick.
       *[other] { $pots } pots). Below that it came out thin, above that thick.
    }
   *[alone] Right between { $from } and { $to } ({ $pots ->
        [one] { $pots } pot). Below that it came out thin, above that thick.
       *[other] { $pots } pots). Below that it came out thin, above that thick.
    }
}
window-upwards = { $place ->
    [after_colon] right from { $from } up ({ $pots ->
        [one] { $pots } pot). Below that it came out thin; how much is too much is not known yet.
       *[other] { $pots } pots). Below that it came out thin; how much is too much is not known yet.
    }
   *[alone] Right from { $from } up ({ $pots ->
        [one] { $pots } pot). Below that it came out thin; how much is too much is not known yet.
       *[other] { $pots } pots). Below that it came out thin; how much is too much is not known yet.
    }
}
window-downwards = { $place ->
    [after_colon] right up to { $to } ({ $pots ->
        [one] { $pots } pot). Above that it came out thick; how little is too little is not known yet.
       *[other] { $pots } pots). Above that it came out thick; how little is too little is not known yet.
    }
   *[alone] Right up to { $to } ({ $pots ->
        [one] { $pots } pot). Above that it came out thick; how little is too little is not known yet.
       *[other] { $pots } pots). Above that it came out thick; how little is too little is not known yet.
    }
}
all-right = { $place ->
    [after_colon] { $pots ->
        [one] the only pot came out right, at { $range }. How much less or more still works is not known yet.
       *[other] all { $pots } pots came out right, at { $range }. How much less or more still works is not known yet.
    }
   *[alone] { $pots ->
        [one] The only pot came out right, at { $range }. How much less or more still works is not known yet.
       *[other] All { $pots } pots came out right, at { $range }. How much less or more still works is not known yet.
    }
}
# Begins with a number, so that $place is not needed.
most-right = { $pots ->
    [one] { $right } of { $pots } pot came out right, at { $range }. How much less or more still works is not known yet.
   *[other] { $right } of { $pots } pots came out right, at { $range }. How much less or more still works is not known yet.
}
# Items of a list such as "2 thin, 3 right".
looks = { $thickness ->
    [thin] { $pots ->
        [one] { $pots } thin
       *[other] { $pots } thin
    }
    [thick] { $pots ->
        [one] { $pots } thick
       *[other] { $pots } thick
    }
   *[right] { $pots ->
        [one] { $pots } right
       *[other] { $pots } right
    }
}
# $from: without its unit, which $to has.
range = { $from } to { $to }
# $low: without its unit, which $best and $high have. $sure: a whole number.
best-near = Best near { $best }, most likely between { $low } and { $high }. Within the window, at least { $sure } of 100 pots should come out right.

## The chart of pots by laydown, and its legend. $amount: a laydown without its unit

came-out = { $thickness ->
    [thin] Came out thin
    [thick] Came out thick
   *[right] Came out right
}
the-window = Window
best-amount = Best, { $amount }
aimed-at-today = Today's aim, { $amount }
# Such as "Laydown, g per 100 cm²".
laydown-axis = Laydown, { $unit }
# Items of a list joined with semicolons, for who listens rather than looks.
looks-at = { $thickness ->
    [thin] { $pots ->
        [one] { $pots } thin at { $range }
       *[other] { $pots } thin at { $range }
    }
    [thick] { $pots ->
        [one] { $pots } thick at { $range }
       *[other] { $pots } thick at { $range }
    }
   *[right] { $pots ->
        [one] { $pots } right at { $range }
       *[other] { $pots } right at { $range }
    }
}
# The chart in words. $finding: a sentence or two. $looks: such as "2 thin at 4.1 to 4.6 g per 100 cm²; 5 right at 5.2 to 6.0 g per 100 cm²". $aim: a laydown with its unit.
chart-words = { $scope }. { $finding } { $looks }. Today's aim: { $aim }.

## The faults. Shares are such as "5 of 6 (44 to 97%)"

faults-by-side = { $above } above the window, { $within } within, { $below } below.
# $share: such as "5 of 6 (44 to 97%)".
faults-of-all = { $pots ->
    [one] { $share } pot.
   *[other] { $share } pots.
}
# $low and $high: whole numbers, percentages between which the share of many such pots may lie.
share = { $with } of { $of } ({ $low } to { $high }%)
no-pot-there = no pot
above-window = Above
within-window = Window
below-window = Below
share-of-pots = Pots with the fault
so-far = Pots so far
may-be-share = Likely share, with so few pots
# $fault: its name. $counts: the sentence above.
fault-chart-words = { $fault }: { $counts }
more-with-less = More often with less glaze.
more-within = More often within the window.
more-with-more = More often with more glaze.

## What targets of one zone rest on. $laydown: with its unit

rests-on-controls = { $pieces ->
    [one] { $pieces } control piece, { $laydown }
   *[other] { $pieces } control pieces, average { $laydown }
}
rests-on-tiles = { $tiles ->
    [one] { $tiles } test tile, { $laydown }
   *[other] { $tiles } test tiles, average { $laydown }
}
rests-on-start = No control piece or test tile yet: starting value, { $laydown }

## The chart of coats against their aims

aims-title = Coats against aims
aims-axis = { $coats ->
    [one] The last { $coats } coats
   *[other] The last { $coats } coats
}
# On the axis: as much as was aimed at.
aim = Aim
a-coat = Coat
far-off = Far from the rest
moving-average = Moving average
the-aim = Aim
within-limits = Band where coats keep to the aim
aims-on = { $coats ->
    [one] The last { $coats } coat is right on the aim.
   *[other] The last { $coats } coats average right on the aim.
}
# $percent: such as "7%".
aims-over = { $coats ->
    [one] The last { $coats } coat is { $percent } over the aim.
   *[other] The last { $coats } coats average { $percent } over the aim.
}
aims-short = { $coats ->
    [one] The last { $coats } coat is { $percent } short of the aim.
   *[other] The last { $coats } coats average { $percent } short of the aim.
}
aims-steady = They keep to the aim.
aims-outside = { $coats ->
    [one] One is far from the rest.
   *[other] { $coats } are far from the rest.
}

## The last set of equal pieces

# $form: the form's name.
last-set = { $zone ->
    [inside] Last set: { $form }, inside
    [outside] Last set: { $form }, outside
   *[whole] Last set: { $form }, inside and outside
}
# $when: such as "yesterday" or "5 days ago". $mean, $most: weights. $least: a weight without its unit. $spread: such as "2.1%".
last-set-weights = { $pieces ->
    [one] { $pieces } piece, { $when }: average { $mean } wet, { $least } to { $most }, standard deviation { $spread }.
   *[other] { $pieces } pieces, { $when }: average { $mean } wet, { $least } to { $most }, standard deviation { $spread }.
}

## A drift off the aim. $percent: such as "6%". $since: such as "3 days ago".
drift-over = { $coats ->
    [one] Starting { $since }: { $coats } coat { $percent } over the aim.
   *[other] Starting { $since }: { $coats } coats average { $percent } over the aim.
}
drift-short = { $coats ->
    [one] Starting { $since }: { $coats } coat { $percent } short of the aim.
   *[other] Starting { $since }: { $coats } coats average { $percent } short of the aim.
}
drift-is-over = They have been back on the aim since.
# $changes: a list of the items below.
near = New around then: { $changes }.
nothing-near = Nothing new around then: no bucket, SG check, scale or clay body.
near-bucket = bucket { $name }
near-scale = scale { $name }
near-body = clay body { $name }
near-check = SG check, { $sg }
check-when-over = Check the bucket's SG, and how long you dip the pieces.
check-when-short = Check the bucket's SG, and whether the bisque is damp.
drift-began = Drift began
# A button.
drift-noted = Noted: start over
drift-is-noted = Noted. The drift count starts again.

## What other sizes take. $shape: a class of shape.
sizes-title = { $zone ->
    [inside] Sizes: { $shape }, inside
    [outside] Sizes: { $shape }, outside
   *[whole] Sizes: { $shape }, inside and outside
}
sizes-rest-on = { $pots ->
    [one] From { $pots } fired pot of this shape, for today's bucket.
   *[other] From { $pots } fired pots of this shape, for today's bucket.
}
# $volume: what it holds.
form-and-capacity = { $form }, { $volume }
next-size = Next size, { $volume }
# $aim, $high: weights. $low: a weight without its unit.
size-amount = { $aim } ({ $low } to { $high })
# $unit: of a volume.
holds = Holds, { $unit }
aim-may-be = Where the aim may lie
# $sizes: items as below, with semicolons.
sizes-words = { $title }; { $sizes }.
size-at = at { $volume } { $wet }

## Sets that match
sets-title = Sets that match
waiting-shelf = { $zone ->
    [inside] Waiting: { $form }, inside
    [outside] Waiting: { $form }, outside
   *[whole] Waiting: { $form }, inside and outside
}
fired-shelf = { $zone ->
    [inside] Came out right: { $form }, inside
    [outside] Came out right: { $form }, outside
   *[whole] Came out right: { $form }, inside and outside
}
# $percent: how much more the thickest carries than the thinnest. $pieces: their codes.
best-set = Best { $size }, within { $percent }: { $pieces }.
# $wet: a weight.
next-to-match = Next piece to match: { $wet }.

## What is used
use-title = Use
each-week = A week
# $wet: a weight. $weeks: a whole number.
weekly = { $coats ->
    [one] { $wet } wet, from { $coats } coat in the last { $weeks } weeks.
   *[other] { $wet } wet, from { $coats } coats in the last { $weeks } weeks.
}
# $wet: a weight.
bucket-left = { $coats ->
    [0] { $wet } left: under a third of what was mixed. Mix more.
    [one] { $wet } left: { $coats } more coat until a third is left to dip into.
   *[other] { $wet } left: about { $coats } more coats until a third is left to dip into.
}
# $powder and $water: weights.
to-fill-up = To fill it up: { $powder } powder and { $water } water. Wear a respirator.

## Who glazed
# $name: a person's name.
near-hand = first coats by { $name }
hands-title = Hands
# $percent: such as "6%".
hand-on = { $coats ->
    [one] { $coats } coat, right on the aim
   *[other] { $coats } coats, average right on the aim
}
hand-over = { $coats ->
    [one] { $coats } coat, { $percent } over the aim
   *[other] { $coats } coats, average { $percent } over the aim
}
hand-short = { $coats ->
    [one] { $coats } coat, { $percent } short of the aim
   *[other] { $coats } coats, average { $percent } short of the aim
}
# $mean: as above. $spread: a percentage.
hand-spread = { $mean }. Standard deviation { $spread }.

## What the bisque drinks, and how well the scales repeat.
# $body: the name of a clay body.
bisque-title = Bisque: { $body }
# $percent: a percentage.
newest-lot = The newest lot absorbs { $percent }.
lots-axis = Lots, oldest first
a-lot = One lot
in-their-order = In their order
usual-bisque = Usual for cone 06 to 04
# $scale: its name.
repeats-title = Scale: { $scale }
# $now, $before: standard deviations.
repeats-worse-now = It repeats within { $now }, worse than { $before } in the test before. Level it, clean under its plate, change its battery, and test again.
# $now, $before: standard deviations.
repeats-better-now = It repeats within { $now }, better than { $before } in the test before.
# $now: a standard deviation.
repeats-as-before = It repeats within { $now }, as in the test before.
tests-axis = Tests, oldest first
a-test = Standard deviation of one test
test-reaches = How sure it is
the-step = One step of the display

## How a bucket went over time. $bucket: its name. $first and $last: numbers. $day: the day of the first.
sg-title = SG of { $bucket }
sg-steady = { $checks } checks, and the SG held at { $last }.
sg-rose = It thickened: SG { $first } on { $day }, { $last } now.
sg-fell = It got thinner: SG { $first } on { $day }, { $last } now.
# $sg: an SG.
working-sg = Working SG { $sg }
flow-title = Flow of { $bucket }
# $cup: the name of a flow cup.
flow-went = { $first } s on { $day }, { $last } s now, by the { $cup }.
any-cup = same cup
volume-title = Volume of { $bucket }
volume-went = { $first } l on { $day }, { $last } l now, by its level.
one-check = One reading
over-time = Over time
