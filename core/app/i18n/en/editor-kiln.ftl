### The editor of a kiln: how large its shelves are, and how many it takes.

new = New kiln
title = Kiln
archive = Archive this kiln
name-hint = Garden kiln
round = Round shelves
across-round = Shelf diameter
across = Shelf width
deep = Shelf depth
shelves = Number of shelves
shelf-impossible = A shelf is between 5 cm and 3 m. Check the figure and the unit.
# $most: a whole number, 30.
shelves-impossible = A kiln takes 1 to { $most } shelves. Type a whole number.
