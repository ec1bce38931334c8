### The editor of pieces that go into a firing without having been weighed.

new = Pieces not weighed
title = Piece
remove = Remove this piece
name-hint = Teapot, or whose it is
code = Code or mark on the foot
code-help = With it you find the piece again.
# $piece: such as "Small mug, 7K4MA".
is-weighed = This code is on a weighed piece: { $piece }. Tick it in the list of waiting pieces.
no-form = None of my forms
form-help = A form gives it its size on the shelf.
how-many = How many
which-shelf = Shelf
# $number: 1 for the lowest.
shelf = Shelf { $number }
pieces-impossible = Add from 1 to { $most } pieces at once.
name-or-code = Give a name, a code or a form.
added = { $pieces ->
    [one] { $pieces } piece on shelf { $shelf }.
   *[other] { $pieces } pieces on shelf { $shelf }.
}
