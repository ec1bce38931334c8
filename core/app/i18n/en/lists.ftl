### The rows of lists, and things one after another.

# $before: one thing, or several with commas. $last: the last.
and = { $before } and { $last }

## What a row says of a form.
size-impossible = size impossible
# $area: an area with its unit.
inside-area = inside { $area }

## What a row says of a bucket. $bucket: its name. $sg: its specific gravity. $when: how long ago.
bucket-checked = { $bucket }, SG { $sg }, checked { $when }
bucket-not-checked = { $bucket }, SG not checked

# What a row says of a scale. $capacity: the most it weighs. $step: the step of its display.
scale = to { $capacity }, step { $step }
