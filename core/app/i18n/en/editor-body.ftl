### The editor of a clay body: how it shrinks, so that a pot measured at one stage is known at the others.

new = New body
title = Body
archive = Archive this body
name-hint = White stoneware
to-bisque = Shrinkage to bisque, %
to-bisque-help = From the thrown size. Scratch two marks 100 mm apart in wet clay: each millimetre they lose is 1%.
to-fired = Shrinkage to glaze-fired, %
to-fired-help = Also from the thrown size: the same marks after the glaze firing.
density = Bisque density, g/ml
density-help = If measured: dry weight divided by outer volume. With it, the weight of a bisque piece shows up a mistyped size.
density-impossible = Bisque weighs 1 to 3 g per ml. Check the figure, or leave it empty.
# $size: a percentage of a length, such as "6.8%". $area: a percentage of an area.
grew = A fired pot was { $size } larger as bisque, with { $area } more to glaze.
