### The editor of a scale.

new = New scale
title = Scale
archive = Archive this scale
name-hint = Bench scale
capacity = Capacity
# Max, d and Min stand on the plate of a scale in every language.
capacity-help = Marked Max on its plate.
step = Step
step-help = Marked d on its plate: the smallest change it shows.
minimum = Minimum, if known
minimum-help = Marked Min on its plate.
repeatability = Repeatability, if tested
repeatability-help = Weigh one piece ten times: see Scale tests in Studio.
# $half-width: a weight.
accurate-to = A coat weighed after tare is accurate to ±{ $half-width }, 95 times in 100.
class = Accuracy class, if marked
class-help = I, II, III or IIII on its plate.
no-class = None marked
