### The Kiln screen: what waits for a firing, and the firings. Also what firings, pieces and coats are called on the kiln's other screens.

waiting = { $pieces ->
    [0] No glazed pieces are waiting for a firing.
    [one] { $pieces } piece is waiting for a firing.
   *[other] { $pieces } pieces are waiting for a firing.
}
no-firing-yet = Start one when the pieces are dry: choose a kiln and a cone, then load the shelves.
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
# A firing, alone with a capital letter or after its number. $cone: the number of the cone aimed at. $kiln: the kiln's name.
firing-title = cone { $cone }, { $kiln }
# The same for a bisque firing.
bisque-title = bisque to cone { $cone }, { $kiln }
# $title: “cone 6, garden kiln”, or the name that the potter gave it.
numbered-title = Firing { $number }: { $title }
unknown-form = Unknown form
unknown-piece = Unknown piece
# In place of its glazes, for a piece that went into a firing without being weighed: an item of a list.
never-weighed = not weighed
# An item of a list such as "Ash white inside, Iron red outside". $glaze: the glaze's name.
glaze-on-zone = { $zone ->
    [inside] { $glaze } inside
    [outside] { $glaze } outside
    [whole] { $glaze } inside and outside
   *[newer] { $glaze }, from a newer version
}
# The same for a glaze that is not known on this phone.
unknown-glaze-on-zone = { $zone ->
    [inside] unknown glaze inside
    [outside] unknown glaze outside
    [whole] unknown glaze inside and outside
   *[newer] unknown glaze, from a newer version
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
    [inside] Inside, unknown glaze
    [outside] Outside, unknown glaze
    [whole] Inside and outside, unknown glaze
   *[newer] From a newer version, unknown glaze
}
# What the scale said of a coat when it was weighed: an item of a list. $weight: the weight of the coat. $aim: the weight aimed at.
weighed = { $verdict ->
    [within] { $weight }, within (aim { $aim })
    [short] { $weight }, short (aim { $aim })
    [over] { $weight }, over (aim { $aim })
    [cannot_tell] { $weight }, can't tell (aim { $aim })
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
