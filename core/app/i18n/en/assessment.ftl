### Looking at a fired piece: what came out, one tap each.

# Such as "2 of 14", before where the piece stood.
position = { $pieces ->
    [one] { $number } of { $pieces }
   *[other] { $number } of { $pieces }
}
# A fault with its place, such as "Running, at the foot". $fault: its name, with a capital letter.
fault-and-place = { $fault }, { $place }
# $fault: such as "Running, at the foot". $hint: a sentence.
fault-and-hint = { $fault }. { $hint }
inside = Inside
outside = Outside
overlap = Where the glazes meet
saved = Saved.
# $found: such as "inside right, running at the foot".
saved-found = Saved: { $found }.
no-outline = This form has no outline to tap.
fault-first = Tap a fault first, then where it is.
liking-range = Liking goes from 1 to 5.
note-too-long = { $letters ->
    [one] Shorter, please: { $letters } letters at most.
   *[other] Shorter, please: { $letters } letters at most.
}

## Photographs

photo-unreadable = This picture cannot be read. Take it again, or choose another.
photo-saved = Photo saved.
photo-removed = Photo removed.

## What to mind

sharp = Edges and slivers are sharp: gloves and eye protection, and not for use at table.
crazed = Crazed ware can leak and break with boiling water. Whether it gives anything off into food only a laboratory test tells.
thick-and-over = It was over when it was weighed, which fits: keep to the aim next time.
thick-but-short = It was short when it was weighed, so look for another cause: the firing, the bucket's SG, a drip.
thick-but-within = It was within when it was weighed. If more pieces like it come out so, the aim may be too high here.
thin-and-short = It was short when it was weighed, which fits: keep to the aim next time.
thin-but-over = It was over when it was weighed, so look for another cause: the firing, the bucket's SG, wet bisque.
thin-but-within = It was within when it was weighed. If more pieces like it come out so, the aim may be too low here.
