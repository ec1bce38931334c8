### Import: a potter's own spreadsheet, saved as CSV. A reading is a line of the sheet that can be imported. $cell is always text from the sheet, as it stands there.

intro = See what each column is taken for, and change what is wrong. Nothing is kept before you take it in, and one step takes it all back.
take-in-nothing = Restore and import
take-in = { $readings ->
    [one] Take in { $readings } reading
   *[other] Take in { $readings } readings
}

## What was found: sentences that follow each other.
found-but-open = { $lines ->
    [one] { $lines } line is found. Something must be said first.
   *[other] { $lines } lines are found. Something must be said first.
}
would-be-imported = { $readings ->
    [one] { $readings } reading would be imported.
   *[other] { $readings } readings would be imported.
}
nothing-would-be-imported = Nothing would be imported.
here-already = { $lines ->
    [one] { $lines } line is here already.
   *[other] { $lines } lines are here already.
}
cannot-be-imported = { $lines ->
    [one] { $lines } line cannot be imported.
   *[other] { $lines } lines cannot be imported.
}
imported = { $readings ->
    [one] Restored: { $readings } reading.
   *[other] Restored: { $readings } readings.
}
left-out = { $lines ->
    [one] { $lines } line was left out.
   *[other] { $lines } lines were left out.
}

## What to mind.
# $sg: a specific gravity.
sg-assumed = { $readings ->
    [one] { $readings } reading has no SG in the sheet and no check from before: { $sg } is assumed, and the verdict is only as good as that.
   *[other] { $readings } readings have no SG in the sheet and no check from before: { $sg } is assumed, and the verdict is only as good as that.
}
# $least: a specific gravity.
sg-very-thin = { $readings ->
    [one] { $readings } reading has an SG under { $least }, which is very thin for a glaze. Look whether it is the right column.
   *[other] { $readings } readings have an SG under { $least }, which is very thin for a glaze. Look whether it is the right column.
}
# $buckets: names, with commas.
new-buckets = New buckets for them: { $buckets }.
# $more: how many others there are.
new-buckets-and-more = { $more ->
    [one] New buckets for them: { $buckets }, and { $more } more.
   *[other] New buckets for them: { $buckets }, and { $more } more.
}
read-as-windows = The file is not in UTF-8. It is read as older Windows programs write: look whether letters with accents are right.

## What a column holds: names in a list to choose from.
# $role: a code.
role = { $role ->
    [date] date
    [time] time of day
    [form] form
    [glaze] glaze
    [bucket] bucket
    [zone] zone
    [wet] wet weight
    [bare] bare piece
    [glazed] glazed piece
    [specific_gravity] SG
    [piece] piece
    [code] code on the foot
    [control] control piece, yes or no
    [note] note
    [aim] aim
    [low] least accepted
    [high] most accepted
    [verdict] verdict
   *[nothing] leave it out
}
# A column whose name the sheet does not give. $number: its place, from 1 on.
column-number = Column { $number }
column-empty = Empty

## What is asked.
ask-order = How are the dates written?
ask-order-help = Some dates can be read both ways: 3/11 is in March or in November.
# $order: a code.
date-order = { $order ->
    [month_first] Month, day, year
   *[day_first] Day, month, year
}
ask-decimal = Which decimal mark?
ask-decimal-help = 1,234 is little more than one, or more than a thousand.
ask-unit = Unit of the weights
ask-unit-help = Where neither the column nor the cell says one.
# $unit: a code.
unit = { $unit ->
    [kg] Kilograms
    [oz] Ounces
    [lb] Pounds
   *[g] Grams
}
ask-form = The form of them all
ask-glaze = The glaze of them all
ask-zone = The zone of them all
ask-scale = The scale they were weighed on
ask-scale-help = The verdict depends on how finely it reads.
ask-form-name = What form is “{ $cell }”?
ask-glaze-name = What glaze is “{ $cell }”?
ask-name-help = { $lines ->
    [one] In { $lines } line. It is not here under this name.
   *[other] In { $lines } lines. It is not here under this name.
}
leave-lines-out = Leave these lines out
make-glaze = Make this glaze
make-glaze-help = As glazes usually are; set it right in Studio afterwards.

