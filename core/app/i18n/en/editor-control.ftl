### The editor of a control piece: an amount known to be right that is typed in, or a coat that was weighed here.

new = An amount known to be right
title = Control piece
archive = Archive this control piece
zone = Where
net = Wet weight of a good coat
net-help = What the scale gained, read at once.
weighs-nothing = A good coat weighs something. Weigh the piece before and after it.
too-much = That is more glaze than this form can hold. Check the weight and the form.
in-use = Saved: targets use it now.

## A coat that was weighed here

no-longer = No longer a control piece
note = What is right about it
note-hint = Breaks brown at the rim
# $glaze: the name of the glaze. $wet: the wet weight of the coat.
wet-at-sg = { $glaze }: { $wet } wet at SG { $sg }.
# $laydown: dry glaze on an area, such as "5.5 g/dm²".
laydown = { $laydown }.
# $moment: the clock for today, else the date: "10:42", "3 Nov 10:42".
weighed = Weighed { $moment }.
