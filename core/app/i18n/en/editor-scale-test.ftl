### The editor of a scale’s test, and what a scale can do.

new = Test a scale
title = Scale test
archive = Archive this test
scale = Scale
readings = Ten readings
readings-help = Set the scale to zero. Put on one piece of the weight you usually glaze, read, take it off, wait for zero. Ten times.
# $unit: the unit of weights.
shown-column = Shown, { $unit }
known = Known weight, if you have one
known-help = A calibration weight, or what another scale that you trust shows.
known-shown = Shown for it
both-weights = Type the known weight and what the scale shows for it.
weigh-something = Weigh one load ten times, or check a known weight.
# $row: the number of a row. $why: what is wrong with it.
row-refused = Row { $row }: { $why }
# $scale: its name.
saved = { $scale }: test saved.
# $scale: its name.
saved-and-used = { $scale }: test saved. Weigh counts with it from now on.
# $mean: a weight. $deviation: a standard deviation. $low, $high: where it lies, the second with its unit.
repeats = { $loads ->
    [one] { $loads } reading: mean { $mean }, standard deviation { $deviation } ({ $low } to { $high }, 95 times in 100).
   *[other] { $loads } readings: mean { $mean }, standard deviation { $deviation } ({ $low } to { $high }, 95 times in 100).
}
repeats-as-its-step = It repeats as well as its step.
repeats-worse = It repeats worse than its step. Level it, keep it out of draughts and test it again; Weigh allows for it meanwhile.
# $from, $barely: weights. $tolerance: a percentage.
good-from = Good for coats from { $from } at ±{ $tolerance }; from { $barely } it decides only some.
# $class: I to IIII. $allowed, $load: weights.
class-allows = Class { $class } allows ±{ $allowed } in use at { $load }.
# $class: I to IIII.
class-impossible = No scale of this step and capacity is class { $class }. Check its plate.
# $off, $allowed: weights.
known-right = Right for the known weight: off by { $off }, ±{ $allowed } is allowed.
# $off, $allowed: weights.
known-over = It shows { $off } too much; ±{ $allowed } is allowed. Calibrate it, or check the weight. Coats weighed after tare are hardly affected.
# $off, $allowed: weights.
known-under = It shows { $off } too little; ±{ $allowed } is allowed. Calibrate it, or check the weight. Coats weighed after tare are hardly affected.
# $wanted, $fewest: whole numbers.
too-few = { $loads ->
    [one] { $loads } reading. Weigh the load { $wanted } times, { $fewest } at least.
   *[other] { $loads } readings. Weigh the load { $wanted } times, { $fewest } at least.
}
# $row: the number of a row.
no-load = Row { $row } is no weight that this scale can show.
# $row: the number of a row. $reading: a weight.
stray = Row { $row }, { $reading }, is far from the others. Was it another load, or mistyped?
# Beside a scale where one is chosen. $advice: a code.
fits = { $advice ->
    [decides] good for this coat
    [only_just] decides only some of these coats
    [too_coarse] too coarse for this coat
   *[over_capacity] too small for this piece
}
