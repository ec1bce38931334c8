### The editor of a kiln: how large its shelves are, and how many it takes.

new = New kiln
title = Kiln
archive = Archive this kiln
name-hint = Garden kiln
round = Round shelves
across-round = A shelf, across
across = A shelf, from left to right
deep = And from front to back
shelves = Shelves it takes
shelf-impossible = A shelf is between 5 cm and 3 m. Check the figure and the unit.
# $most: a whole number, 30.
shelves-impossible = A kiln takes between 1 and { $most } shelves, in whole numbers.
