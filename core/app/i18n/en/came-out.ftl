### What came out of the kiln, piece by piece: how thick the glaze looks, and where on a piece a fault is. Most are items of a list such as "inside right, runs at the foot, rated 4 of 5", which may begin a line with a capital letter.

inside-looks = { $thickness ->
    [thin] inside thin
    [thick] inside thick
    [right] inside right
   *[newer] inside from a newer version
}
outside-looks = { $thickness ->
    [thin] outside thin
    [thick] outside thick
    [right] outside right
   *[newer] outside from a newer version
}
# Where two glazes meet.
overlap-looks = { $thickness ->
    [thin] overlap thin
    [thick] overlap thick
    [right] overlap right
   *[newer] overlap from a newer version
}
# $stars: 1 to 5.
liked = rated { $stars } of 5
# A fault with its place, such as "runs at the foot".
fault-at-place = { $fault } { $place }
# A fault and on how many pieces it was found, such as "runs (3)".
fault-counted = { $fault } ({ $pieces })
# Where on a piece a fault is.
place = { $place ->
    [rim] at the rim
    [floor] on the inside floor
    [foot] at the foot
    [low_inside] low inside
    [low_outside] low outside
    [halfway_inside] halfway up inside
    [halfway_outside] halfway up outside
    [high_inside] high inside
   *[high_outside] high outside
}
# Above the outline of a piece; "tap-the-place" follows.
where-is = { $fault ->
    [crawling] Where did it crawl?
    [beading] Where did it bead?
    [raw_cracking] Where did it crack?
    [flaking] Where did it flake?
    [crazing] Where did it craze?
    [delayed_crazing] Where did it craze?
    [shivering] Where did it shiver?
    [dunting] Where did it crack?
    [pinholing] Where are the pinholes?
    [pitting] Where are the pits?
    [blistering] Where are the blisters?
    [bloating] Where did it bloat?
    [running] Where did it run?
    [pooling] Where did it pool?
    [sagging] Where did it sag?
    [thin] Where are the thin spots?
    [dry] Where is it too dry?
    [overfired] Where is it overfired?
    [underfired] Where is it underfired?
    [stuck] Where did it stick?
    [warped] Where is it warped?
    [cracked] Where did it crack?
    [plucked] Where was it plucked?
    [matting] Where is it dull?
    [scumming] Where is the scum?
    [blushing] Where did it blush?
    [speck] Where are the specks?
    [bare_spot] Where are the bare spots?
   *[metal_marking] Where are the cutlery marks?
}
tap-the-place = Tap the spot: inside on the left, outside on the right.
