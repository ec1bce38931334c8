### The Buckets screen and the page of a bucket.

no-bucket = No buckets yet. Add a glaze: its first bucket comes with it.
stir-and-check = Stir to the bottom and check the SG before the next pots.
sg-not-checked = SG not checked

## Since when. $when: how long ago.
checked-and-coats = { $coats ->
    [one] Checked { $when }, 1 coat since
   *[other] Checked { $when }, { $coats } coats since
}
coats-so-far = { $coats ->
    [one] 1 coat so far
   *[other] { $coats } coats so far
}

## What the glaze is made of, labels.
powder-by-weight = Powder by weight
dry-in-litre = Dry glaze per litre
dry-in-bucket = Dry glaze in bucket

# The time in which a cup of glaze runs out. $seconds: a number.
flow = { $seconds } s in the flow cup
# $seconds: a number. $cup: the name of a flow cup.
flow-in = { $seconds } s, { $cup }
volume = In the bucket now
expected-sg = SG to expect today
check-due = Next check
now = Now
in-days = { $days ->
    [one] In { $days } day
   *[other] In { $days } days
}
evaporation = Evaporation
# $volume: a volume.
each-open-day = { $volume } each day it is open
pieces = { $pieces ->
    [one] { $pieces } more piece
   *[other] About { $pieces } more pieces
}
changed-since = Water or dry glaze went in or out since the last check. Check the SG before the next pots.
# $what: what was done. $amount: how much.
entry = { $what }: { $amount }
