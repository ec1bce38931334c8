### The Studio screen: everything that is set up once and used for years.

forms = Forms
add-form = Add a form
no-forms = The shapes you throw again and again.
bodies = Bodies
add-body = Add a body
no-bodies = Your clays and how they shrink, so that you can measure a fired pot for its bisque size.
bisque-lots = Bisque lots
add-bisque-lot = Add a bisque lot
no-bisque-lots = How much water each bisque firing’s ware absorbs: it moves how much glaze a dip takes up.
glazes = Glazes
add-glaze = Add a glaze
no-glazes = Each with its sensitivity to thickness.
controls = Control pieces
add-control = Add a control piece
no-controls = A pot that came out right. Mark a saved coat as a control piece, or type an amount you trust.
tiles = Test tiles
add-tile = Add a test tile
no-tiles = Weigh the coat on a tile to see how thick your tests really are.
scales = Scales
add-scale = Add a scale
no-scales = Each with its capacity and its step.
scale-tests = Scale tests
add-scale-test = Test a scale
no-scale-tests = Weigh one piece ten times: laydown then knows how well the scale repeats.
kilns = Kilns
add-kiln = Add a kiln
no-kilns = Each with its shelves, to plan a load.
vessels = Vessels
add-vessel = Add a vessel
no-vessels = Any jar: weigh it once with water, and it checks SG for good.

## Lines under the names of things

# A body. $bisque, $fired: percentages, both from the thrown size.
shrinks = shrinks { $bisque } to bisque, { $fired } fired
# A glaze. $sensitivity: the stored code of how much it minds a thicker or thinner coat.
thickness = { $sensitivity ->
    [low] Thickness: Forgiving
    [high] Thickness: Sensitive
   *[medium] Thickness: Normal
}
# A kiln. $across, $deep: lengths.
oblong-shelves = { $count ->
    [one] { $count } shelf of { $across } by { $deep }
   *[other] { $count } shelves of { $across } by { $deep }
}
# A kiln. $across: a length.
round-shelves = { $count ->
    [one] { $count } shelf of { $across } across
   *[other] { $count } shelves of { $across } across
}
# A control piece that was weighed here. $glaze: the name of the glaze. $wet: a weight. $moment: the clock for today, else the date.
weighed-control = { $glaze }: { $wet } wet, { $moment }
# A control piece whose amount was typed in. $glaze: the name of the glaze. $wet: a weight.
typed-control = { $glaze }: { $wet } wet
# A test tile. $glaze: the name of the glaze. $laydown: dry glaze on an area. $result: how the tile came out: "right", "not fired yet".
tile = { $glaze }, { $laydown }: { $result }
# A test tile of an earlier version, which did not ask how it came out.
tile-not-asked = { $glaze }, { $laydown }: say how it came out
# The newest test of a scale. $deviation: a weight. $when: how long ago.
scale-repeats = standard deviation { $deviation }, tested { $when }
# A scale that was only checked with a known weight. $when: how long ago.
scale-checked = known weight checked { $when }
# A test tile that was not glazed yet. $glaze: the name of the glaze. $wet: a weight.
planned-tile = { $glaze }: planned with { $wet }
