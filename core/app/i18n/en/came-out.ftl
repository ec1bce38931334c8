### What came out of the kiln, piece by piece: how thick the glaze looks, and where on a piece a fault is. Most are items of a list such as "inside right, running at the foot, liked 4", which may begin a line with a capital letter.

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
liked = liked { $stars }
# A fault with its place, such as "running at the foot".
fault-at-place = { $fault } { $place }
# A fault and on how many pieces it was found, such as "running 3".
fault-counted = { $fault } { $pieces }
# Where on a piece a fault is.
place = { $place ->
    [rim] at the rim
    [floor] in the floor
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
    [crawling] Where is the crawling?
    [beading] Where is the beading?
    [raw_cracking] Where is the raw cracking?
    [flaking] Where is the flaking?
    [crazing] Where is the crazing?
    [delayed_crazing] Where is the delayed crazing?
    [shivering] Where is the shivering?
    [dunting] Where is the dunting?
    [pinholing] Where is the pinholing?
    [pitting] Where is the pitting?
    [blistering] Where is the blistering?
    [bloating] Where is the bloating?
    [running] Where is the running?
    [pooling] Where is the pooling?
    [sagging] Where is the sagging?
    [thin] Where is the thin?
    [dry] Where is the dry?
    [overfired] Where is the overfired?
    [matting] Where is the matting?
    [scumming] Where is the scumming?
    [blushing] Where is the blushing?
    [speck] Where is the speck?
    [bare_spot] Where is the bare spot?
   *[metal_marking] Where is the metal marking?
}
tap-the-place = Tap the place: inside on the left, outside on the right.
