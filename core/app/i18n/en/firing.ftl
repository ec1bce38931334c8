### One firing's page: what to look at before, which piece stands where, how far it has come, and how it was against earlier firings.

# What is looked at before the kiln.
checklist = { $item ->
    [dust] Dust wiped off with a damp sponge. Blown or swept, it gets into the lungs.
    [foot] Glaze cleaned off the foot, and a little up the wall.
    [rim] Rims and edges felt: what is sharp now will cut later.
    [knocks] Knocks and chips touched up, and noted.
    [cracks] No cracks in the dry coat. Rub them over, or the glaze crawls there.
    [bone_dry] Every piece bone dry, not cool against your cheek. Damp ware bursts.
    [closed] No closed hollow without a small hole for air.
    [stacked] Stacked ware stands foot on foot or rim on rim, nothing heavy on a thin rim.
    [clay_cracks] No cracks in rims, floors and where handles join.
   *[overlap] Where two glazes overlap: not too thick, and room below to run.
}
# Above the pieces that can be put in, while the firing is loaded.
waiting-label = Waiting: tap to put on a shelf
# The same once it is fired.
left-out-label = Add a missed piece
add-unweighed = Add pieces that were not weighed
# A tick for all waiting pieces of one form. $form: its name.
all-of-form = { $pieces ->
    [one] { $form }: { $pieces } piece
   *[other] { $form }: all { $pieces }
}
# A row on the firing's page, which leads to the cones.
place-cones = Witness cones
no-cones-yet = None yet. Placed beside the ware, they show how much heat it got.
# A row on the firing's page after the firing, which leads to what is read then.
read-cones = Read the cones
read-without-cones = Temperature, time and any cones you placed
look-again = Look at the pieces again
look = Look at the pieces
look-left = { $left ->
    [one] Look at the pieces: { $left } left
   *[other] Look at the pieces: { $left } left
}

## Commands and what they answer

no-room = This shelf is full. Use another, or remove something from it.
loaded = { $pieces ->
    [one] { $pieces } piece on shelf { $shelf }.
   *[other] { $pieces } pieces on shelf { $shelf }.
}
# $overlapping: how many pairs of pieces stand one on the other, as drawn.
loaded-and-overlapping = { $pieces ->
    [one] { $pieces } piece on shelf { $shelf }.
   *[other] { $pieces } pieces on shelf { $shelf }.
} { $overlapping ->
    [one] { $overlapping } pair overlaps: move one of them.
   *[other] { $overlapping } pairs overlap: move some.
}
all-loaded = { $pieces ->
    [one] { $pieces } piece loaded.
   *[other] { $pieces } pieces loaded.
}
# $left: how many pieces did not fit.
some-loaded = { $pieces ->
    [one] { $pieces } piece loaded. No room for { $left }.
   *[other] { $pieces } pieces loaded. No room for { $left }.
}
moved = Moved.
taken-out = Removed from the load.
was-in-firing = You looked at this piece after the firing, so it was in it. It cannot be removed.
not-on-checklist = This is not on the checklist before a firing.
looked-at = Checked.
not-looked-at = Still to be checked.
fired-answer = Marked as fired. Let it cool before you open it, then look at the pieces one by one.
done-answer = Marked as done.
opened-answer = Open again.
# $firing: such as "Firing 12: cone 6, garden kiln".
in-another-load = This piece is still in another firing: { $firing }. Unload it or remove it there first.
is-done = This firing is done. Open it again first.
is-fired = This firing is over: its plan stays as it was.

## The button to the next state, and what is asked before

to-fired = Mark as fired
to-done = Mark as done
to-open = Open again
ask-fired-empty = There is nothing on its shelves. You can still add the pieces afterwards.
ask-fired = Do this once the kiln has been fired. You can then look at the pieces one by one.
ask-done = { $left ->
    [one] { $left } piece has not been looked at. You can open the firing again.
   *[other] { $left } pieces have not been looked at. You can open the firing again.
}

## Its record

begun = Started
number = Number
name = Name
pieces = Pieces
cone = Cone
# $cone: the number of the cone.
cone-and-kind = { $kind ->
    [large] { $cone }, large
    [self_supporting] { $cone }, self-supporting
   *[newer] { $cone }, from a newer version
}
bends-at = Bends at
# When the cone bends. $slow, $fast: temperatures such as "1222 °C".
bends-at-rates = { $slow } at 60 °C an hour, { $fast } at 150 °C an hour
program = Program
witness-cones = Witness cones
fired = Fired
top-temperature = Top temperature
it-took = Firing time
note = Note
# A piece on its shelf with what was found on it. $place: such as "Shelf 2, back left". $found: such as "inside right, runs".
place-and-found = { $place }: { $found }

## What to mind

kiln-caution = Leave kiln wiring, gas and venting to licensed people. Ventilate the room, keep anything that can burn well away, and follow the maker's manual.
hot-ware = Hot ware burns you, and cracks in a draught. Unload when you can hold it in a bare hand.
# $air: millimetres.
crowded = { $pairs ->
    [one] Shelf { $shelf }: { $pairs } pair is closer than { $air } mm at the widest, as drawn. Glazes that touch melt together.
   *[other] Shelf { $shelf }: { $pairs } pairs are closer than { $air } mm at the widest, as drawn. Glazes that touch melt together.
}
overlapping = { $pairs ->
    [one] Shelf { $shelf }: { $pairs } pair overlaps, as drawn. One would stand on the other: move it.
   *[other] Shelf { $shelf }: { $pairs } pairs overlap, as drawn. One would stand on the other: move them.
}

## The shelves

# $free: a number from 0 to 100.
shelf-title = { $pieces ->
    [one] Shelf { $shelf }: { $pieces } piece, { $free }% free
   *[other] Shelf { $shelf }: { $pieces } pieces, { $free }% free
}
# The same once it was fired.
shelf-title-fired = { $pieces ->
    [one] Shelf { $shelf }: { $pieces } piece
   *[other] Shelf { $shelf }: { $pieces } pieces
}
shelf-help = From above, with the front at the bottom. Hold a piece and drag it to move it; tap it to remove it.
shelf-as-fired = As it was fired, from above, with the front at the bottom. Tap a piece to see which it is.

## Against earlier firings

# A witness cone as it was read: an item of a list. $cone: its number.
witness = { $reading ->
    [standing] cone { $cone } not bent
    [soft] cone { $cone } soft
    [at] cone { $cone } bent
    [hard] cone { $cone } hard
   *[flat] cone { $cone } flat
}
# $difference: one of "hotter", "longer" and so on below.
against-the-last = Compared with the last cone { $cone } firing in this kiln: { $difference }.
# $heat: "hotter", "cooler" or "as-hot". $time: "longer", "shorter" or "as-long".
against-the-last-both = Compared with the last cone { $cone } firing in this kiln: { $heat } and { $time }.
# $degrees: such as "12 °C".
hotter = { $degrees } hotter
cooler = { $degrees } cooler
as-hot = just as hot
# $time: such as "1 h 05 min".
longer = { $time } longer
shorter = { $time } shorter
as-long = just as long
