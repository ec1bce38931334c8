### The Sizes screen: what every form takes, going by one amount that is known to be right.

nothing-known = No amount is known to be right yet. Mark a coat you like as a control piece, or add a control piece in Studio.
# $glaze: the potter's name. $sg: a specific gravity.
intro = The amounts below are for { $glaze } today, at SG { $sg }.

## Why a form takes that much. $times: a number.
the-form-gone-by = The other forms are based on this one.
# $ours and $theirs: what this form and the one gone by hold.
by-capacity = { $times } times the area: it holds { $ours } against { $theirs }, and area grows more slowly than that.
# $ours and $theirs: the glazed areas of this form and the one gone by.
by-area = { $times } times the area: { $ours } against { $theirs }.
