### Finding pieces again: by the code on the foot, or by form, glaze, fault, firing, date and laydown.

none-like-that = No piece is like that. Ask for less.
none-with-code = No piece here has this code.
too-many = { $shown ->
    [one] The { $shown } glazed last. Ask for more to see fewer.
   *[other] The { $shown } glazed last. Ask for more to see fewer.
}

## What one can look by, and what stands there while nothing is chosen

form = Form
any-form = Any form
glaze = Glaze
any-glaze = Any glaze
fault = Fault
any-fault = With or without faults
firing = Firing
any-firing = Any firing, or none
glazed = Glazed
any-time = At any time
laydown = Laydown
any-laydown = However thick
# When a piece was glazed.
glazed-when = { $when ->
    [month] In the last 30 days
    [year] In the last 365 days
   *[before] Longer ago
}
# A range of laydowns. $to: with its unit, such as "6.0 g per 100 cm²". $from: a number without it.
laydown-between = { $from } to { $to }
laydown-under = Under { $to }
# $from: with its unit.
laydown-from = From { $from } on
