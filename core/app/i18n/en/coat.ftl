### One saved coat: its record, and the marks a potter puts on it afterwards.

saved = Saved
wet-weight = Wet weight
bare-glazed = Bare, glazed
verdict = Verdict
target-then = Target when weighed
# $aim: a weight. $span: the weights that are right, such as "18.0 to 20.8 g".
aim-and-span = { $aim } ({ $span })
laydown = Laydown
glaze-bucket = Glaze, bucket
sg = SG
area = Area
make-control = Make control piece
no-longer-control = Unmark control piece
control-marked = Now a control piece. Targets use it.
control-unmarked = No longer a control piece.
removed = Coat removed.
# $thickness: the stored code of how the fired glaze looks: thin or thick.
control-came-out = { $thickness ->
    [thin] This pot came out too thin. Choose one that came out right as the control piece.
   *[thick] This pot came out too thick. Choose one that came out right as the control piece.
}
# $verdict: the stored code of the coat's verdict: short or over.
control-was-off = { $verdict ->
    [short] This coat was judged short, and nobody has said how it came out of the kiln. Let targets follow it all the same?
   *[over] This coat was judged over, and nobody has said how it came out of the kiln. Let targets follow it all the same?
}
control-not-judged = Nobody has said yet whether this pot came out right. Let targets follow it all the same?
control-not-fired = This pot is not fired yet, so nobody knows whether it is right. Let targets follow it all the same?
