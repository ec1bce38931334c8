### The Findings screen: what fired pots say about each glaze, beside what targets rest on today.

# While nothing is known of any glaze.
how-to-begin = Weigh the coats, fire the pots, then look at each on its firing's page and tap thin, right or thick. Eight pots of a glaze make a first finding.
amount-only = This is about the amount only. Whether a surface is fit for food or drink, only a laboratory test tells.
# $coats, $pots: whole numbers.
only-the-newest = { $coats ->
    [one] From the newest { $coats } coats of the studio, and of each glaze from its newest { $pots } fired pots at most; older ones are left out.
   *[other] From the newest { $coats } coats of the studio, and of each glaze from its newest { $pots } fired pots at most; older ones are left out.
}
no-coat = No coat weighed yet.
none-looked-at = { $coats ->
    [one] { $coats } coat weighed, none looked at after its firing yet.
   *[other] { $coats } coats weighed, none looked at after its firing yet.
}
# A glaze's line in the list. $scope: which pots, such as "Cone 6, inside". $finding: what they say, from "What pots say" below, with $place "after_colon".
scope-and-finding = { $scope }: { $finding }

## Taking the best over as the starting value. Amounts are laydowns with their unit

no-best = There is no best amount to start from yet.
# $glaze: the glaze's name.
now-starts-from = { $glaze } now starts from { $best }.
start-from = Start from { $best }
start-from-help = For every form and zone of this glaze that has no control piece and no test tile. Now it starts from { $now }.

## Where targets rest on what lies outside the window. Amounts are laydowns with their unit

controls-outside-window = { $zone ->
    [inside] Inside: your control pieces lie at { $average }, outside the window. Make a pot near { $best } a control piece.
    [outside] Outside: your control pieces lie at { $average }, outside the window. Make a pot near { $best } a control piece.
   *[whole] Inside and outside: your control pieces lie at { $average }, outside the window. Make a pot near { $best } a control piece.
}
tiles-outside-window = { $zone ->
    [inside] Inside: your test tiles lie at { $average }, outside the window. Make a pot near { $best } a control piece.
    [outside] Outside: your test tiles lie at { $average }, outside the window. Make a pot near { $best } a control piece.
   *[whole] Inside and outside: your test tiles lie at { $average }, outside the window. Make a pot near { $best } a control piece.
}

## Which pots: items of a list such as "Cones 5 and 6 together, inside, stoneware"; its first letter is made a capital

one-cone = cone { $cone }
# $cones: such as "5, 6 and 7".
cones-together = cones { $cones } together
# $zones: such as "inside and outside".
zones-together = { $zones } together
no-body = no body named
bodies-together = { $bodies ->
    [one] { $bodies } bodies together
   *[other] { $bodies } bodies together
}

## What pots say. $place: "alone" where the sentence begins a line, "after_colon" where it follows a colon. $range: one laydown with its unit, or "5.1 to 6.4 g per 100 cm²". $from, $to: laydowns with their unit

# $looks: such as "2 thin, 3 right". $enough: a whole number.
too-few = { $place ->
    [after_colon] too few to say: { $pots ->
        [one] { $pots } pot so far, { $looks }. { $enough } make a first finding.
       *[other] { $pots } pots so far, { $looks }. { $enough } make a first finding.
    }
   *[alone] Too few to say: { $pots ->
        [one] { $pots } pot so far, { $looks }. { $enough } make a first finding.
       *[other] { $pots } pots so far, { $looks }. { $enough } make a first finding.
    }
}
# "try-more" or "try-less" may follow.
none-right = { $place ->
    [after_colon] none of { $pots ->
        [one] { $pots } pot came out right, from { $range }: { $looks }.
       *[other] { $pots } pots came out right, from { $range }: { $looks }.
    }
   *[alone] None of { $pots ->
        [one] { $pots } pot came out right, from { $range }: { $looks }.
       *[other] { $pots } pots came out right, from { $range }: { $looks }.
    }
}
try-more = Try more.
try-less = Try less.
mixed = { $place ->
    [after_colon] results overlap, from { $range }, { $pots ->
        [one] { $pots } pot. The amount alone does not decide here: check the bucket's SG, the firing and the place in the kiln.
       *[other] { $pots } pots. The amount alone does not decide here: check the bucket's SG, the firing and the place in the kiln.
    }
   *[alone] Results overlap, from { $range }, { $pots ->
        [one] { $pots } pot. The amount alone does not decide here: check the bucket's SG, the firing and the place in the kiln.
       *[other] { $pots } pots. The amount alone does not decide here: check the bucket's SG, the firing and the place in the kiln.
    }
}
# $from: without its unit, which $to has.
window = { $place ->
    [after_colon] right between { $from } and { $to }, from { $pots ->
        [one] { $pots } pot. Below it went thin, above it thick.
       *[other] { $pots } pots. Below it went thin, above it thick.
    }
   *[alone] Right between { $from } and { $to }, from { $pots ->
        [one] { $pots } pot. Below it went thin, above it thick.
       *[other] { $pots } pots. Below it went thin, above it thick.
    }
}
window-upwards = { $place ->
    [after_colon] right from { $from } up, from { $pots ->
        [one] { $pots } pot. Below it went thin; how much is too much is not known yet.
       *[other] { $pots } pots. Below it went thin; how much is too much is not known yet.
    }
   *[alone] Right from { $from } up, from { $pots ->
        [one] { $pots } pot. Below it went thin; how much is too much is not known yet.
       *[other] { $pots } pots. Below it went thin; how much is too much is not known yet.
    }
}
window-downwards = { $place ->
    [after_colon] right up to { $to }, from { $pots ->
        [one] { $pots } pot. Above it went thick; how little is too little is not known yet.
       *[other] { $pots } pots. Above it went thick; how little is too little is not known yet.
    }
   *[alone] Right up to { $to }, from { $pots ->
        [one] { $pots } pot. Above it went thick; how little is too little is not known yet.
       *[other] { $pots } pots. Above it went thick; how little is too little is not known yet.
    }
}
all-right = { $place ->
    [after_colon] all { $pots ->
        [one] { $pots } pots came out right, from { $range }. How much less or more would do is not known yet.
       *[other] { $pots } pots came out right, from { $range }. How much less or more would do is not known yet.
    }
   *[alone] All { $pots ->
        [one] { $pots } pots came out right, from { $range }. How much less or more would do is not known yet.
       *[other] { $pots } pots came out right, from { $range }. How much less or more would do is not known yet.
    }
}
# Begins with a number, so that $place is not needed.
most-right = { $pots ->
    [one] { $right } of { $pots } pots came out right, from { $range }. How much less or more would do is not known yet.
   *[other] { $right } of { $pots } pots came out right, from { $range }. How much less or more would do is not known yet.
}
# Items of a list such as "2 thin, 3 right".
looks = { $thickness ->
    [thin] { $pots ->
        [one] { $pots } thin
       *[other] { $pots } thin
    }
    [thick] { $pots ->
        [one] { $pots } thick
       *[other] { $pots } thick
    }
   *[right] { $pots ->
        [one] { $pots } right
       *[other] { $pots } right
    }
}
# $from: without its unit, which $to has.
range = { $from } to { $to }
# $low: without its unit, which $best and $high have. $sure: a whole number.
best-near = Best near { $best }, most likely between { $low } and { $high }. In the window at least { $sure } of 100 pots should come out right.

