### What a coat should weigh: where that comes from, how sure it is, and why there is no target.

## Where it comes from. $pieces: how many control pieces. $form: the potter's name of a form. $laydown: dry glaze on an area.
from-control = { $pieces ->
    [one] From your control piece of this form.
   *[other] From your control pieces of this form.
}
from-control-by-area = { $pieces ->
    [one] From your control piece of “{ $form }”, by glazed area.
   *[other] From your control pieces of “{ $form }”, by glazed area.
}
from-control-by-capacity = { $pieces ->
    [one] From your control piece of “{ $form }”, by capacity.
   *[other] From your control pieces of “{ $form }”, by capacity.
}
from-tiles = From your test tiles: { $laydown }.
from-start = From the usual start for a glaze: { $laydown }.
from-sides = What the inside and the outside take together.
from-import = As noted in your spreadsheet.

## What it rests on.
based-on-tiles = Based on test tiles, no pots yet.
based-on-nothing = Not based on any pots yet. Save one you like as your control piece.
based-on-pots = { $pots ->
    [one] Based on 1 pot.
   *[other] Based on { $pots } pots.
}

## How sure it is. $low: a number. $high: a weight with its unit.
first-guess = First guess: the right amount may be anywhere between { $low } and { $high }.
most-likely = The right amount is most likely between { $low } and { $high }.

## Why there is no target. $form: the potter's name of a form.
no-area = “{ $form }” has no glazed area. Give its capacity, or measure its surface.
unusable-control = The control piece of “{ $form }” has an impossible weight or area. Correct it, or choose another control piece.
unusable-tile = A test tile of this glaze has an impossible weight or area. Correct it, or archive the tile.
nothing-to-go-by = laydown does not know yet how thick this glaze should be. Weigh a piece you like and save it as the control piece.
no-number = No target can be calculated from the size of this form and the SG of this bucket. Check both.

## Test tiles.
tile-no-area = Give the area of the tile's glazed face.
tile-no-weight = Give the weight of the coat on the tile.
tile-too-much = A tile of this size cannot hold that much glaze. Check the weight and the area.
# $share: a percentage.
tile-is-thin = This tile carries only { $share } of what the pots will, so targets leave it out. Glaze a thicker one.
