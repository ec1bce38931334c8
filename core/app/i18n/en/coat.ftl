### One saved coat: its record, and the marks a potter puts on it afterwards.

saved = Saved
wet-weight = Wet weight
bare-glazed = Bare, glazed
added = Added in a touch-up
rubbed-off = Rubbed off
verdict = Verdict
reading = Reading
confirmed = Far off the aim, confirmed
target-then = Target when weighed
# $aim: a weight. $span: the weights that are right, such as "18.0 to 20.8 g".
aim-and-span = { $aim } ({ $span })
# The target was a guess.
aim-and-guess = { $aim }, a guess: may be { $span }
laydown = Laydown
weighed-dry = Weighed bone dry
dipped = Dipped or poured
# $time: a number.
seconds = { $time } s
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
    [short] This coat was short when weighed, and you have not said how it came out of the kiln. Let targets use it anyway?
   *[over] This coat was over when weighed, and you have not said how it came out of the kiln. Let targets use it anyway?
}
control-not-judged = You have not said yet whether this pot came out right. Let targets use it anyway?
control-not-fired = This pot is not fired yet, so you cannot know whether it is right. Let targets use it anyway?
note = Note
