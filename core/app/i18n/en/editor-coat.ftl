### The editor of a saved coat: corrects what was saved by mistake, and takes a touch-up into account.

title = Correct this coat
piece = Piece
piece-of-its-own = A piece of its own
# $piece: what the piece is called.
only-coat = This is the only coat of { $piece }, which is in a firing or has photos. Correct the zone or the weight instead, or remove it from the firing first.
zone = Zone
bucket = Glaze, bucket
net = Coat as weighed
added = Added in a touch-up
rubbed-off = Rubbed off
touch-up-help = What was brushed on or rubbed off after weighing. Leave it empty if nothing was.
# $wet: a weight. $verdict: the verdict in a word.
wet-and-verdict = { $wet } in all: { $verdict }.
corrected = Coat corrected. Its history shows what it was.
hand = Who glazed
dip = Dip or pour, seconds
dip-help = From going in to coming out. Four coats of a bucket give a hint of how long.
dip-impossible = A dip takes 0.5 to 600 seconds.
