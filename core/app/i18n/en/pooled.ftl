### Targets from everything known of a glaze: beside the aim, on the verdict, and on the page that says why.

## What a target rests on, within a sentence. $pots and $controls: how many.
pots = { $pots ->
    [one] 1 fired pot
   *[other] { $pots } fired pots
}
controls = { $controls ->
    [one] 1 control piece
   *[other] { $controls } control pieces
}
# Here and below $pots and $controls are such words.
from-pots = From { $pots }.
from-pots-and-controls = From { $pots } and { $controls }.
from-kept = The amount you keep for this form.
rests-on = Rests on { $pots }.
rests-on-both = Rests on { $pots } and { $controls }.

## Chances in words.
more-than-nine = more than 9 in 10
# $tenths: a whole number from 1 to 9.
about = about { $tenths } in 10
less-than-one = less than 1 in 10
# $odds: as above.
comes-out-right = Chance of coming out right: { $odds }.
right-on-aim = On the aim, { $odds } come out right.
accepted = Accepted: what comes out right in at least 4 of 5.

## A verdict by chances. $span: weights such as "18.0 to 20.8 g". $step: the step of the scale.
headline-probably = PROBABLY WITHIN
probably = Likely right. Steps of { $step } are too coarse to be sure of { $span }.
not-sure = Too far from the aim to be sure. Stay within { $span }.
spoken-probably = Probably within. Save it.

## When fired pots first move a target. $before: a number. $after: a weight.
moved = After { $pots }: { $before } becomes { $after }.
# $before and $now: weights.
back-to = Back to { $before }
keep = Keep { $now }
use-all = Use fired pots
uses-all = Targets follow your fired pots.
uses-best = This zone is back to its target from before the fired pots.
keeps = Target kept at { $now }.
sets-targets = On Weigh, the target comes from these fired pots and everything else known of this glaze.

## What disagrees or says little. $ratio: a percentage. $less, $more and $piece: what a potter calls a piece.
all-right = All fired pots came out right. How much is too much is not known yet.
all-thin = All fired pots came out thin. The target may still be too low.
all-thick = All fired pots came out thick. The target may still be too high.
ratings-inverted = Pots rated thin carry more glaze than pots rated thick. Were the ratings swapped?
mixed = Thin, right and thick overlap. No amount is sure to come out right.
controls-apart = Two control pieces are { $ratio } apart: { $less } and { $more }. Unmark the wrong one.
tiles-above = Your test tiles carry { $ratio } more than your pots need.
tiles-below = Your test tiles carry { $ratio } less than your pots need.
start-above = The starting value is { $ratio } more than your pots need.
start-below = The starting value is { $ratio } less than your pots need.
odd = { $piece } does not fit the others and hardly counts. Check its weight and rating.
# $more and $less: a zone, a clay body or a cone.
groups-apart = { $kind ->
    [body] They need different amounts: { $more } takes { $ratio } more than { $less }. Each form's target goes by its clay body.
    [cone] They need different amounts: { $more } takes { $ratio } more than { $less }. To split them, add a glaze for each cone.
   *[zone] They need different amounts: { $more } takes { $ratio } more than { $less }. Each zone has its own target.
}
some-piece = Unknown piece
some-body = Unknown body
# $form: the potter's name of a form.
typed-amount = { $form }, amount typed in
# $cone: its number.
cone = cone { $cone }

## Why this target? $aim: a weight.
why-button = Why this target?
why = Why { $aim }?
weights-add-up = Percentages say how much each piece of evidence counts.
# $wet: a weight.
pots-say = Your fired pots say { $wet }.
# $pots: how many. $enough: how many are needed.
too-few-pots = { $pots ->
    [one] 1 fired and rated coat of this glaze counts. From { $enough } on they set the target.
   *[other] { $pots } fired and rated coats of this glaze count. From { $enough } on they set the target.
}
# $zone: the name of a zone.
piece-and-zone = { $piece }, { $zone }
control-piece = Control piece: { $piece }
# $tile: the potter's name.
test-tile = Test tile: { $tile }
starting-value = Starting value
# $laydown: dry glaze on an area.
starts-with = { $laydown }.
usual = Usual values
usual-help = What laydown assumes about every glaze and form.
# $when: a moment. $wet: a weight. $look: thin, right or thick.
when-and-weight = { $when }: { $wet }.
when-weight-and-look = { $when }: { $wet }, { $look }.
# $facts: sentences, or nothing. $without: a weight.
facts-and-without = { $facts } Without it: { $without }.
does-not-count = { $facts } Does not count.
leave-out = Leave out
count-again = Count again
is-left-out = Left out.
counts-again = Counts again.
# $done: one of the two sentences above. $before and $after: weights.
and-so = { $done } { $before } becomes { $after }.
