### One firing's page: what to look at before, which piece stands where, how far it has come, and how it was against earlier firings.

# What is looked at before the kiln.
checklist = { $item ->
    [dust] Dust wiped off with a damp sponge: blown or swept, it goes into the lungs.
    [foot] Glaze cleared from the foot, and a little up the wall.
    [rim] Rims and edges felt: what is sharp now will cut later.
    [knocks] Knocks and chips touched up, and noted.
    [cracks] No cracks in the dry coat: rub them over, they crawl.
   *[overlap] Where two glazes meet, not too thick, and room below to run.
}
# Above the pieces that can be put in, while the firing is loaded.
waiting-label = Waiting: tap to put on a shelf
# The same once it is fired.
left-out-label = Was another piece in it?
look-again = Look at the pieces again
look = Look at the pieces
look-left = { $left ->
    [one] Look at the pieces: { $left } left
   *[other] Look at the pieces: { $left } left
}

## Commands and what they answer

no-room = There is no room left on this shelf. Take another, or take something off it.
loaded = { $pieces ->
    [one] { $pieces } piece on shelf { $shelf }.
   *[other] { $pieces } pieces on shelf { $shelf }.
}
all-loaded = { $pieces ->
    [one] { $pieces } piece put in.
   *[other] { $pieces } pieces put in.
}
# $left: how many pieces did not fit.
some-loaded = { $pieces ->
    [one] { $pieces } piece put in; for { $left } there is no room.
   *[other] { $pieces } pieces put in; for { $left } there is no room.
}
moved = Moved.
taken-out = Taken out again.
was-in-firing = This piece has been looked at after the firing: it was in it.
not-on-checklist = This is not on the list of what to look at before a firing.
looked-at = Looked at.
not-looked-at = Still to be looked at.
fired-answer = Fired. Let it cool before you open it; then look at the pieces one by one.
done-answer = Done with this firing.
opened-answer = Open again.
# $firing: such as "Cone 6, garden kiln".
in-another-load = This piece is in another load: { $firing }. Take it out there first.
is-done = This firing is done. Open it again first.

## The button to the next state, and what is asked before

to-fired = It is fired
to-done = Done with this firing
to-open = Open it again
ask-fired-empty = Nothing has been put on its shelves. You can still add the pieces afterwards.
ask-fired = Say so once the kiln has been fired. The pieces can then be looked at one by one.
ask-done = { $left ->
    [one] { $left } piece has not been looked at. You can open the firing again.
   *[other] { $left } pieces have not been looked at. You can open the firing again.
}

## Its record

begun = Begun
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
it-took = It took
note = Note
# A piece on its shelf with what was found on it. $place: such as "Shelf 2, back left". $found: such as "inside right, running".
place-and-found = { $place }: { $found }

## What to mind

kiln-caution = Kiln wiring, gas and venting belong to licensed people. Air the room, keep what burns away, and follow the maker's manual.
hot-ware = Hot ware burns and cracks in a draught: unload when it can be held in a bare hand.
# $air: millimetres.
crowded = { $pairs ->
    [one] Shelf { $shelf }: { $pairs } pair stands closer than { $air } mm at the widest, as drawn. Glazes that touch melt together.
   *[other] Shelf { $shelf }: { $pairs } pairs stand closer than { $air } mm at the widest, as drawn. Glazes that touch melt together.
}

## The shelves

# $free: a number from 0 to 100.
shelf-title = { $pieces ->
    [one] Shelf { $shelf }: { $pieces } piece, { $free }% of it free
   *[other] Shelf { $shelf }: { $pieces } pieces, { $free }% of it free
}
shelf-help = From above, the front at the bottom. Drag a piece to move it; tap it to take it out.

## Against earlier firings

# A witness cone as it was read: an item of a list. $cone: its number.
witness = { $reading ->
    [standing] cone { $cone } standing
    [soft] cone { $cone } soft
    [at] cone { $cone } at
    [hard] cone { $cone } hard
   *[flat] cone { $cone } flat
}
# $difference: one of "hotter", "longer" and so on below.
against-the-last = Against this kiln's cone { $cone } firing before: { $difference }.
# $heat: "hotter", "cooler" or "as-hot". $time: "longer", "shorter" or "as-long".
against-the-last-both = Against this kiln's cone { $cone } firing before: { $heat } and { $time }.
# $degrees: such as "12 °C".
hotter = { $degrees } hotter
cooler = { $degrees } cooler
as-hot = as hot
# $time: such as "1 h 05 min".
longer = { $time } longer
shorter = { $time } shorter
as-long = as long
