### Finding pieces again: by the code on the foot, or by form, glaze, fault, firing, date and laydown.

none-like-that = No piece matches. Remove a filter.
none-with-code = No piece has this code.
# More come as one scrolls. $shown: how many are listed.
first-of-more = { $shown ->
    [one] The { $shown } glazed last. Scroll for more.
   *[other] The { $shown } glazed last. Scroll for more.
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
any-time = Any time
laydown = Laydown
any-laydown = Any laydown
came-out = Came out
any-answer = However it came out
# How a zone came out. $answer: a code.
answer = { $answer ->
    [thin] Thin somewhere
    [right] Right somewhere
   *[thick] Thick somewhere
}
liking = Rating
any-liking = Any rating, or none
# $stars: 1 to 5.
stars = { $stars } of 5
control = Control piece
any-control = Control pieces and others
only-control = Control pieces only
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
laydown-from = { $from } or more