## What is still open.
# $role: what a column holds, as above.
two-columns = Two columns are set to { $role }. Leave one out.
no-date-column = No column is set to Date. Choose one.
no-weight-column = No column is set to Wet weight. Choose one, or one for the bare and one for the glazed piece.
no-form-column = No column is set to Form. Choose one, or one form for all lines.
no-glaze-column = No column is set to Glaze. Choose one, or one glaze for all lines.
no-zone-column = No column is set to Zone. Choose one, or one zone for all lines.
no-scale-yet = There is no scale here yet. Add the one you weighed on first: Studio, Scales.
say-order = Say which comes first in the dates: the day or the month.
say-decimal = Say which decimal mark the weights have: 1,234 may be little or much.

## Why a line cannot be imported.
# $why: one of the sentences below.
line-error = Line { $line }: { $why }
more-line-errors = { $lines ->
    [one] And { $lines } line more.
   *[other] And { $lines } lines more.
}
more-cells = It has more cells than there are columns. Is a comma in a number or a name not in quotation marks?
no-zone = It does not say which zone. Write inside, outside or both.
not-a-zone = “{ $cell }” is no zone. Write inside, outside or both.
not-a-code = “{ $cell }” is no code of laydown’s. Take that column for the piece instead.
not-yes-or-no = “{ $cell }” is neither yes nor no, under “control piece”.
# $most: a whole number, 80 or more.
note-too-long = Its note is longer than { $most } letters. Shorten it.
name-too-long = The name “{ $cell }” is longer than { $most } letters. Shorten it.
no-date = It has no date.
a-formula = “{ $cell }” is a formula. Save the sheet with what it comes to.
not-a-date = “{ $cell }” is no date. Write it as 2026-11-25, for example.
not-a-time = “{ $cell }” is no time of day. Write it as 14:30, for example.
still-to-come = { $cell } is still to come. Look at the date.
too-long-ago = { $cell } is too long ago: readings from 1970 on can be imported.
no-form = It does not say which form.
form-not-here = There is no form “{ $cell }” here. Add it first, or choose above what it is.
no-glaze = It does not say which glaze.
glaze-not-here = There is no glaze “{ $cell }” here. Add it first, or choose above what it is.
no-weight = It has no weight.
# $wet and $difference: weights.
weights-differ = Its wet weight is { $wet }, but glazed less bare is { $difference }. Correct one of them.
# $aim, $low and $high: weights.
aim-outside = Its aim of { $aim } does not lie between { $low } and { $high }. Correct them, or leave these columns out.
not-a-verdict = “{ $cell }” is no verdict. Write within, short, over or cannot tell, or leave that column out.
code-taken = The code { $code } is on another piece already, or this zone of it is coated. Look at the foot again.
# $form: the potter's name of a form. $zone: a code.
no-area = { $zone ->
    [inside] “{ $form }” has no area inside to judge by. Open it in Studio and give one.
    [outside] “{ $form }” has no area outside to judge by. Open it in Studio and give one.
   *[whole] “{ $form }” has no area inside and outside to judge by. Open it in Studio and give one.
}
no-scale = There is no scale here yet.

## What is made of a line.
# Goes into the note of a coat. $piece: what the sheet calls the piece.
piece-in-note = Piece { $piece }
piece-and-note = Piece { $piece }. { $note }
# The name of a bucket that is made for readings whose bucket nobody named.
bucket-name = From the spreadsheet

## Why a file is no sheet.
# $details: what the phone's system says, in English.
unreadable = This file cannot be read: { $details }. Choose it again.
gone = File not found. Choose it again.
no-file = This is no file. Choose the spreadsheet, saved as CSV.
too-large = This file is larger than 20 MB, which no sheet of readings is. Choose another file, or split it.
empty = This file is empty. Choose the spreadsheet, saved as CSV.
workbook = This is the spreadsheet in its program’s own format. In that program choose Save as, CSV, and import that file.
no-text = This is no text: a picture perhaps, or another program’s file. Save the spreadsheet as CSV, then choose it.
# $most: a whole number, such as 60.
too-many-columns = { $columns ->
    [one] This sheet has { $columns } column, and { $most } are read at most. Save only those with readings.
   *[other] This sheet has { $columns } columns, and { $most } are read at most. Save only those with readings.
}
# $most: a whole number, such as 100000.
too-many-lines = This sheet has more than { $most } lines. Split it into several files and import them one by one.
open-quote = Line { $line }: A quotation mark is opened and not closed, so that nothing after it can be told apart. Close it, or take it out, and save again.
no-lines = There are no readings below the first line. Choose another file.
