### The editor of a control piece: an amount known to be right that is typed in, or a coat that was weighed here.

new = New control piece
title = Control piece
archive = Archive this control piece
zone = Zone
net = Wet weight
net-help = What a good coat gained on the scale, read at once.
weighs-nothing = A good coat weighs something. Weigh the piece before and after glazing.
too-much = This form cannot hold that much glaze. Check the weight and the form.
in-use = Saved. Targets use it now.

## A coat that was weighed here

no-longer = Unmark control piece
note = Why it is right
note-hint = Breaks brown at the rim
# $glaze: the name of the glaze. $wet: the wet weight of the coat.
wet-at-sg = { $glaze }: { $wet } wet at SG { $sg }.
# $laydown: dry glaze on an area, such as "5.5 g/dm²".
laydown = { $laydown }.
# $moment: the clock for today, else the date: "10:42", "3 Nov 10:42".
weighed = Weighed { $moment }.
