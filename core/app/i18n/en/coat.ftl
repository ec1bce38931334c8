### One saved coat: its record, and the marks a potter puts on it afterwards.

saved = Saved
wet-weight = Wet weight
bare-glazed = Bare, glazed
verdict = Verdict
reading = Reading
confirmed = Far off the aim, confirmed
target-then = Target then
# $aim: a weight. $span: the weights that are right, such as "18.0 to 20.8 g".
aim-and-span = { $aim }, accepted { $span }
# The target was a guess.
aim-and-guess = { $aim }, a guess; may be { $span }
laydown = Laydown
glaze-bucket = Glaze, bucket
sg = SG
area = Area
make-control = Make this a control piece
no-longer-control = No longer a control piece
control-marked = Now a control piece: targets use it.
control-unmarked = No longer a control piece.
removed = Coat removed.
