### The Kiln screen: what waits for a firing, and the firings. Also what firings, pieces and coats are called on the kiln's other screens.

waiting = { $pieces ->
    [0] No glazed piece waits for a firing.
    [one] { $pieces } piece waits for a firing.
   *[other] { $pieces } pieces wait for a firing.
}
no-firing-yet = Begin one when the pieces are dry: choose a kiln and a cone, then put them on its shelves.
# An item of a list such as "10:42, 3 pieces, being loaded".
pieces = { $pieces ->
    [one] { $pieces } piece
   *[other] { $pieces } pieces
}
# How far a firing has come: an item of a list, or alone with a capital letter.
state = { $state ->
    [loading] being loaded
    [fired] fired, to be unloaded
    [done] unloaded
   *[newer] from a newer version
}
# $cone: the number of the cone aimed at. $kiln: the kiln's name.
firing-title = Cone { $cone }, { $kiln }
unknown-form = A form
unknown-piece = A piece
# An item of a list such as "Ash white inside, Iron red outside". $glaze: the glaze's name.
glaze-on-zone = { $zone ->
    [inside] { $glaze } inside
    [outside] { $glaze } outside
    [whole] { $glaze } inside and outside
   *[newer] { $glaze }, from a newer version
}
# The same for a glaze that is not known on this phone.
unknown-glaze-on-zone = { $zone ->
    [inside] a glaze inside
    [outside] a glaze outside
    [whole] a glaze inside and outside
   *[newer] a glaze, from a newer version
}
# An item of a list: the piece goes into another firing.
to-be-fired-again = to be fired again
# The label of one coat in a piece's record.
coat-label = { $zone ->
    [inside] Inside, { $glaze }
    [outside] Outside, { $glaze }
    [whole] Inside and outside, { $glaze }
   *[newer] From a newer version, { $glaze }
}
# The same for a glaze that is not known on this phone.
unknown-glaze-coat-label = { $zone ->
    [inside] Inside, A glaze
    [outside] Outside, A glaze
    [whole] Inside and outside, A glaze
   *[newer] From a newer version, A glaze
}
# What the scale said of a coat when it was weighed: an item of a list. $weight: the weight of the coat. $aim: the weight aimed at.
weighed = { $verdict ->
    [within] { $weight }, within (aim { $aim })
    [short] { $weight }, short (aim { $aim })
    [over] { $weight }, over (aim { $aim })
    [cannot_tell] { $weight }, cannot tell (aim { $aim })
    [guess] { $weight }, a guess (aim { $aim })
   *[newer] { $weight } (aim { $aim })
}
# Where a piece stands: an item of a list, or alone with a capital letter. $shelf: its number, 1 at the bottom. Front and left are those of someone before the kiln.
place = { $place ->
    [front_left] shelf { $shelf }, front left
    [front] shelf { $shelf }, front
    [front_right] shelf { $shelf }, front right
    [left] shelf { $shelf }, left
    [right] shelf { $shelf }, right
    [back_left] shelf { $shelf }, back left
    [back] shelf { $shelf }, back
    [back_right] shelf { $shelf }, back right
   *[middle] shelf { $shelf }, middle
}
