### Numbers with words around them, and why a number cannot be used. A number comes ready written, as the potter wants it.

# Between the whole number and its parts, where nothing else was chosen: "." or ",".
decimal-mark = {"."}
# $low and $high: the ends of a span; only the last has its unit: 18.0 to 20.8 g.
span = { $low } to { $high }
percent = { $number }%
# $mass: a unit such as g. $area: a unit such as cm².
laydown-unit = { $mass } per 100 { $area }
# $number: a number. $unit: as laydown-unit.
laydown = { $number } { $unit }

## $quantity: what was asked for. $text: what was typed. $example: a number as the potter writes it.
empty = { $quantity ->
    [weight] Type the weight, for example { $example }.
    [volume] Type the volume, for example { $example }.
    [surface] Type the area, for example { $example }.
    [length] Type the length, for example { $example }.
    [time] Type the time, for example { $example }.
    [temperature] Type the temperature, for example { $example }.
    [specific_gravity] Type the SG, for example { $example }.
   *[number] Type the number, for example { $example }.
}
not-a-number = { $quantity ->
    [weight] “{ $text }” cannot be read as a weight. Use figures, for example { $example }.
    [volume] “{ $text }” cannot be read as a volume. Use figures, for example { $example }.
    [surface] “{ $text }” cannot be read as an area. Use figures, for example { $example }.
    [length] “{ $text }” cannot be read as a length. Use figures, for example { $example }.
    [time] “{ $text }” cannot be read as a time. Use figures, for example { $example }.
    [temperature] “{ $text }” cannot be read as a temperature. Use figures, for example { $example }.
    [specific_gravity] “{ $text }” cannot be read as an SG. Use figures, for example { $example }.
   *[number] “{ $text }” cannot be read as a number. Use figures, for example { $example }.
}
# $unit: the letters that were typed.
unknown-unit = { $quantity ->
    [weight] “{ $unit }” is not a unit of weight. Write it like { $example }, or type figures only.
    [volume] “{ $unit }” is not a unit of volume. Write it like { $example }, or type figures only.
    [surface] “{ $unit }” is not a unit of area. Write it like { $example }, or type figures only.
    [length] “{ $unit }” is not a unit of length. Write it like { $example }, or type figures only.
    [time] “{ $unit }” is not a unit of time. Write it like { $example }, or type figures only.
    [temperature] “{ $unit }” is not a unit of temperature. Write it like { $example }, or type figures only.
    [specific_gravity] “{ $unit }” is not a unit laydown knows for SG. Write it like { $example }, or type figures only.
   *[number] “{ $unit }” is not a unit laydown knows for a number. Write it like { $example }, or type figures only.
}
us-or-imperial = A { $unit } is one size in the US and another in Britain. Write “us { $unit }” or “imp { $unit }”.
mixed-units = “{ $text }” mixes units. Write the larger unit first, and name each, for example 1 lb 2 oz.
two-marks = “{ $text }” has more than one decimal mark. Leave out the thousands mark.
# $whole: the number if the mark is one of thousands. $part: what stands before the mark. $mark: the decimal mark.
thousands-or-decimal = Is “{ $text }” { $whole }, or a little over { $part }? Write { $whole }, or use “{ $mark }” as the decimal mark.
space-in-number = “{ $text }” has a space inside a number. Write it without.
negative = { $quantity ->
    [weight] A weight cannot be below zero. Check the minus sign, or tare the scale again.
    [volume] A volume cannot be below zero. Check the minus sign.
    [surface] An area cannot be below zero. Check the minus sign.
    [length] A length cannot be below zero. Check the minus sign.
    [time] A time cannot be below zero. Check the minus sign.
    [temperature] A temperature cannot be below zero. Check the minus sign.
    [specific_gravity] An SG cannot be below zero. Check the minus sign.
   *[number] A number cannot be below zero. Check the minus sign.
}
too-large = { $quantity ->
    [weight] That weight is over the limit of 100 kg. Check the figure and the unit.
    [volume] That volume is over the limit of 1000 litres. Check the figure and the unit.
    [surface] That area is over the limit of 10 m². Check the figure and the unit.
    [length] That length is over the limit of 10 m. Check the figure and the unit.
    [time] That time is over the limit of 24 hours. Check the figure and the unit.
    [temperature] That temperature is over the limit of 1500 °C. Check the figure and the unit.
    [specific_gravity] That SG is over the limit of 2.2. Check the figure and the unit.
   *[number] That number is over the limit of 1 000 000 000. Check the figure and the unit.
}
no-temperature = No studio or kiln reaches { $degrees } °C. Check the figure and the unit.

