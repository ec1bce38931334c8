### Looking at a fired piece: what came out, one tap each.

# Such as "2 of 14", before where the piece stood.
position = { $pieces ->
    [one] { $number } of { $pieces }
   *[other] { $number } of { $pieces }
}
# A fault with its place, such as "Runs, at the foot". $fault: its name, with a capital letter.
fault-and-place = { $fault }, { $place }
# $fault: such as "Runs, at the foot". $about: what it is, a sentence. $hint: what it often speaks of, a sentence.
fault-and-hint = { $fault }. { $about } { $hint }
inside = Inside
outside = Outside
overlap = Overlap
saved = Saved.
# $found: such as "inside right, runs at the foot".
saved-found = Saved: { $found }.
no-outline = This form has no outline to tap.
fault-first = Tap a fault first, then tap where it is.
liking-range = Rate it from 1 to 5.
note-too-long = { $letters ->
    [one] This note is too long. Use { $letters } character at most.
   *[other] This note is too long. Use { $letters } characters at most.
}

## Photographs

photo-unreadable = This picture cannot be read. Take it again, or choose another.
photo-saved = Photo saved.
photo-removed = Photo removed.

## What to mind

sharp = Edges and slivers are sharp. Wear gloves and eye protection, and do not use this piece at table.
crazed = Crazed ware can leak, and can break with boiling water. Only a laboratory test can tell whether anything leaches into food.
thick-and-over = It was over when weighed, which fits. Keep to the aim next time.
thick-but-short = It was short when weighed, so look for another cause: the firing, the bucket's SG or a drip.
thick-but-within = It was within when weighed. If more pieces come out thick, the aim may be too high.
thin-and-short = It was short when weighed, which fits. Keep to the aim next time.
thin-but-over = It was over when weighed, so look for another cause: the firing, the bucket's SG or wet bisque.
thin-but-within = It was within when weighed. If more pieces come out thin, the aim may be too low.
