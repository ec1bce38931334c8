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