## The chart of pots by laydown, and its legend. $amount: a laydown without its unit

came-out = { $thickness ->
    [thin] Came out thin
    [thick] Came out thick
   *[right] Came out right
}
the-window = The window
best-amount = Best, { $amount }
aimed-at-today = Aimed at today, { $amount }
# Such as "Laydown, g per 100 cm²".
laydown-axis = Laydown, { $unit }
# Items of a list joined with semicolons, for who listens rather than looks.
looks-at = { $thickness ->
    [thin] { $pots ->
        [one] { $pots } thin at { $range }
       *[other] { $pots } thin at { $range }
    }
    [thick] { $pots ->
        [one] { $pots } thick at { $range }
       *[other] { $pots } thick at { $range }
    }
   *[right] { $pots ->
        [one] { $pots } right at { $range }
       *[other] { $pots } right at { $range }
    }
}
# The chart in words. $finding: a sentence or two. $looks: such as "2 thin at 4.1 to 4.6 g per 100 cm²; 5 right at 5.2 to 6.0 g per 100 cm²". $aim: a laydown with its unit.
chart-words = { $scope }. { $finding } { $looks }. Aimed at today: { $aim }.

## The faults. One of the sentences "more-…" may follow

faults-by-side = { $below } of { $all-below } below the window, { $within } of { $all-within } within, { $above } of { $all-above } above.
faults-of-all = { $pots ->
    [one] { $pots-with } of { $pots } pots.
   *[other] { $pots-with } of { $pots } pots.
}
more-with-less = More often with less glaze.
more-within = More often within than outside.
more-with-more = More often with more glaze.

## What targets of one zone rest on. $laydown: with its unit

rests-on-controls = { $pieces ->
    [one] { $pieces } control piece, { $laydown }
   *[other] { $pieces } control pieces, { $laydown } on average
}
rests-on-tiles = { $tiles ->
    [one] { $tiles } test tile, { $laydown }
   *[other] { $tiles } test tiles, { $laydown } on average
}
rests-on-start = No control piece and no tile yet: the starting value, { $laydown }

## The chart of coats against their aims

aims-title = Coats against their aims
aims-axis = { $coats ->
    [one] The last { $coats } coats
   *[other] The last { $coats } coats
}
# On the axis: as much as was aimed at.
aim = Aim
a-coat = A coat
far-off = Far off the others
moving-average = Moving average
the-aim = The aim
within-limits = While the average lies here, coats keep to the aim
aims-on = { $coats ->
    [one] The last { $coats } coats lie on the aim on average.
   *[other] The last { $coats } coats lie on the aim on average.
}
# $percent: such as "7%".
aims-over = { $coats ->
    [one] The last { $coats } coats lie { $percent } over the aim on average.
   *[other] The last { $coats } coats lie { $percent } over the aim on average.
}
aims-short = { $coats ->
    [one] The last { $coats } coats lie { $percent } short of the aim on average.
   *[other] The last { $coats } coats lie { $percent } short of the aim on average.
}
aims-steady = They keep to the aim.
aims-rising = They have begun to run over: check the bucket's SG, and how long the pieces are dipped.
aims-falling = They have begun to run short: check the bucket's SG, and whether the bisque is damp.
aims-outside = { $coats ->
    [one] One lies far off the others.
   *[other] { $coats } lie far off the others.
}

## The last set of equal pieces

# $form: the form's name.
last-set = { $zone ->
    [inside] Last set: { $form }, inside
    [outside] Last set: { $form }, outside
   *[whole] Last set: { $form }, inside and outside
}
# $when: such as "yesterday" or "5 days ago". $mean, $most: weights. $least: a weight without its unit. $spread: such as "2.1%".
last-set-weights = { $pieces ->
    [one] { $pieces } piece, { $when }: { $mean } wet on average, from { $least } to { $most }, spread { $spread } of that.
   *[other] { $pieces } pieces, { $when }: { $mean } wet on average, from { $least } to { $most }, spread { $spread } of that.
}