## Specific gravity, laydown and powder density. $number: what was met.
no-heavier-than-water = SG { $number } is no heavier than water, and a glaze always is. Stir the bucket to the bottom and weigh again.
too-thin-for-glaze = SG { $number } is almost water: a glaze has 1.02 or more. Stir the bucket to the bottom and weigh again.
too-heavy-for-glaze = SG { $number } is heavier than any glaze that pours. Check the figure: 1450 g to the litre is 1.45.
very-thin-for-glaze = SG { $number } is very thin for a glaze. Stir the bucket to the bottom and check it again.
# $most: the most, of the same unit.
no-laydown = A laydown is between 0 and { $most } g per 100 cm², and { $number } g is not. Most start near 5.5.
no-powder-density = Powder density { $number } is not between 1.5 and 7. Most glazes are near 2.6.

## A bucket whose figures do not fit together.
# $density: that of the dry powder.
heavier-than-powder = SG { $number } is as heavy as the dry powder itself ({ $density }). Check the reading, and the powder density of this glaze.
no-fraction = The share of dry glaze must be between 0 and 1, and { $number } is not. Weigh the glaze wet and dry again.
nothing-to-mix = Powder and water must both weigh something. Weigh them again.
empty-vessel = The vessel weighs no more full than empty. Weigh it empty and dry, then full to its line.
too-unsure = This scale is too coarse for so little glaze. Use a finer scale, or weigh more of it.
no-volume = Give how much the vessel holds to its line.
water-temperature = Water at { $degrees } °C cannot be used to measure a vessel. Use water between 0 and 40 °C.

## A code that was stored and that this version does not know. $what: what it should have named.
unknown-code = “{ $code }” is not { $what ->
    [zone] a zone
    [verdict] a verdict
    [sensitivity] a sensitivity
    [shape] a shape
    [stage] a stage
    [thickness] a thickness
    [fault] a fault
    [cone] a cone
    [cone_kind] a kind of cone
    [reading] a reading
    [part] a part
    [side] a side
    [sureness] a sureness
    [mass_unit] a unit of mass
    [volume_unit] a unit of volume
    [area_unit] a unit of area
    [length_unit] a unit of length
    [decimal_mark] a decimal mark
    [rhythm] a rhythm of backups
    [firing_state] a state of a firing
   *[other] a code
} this version of laydown knows. Update laydown, then open the studio again.

## The code on a foot.
code-length = A piece's code has five or more characters. Check the foot again.
code-character = No code contains “{ $character }”. Check the foot again.
code-check = This code was misread or miswritten: its last character does not match the others. Check the foot again.
## A level, an amount of water and flow cup seconds that cannot be. $depth: a length. $water: a volume.
above-rim = That is above the rim: the bucket is { $depth } deep. Check the level, or the depth of the bucket.
more-water-than-there-is = There is only { $water } of water in this glaze. Check the figure, and how much glaze is in the bucket.
# $cup and $better: flow cups. $from and $to: seconds.
outside-cup = The { $cup } is made for { $from } to { $to } seconds. The { $better } would do; these seconds still compare this bucket with itself.
outside-every-cup = The { $cup } is made for { $from } to { $to } seconds. These still compare this bucket with itself.
