### The Weigh screen: how much this piece should take, and what the scale says.

## What is there and what is missing.
add-to-weigh = Add a form, a glaze and a scale first. Then you can weigh a piece.
# $form: the potter's name of a form.
no-area-to-glaze = { $form } has no area to glaze. Open it in Studio and give one.
form = A form
form-help = A shape you throw again and again, and how much it holds.
glaze = A glaze
glaze-help = Its name, how sensitive it is to thickness, and the bucket's SG.
scale = A scale
scale-help = Its capacity and its step.

## The fields the keypad fills.
net = Coat, after tare
bare = Bare piece
glazed = Glazed piece
seconds = Dip or pour
seconds-unit = s

# Beside the aim. $span: weights such as "18.0 to 20.8 g".
right-is = Target: { $span }
may-be = May be { $span }
# While a reading is being typed. $example: a weight with all its digits.
every-digit = Type every digit the scale shows, such as { $example }.

## A reading that is probably a slip. $weight, $bare, $wet and $aim: weights.
did-you-mean = Did you mean { $weight }?
wrong-way-round = The piece weighs less glazed than bare. Are the two weights the wrong way round?
exchange = Swap them
tare-forgotten = { $weight } is about a bare piece ({ $bare }) and its coat. Was the tare forgotten?
weigh-two = Enter the bare weight too
twice-the-aim = { $weight } is twice the aim of { $aim }. Is it both coats together, or a tare that was forgotten?
dry-already = { $weight } is what { $wet } weighs once the water has gone. Is it dry already?
far-off = { $weight } is far from the aim of { $aim }. Is it right?
# $scale: the potter's name.
other-scale = { $scale } cannot show this weight. Which scale did you use?
it-is-right = It is right
it-is-wet = No, it is wet

# The bucket in use. $glaze and $bucket: the potter's names.
glaze-and-bucket = { $glaze }, { $bucket }
# $tolerance: a percentage. $glaze: the potter's name. $sensitivity: a code: low, medium or high.
tolerance = ±{ $tolerance } is accepted: { $glaze } is set to “{ $sensitivity ->
    [low] forgiving
    [high] sensitive
   *[medium] normal
}”.

## What else should be known. $bucket and $glaze: the potter's names. $sg: a specific gravity. $when: how long ago.
no-sg-yet = { $bucket } has no SG yet: { $sg } is assumed, and the target is only as good as that. Check the bucket.
old-sg = SG was checked { $when }. Stir and check the bucket: glaze thickens and settles.
# $count: how many test tiles of this glaze an earlier version saved without asking how they came out.
tiles-not-asked = { $count ->
    [one] A test tile of this glaze does not count yet: say in Studio how it came out of the kiln.
   *[other] { $count } test tiles of this glaze do not count yet: say in Studio how they came out of the kiln.
}
# The target of one dip over inside and outside rests on other control pieces than those of the sides. $sides, $dip: weights.
sides-differ = Inside and outside take { $sides } by their own control pieces, but one dip takes { $dip } by its own. Unmark the control piece that is wrong.
# $density: the usual density of a glaze's powder.
impossible-density = The powder density of { $glaze } is impossible, so laydown uses { $density }. Correct it in the glaze.

## After a coat is saved.
next-inside = Inside of this piece
next-outside = Outside of this piece
# $form: the potter's name. $zone: the name of a zone. $wet: a weight. $verdict: the verdict in a word.
saved = Saved: { $form }, { $zone }, { $wet }, { $verdict }.
# $code: to be written on the foot of the piece, in what survives the firing.
saved-with-code = Saved: { $form }, { $zone }, { $wet }, { $verdict }. Mark { $code } on the foot in iron or cobalt wash or underglaze pencil: plain pencil burns off.
saved-on-piece = Saved: { $form } { $code }, { $zone }, { $wet }, { $verdict }.

## The coats saved lately.
some-form = Unknown form
nothing-today = Nothing weighed today.
# $within: how many of them came out within.
today = { $coats ->
    [one] 1 coat today, { $within } within.
   *[other] { $coats } coats today, { $within } within.
}

## Coming back to a piece that has a coat. $piece: the code on its foot, or "This piece". $zone: the name of a zone. $ago: how long ago.
# On a narrow button: what is glazed next of which piece.
zone-of-piece = { $zone }, { $piece }
zone-of-same-piece = { $zone }, same piece
this-piece = This piece
wall-is-wet = { $piece } was glazed { $zone } { $ago }. Its wall is still wet and takes less glaze: let it dry first.
wall-may-be-damp = { $piece } was glazed { $zone } { $ago }. Its wall may still be damp and take less glaze: let it dry first.
glazed-before = { $piece } was glazed { $zone } { $ago }.
insides-waiting = Insides waiting for outsides
other-unfired = Other unfired pieces
new-piece = New piece
nothing-unfired = No unfired piece has a coat.
# $code: the code on a foot.
no-piece-with-code = No piece has the code { $code }. Check what is on the foot.
# $form: the potter's name. $code: the code on a foot.
form-and-code = { $form }, { $code }
its-coat-was-undone = Its coat was undone
# $glazes: glazes and zones, such as "Ash white inside".
glazes-and-ago = { $glazes }, { $ago }
weigh-again = Weigh it again
# $code: the code on a foot.
weigh-code-again = Weigh { $code } again
# $laydown: dry glaze on an area.
already-carries = { $coats ->
    [one] This zone already has a coat: { $laydown }.
   *[other] This zone already has { $coats } coats: { $laydown } in all.
}
with-this-coat = With this coat it carries { $laydown }.
# $hand: a name.
glazed-by = Glazed by { $hand }. Change it in Studio, under Units, sound and touch.
# How long to dip or pour. $time, $from, $to: seconds.
dip-hint = { $dips ->
    [one] About { $time } s for this aim, { $from } to { $to }: from { $dips } coat of this bucket. The scale decides.
   *[other] About { $time } s for this aim, { $from } to { $to }: from { $dips } coats of this bucket. The scale decides.
}
