### The editor of a scale.

new = New scale
title = Scale
archive = Archive this scale
name-hint = Bench scale
capacity = Most it carries
# Max, d and Min stand on the plate of a scale in every language.
capacity-help = On its plate: Max.
step = Step it reads in
step-help = On its plate: d. The smallest change it shows.
minimum = Least it should weigh, if known
minimum-help = On its plate: Min.
repeatability = Scatter when one piece is weighed ten times, if tested
repeatability-help = The standard deviation.
# $half-width: a weight.
accurate-to = A coat weighed after tare is accurate to ±{ $half-width }, 95 times in 100.
