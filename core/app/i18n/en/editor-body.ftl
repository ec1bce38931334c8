### The editor of a clay body: how it shrinks, so that a pot measured at one stage is known at the others.

new = New body
title = Body
archive = Archive this body
name-hint = White stoneware
to-bisque = Shrinks from thrown to bisque, %
to-bisque-help = Scratch two marks 100 mm apart into wet clay: each millimetre they lose is a percent.
to-fired = Shrinks from thrown to glaze-fired, %
to-fired-help = The same marks after the glaze firing.
density = Density of the bisque, g/ml, if measured
density-help = Dry weight over outer volume. It lets the weight of a bisque piece show a mistyped size.
density-impossible = Bisque weighs between 1 and 3 g per ml. Check the figure, or leave it empty.
# $size: a percentage of a length, such as "6.8%". $area: a percentage of an area.
grew = A fired pot was { $size } larger as bisque, and had { $area } more to glaze.
