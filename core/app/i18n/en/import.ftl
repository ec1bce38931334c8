### Import: a potter's own spreadsheet, saved as CSV. A reading is a line of the sheet that can be imported. $cell is always text from the sheet, as it stands there.

intro = Check what laydown takes each column for, and change what is wrong. Nothing is saved until you import, and one undo removes it all.
take-in-nothing = Nothing to import
take-in = { $readings ->
    [one] Import { $readings } reading
   *[other] Import { $readings } readings
}

## What was found: sentences that follow each other.
found-but-open = { $lines ->
    [one] Found { $lines } line. Answer the questions first.
   *[other] Found { $lines } lines. Answer the questions first.
}
would-be-imported = { $readings ->
    [one] { $readings } reading would be imported.
   *[other] { $readings } readings would be imported.
}
nothing-would-be-imported = Nothing would be imported.
# Some of these readings say how they came out of the kiln.
with-results = { $readings ->
    [one] { $readings } of them says how it came out of the kiln.
   *[other] { $readings } of them say how they came out of the kiln.
}
here-already = { $lines ->
    [one] { $lines } line is here already.
   *[other] { $lines } lines are here already.
}
cannot-be-imported = { $lines ->
    [one] { $lines } line cannot be imported.
   *[other] { $lines } lines cannot be imported.
}
imported = { $readings ->
    [one] Imported: { $readings } reading.
   *[other] Imported: { $readings } readings.
}
left-out = { $lines ->
    [one] { $lines } line was left out.
   *[other] { $lines } lines were left out.
}

## What to mind.
# $sg: a specific gravity.
sg-assumed = { $readings ->
    [one] { $readings } reading has no SG in the sheet and no earlier check. SG { $sg } is assumed, and the verdict is only as good as that.
   *[other] { $readings } readings have no SG in the sheet and no earlier check. SG { $sg } is assumed, and the verdict is only as good as that.
}
# $least: a specific gravity.
sg-very-thin = { $readings ->
    [one] { $readings } reading has an SG under { $least }, which is very thin for a glaze. Check that it is the right column.
   *[other] { $readings } readings have an SG under { $least }, which is very thin for a glaze. Check that it is the right column.
}
# $buckets: names, with commas.
new-buckets = New buckets: { $buckets }.
# $more: how many others there are.
new-buckets-and-more = { $more ->
    [one] New buckets: { $buckets }, and { $more } more.
   *[other] New buckets: { $buckets }, and { $more } more.
}
read-as-windows = The file is not in UTF-8, so it was read as an older Windows file. Check that accented letters are right.

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
    [fired] day of the firing
    [cone] cone
    [result] thin, right or thick
    [faults] faults
    [liking] rating, 1 to 5
   *[nothing] leave out
}
# A column whose name the sheet does not give. $number: its place, from 1 on.
column-number = Column { $number }
column-empty = Empty

## What is asked.
ask-order = Date order
ask-order-help = Some dates can be read both ways: 3/11 is in March or in November.
# $order: a code.
date-order = { $order ->
    [month_first] Month, day, year
   *[day_first] Day, month, year
}
ask-decimal = Decimal mark
ask-decimal-help = 1,234 can mean a little over one, or more than a thousand.
ask-unit = Unit of weight
ask-unit-help = Used where neither the column nor the cell gives one.
# $unit: a code.
unit = { $unit ->
    [kg] Kilograms
    [oz] Ounces
    [lb] Pounds
   *[g] Grams
}
ask-form = Form, all lines
ask-glaze = Glaze, all lines
ask-zone = Zone, all lines
ask-cone = Cone, all firings
ask-kiln = Kiln
ask-scale = Scale
ask-scale-help = The one they were weighed on. The verdict depends on its step.
ask-form-name = Form “{ $cell }”
ask-glaze-name = Glaze “{ $cell }”
ask-name-help = { $lines ->
    [one] In { $lines } line. The studio has nothing with this name.
   *[other] In { $lines } lines. The studio has nothing with this name.
}
leave-lines-out = Leave these lines out
make-glaze = Add this glaze
make-glaze-help = With the usual values; correct them in Studio afterwards.

## What is still open.
# $role: what a column holds, as above.
two-columns = Two columns are set to { $role }. Leave one out.
no-date-column = No column is set to Date. Choose one.
no-weight-column = No column is set to Wet weight. Choose one, or one for the bare and one for the glazed piece.
no-form-column = No column is set to Form. Choose one, or one form for all lines.
no-glaze-column = No column is set to Glaze. Choose one, or one glaze for all lines.
no-zone-column = No column is set to Zone. Choose one, or one zone for all lines.
no-fired-column = No column is set to the day of the firing. Choose one, or leave the results out.
no-cone-column = No column is set to Cone. Choose one, or one cone for all firings.
no-kiln-yet = There is no kiln here yet. First add the one you fired in: Studio, Kilns.
no-scale-yet = There is no scale here yet. First add the one you weighed on: Studio, Scales.
say-order = Choose which comes first in the dates: the day or the month.
say-decimal = Choose the decimal mark of the weights: 1,234 can be read two ways.

## Why a line cannot be imported.
# $why: one of the sentences below.
line-error = Line { $line }: { $why }
more-line-errors = { $lines ->
    [one] And { $lines } more line.
   *[other] And { $lines } more lines.
}
more-cells = It has more cells than there are columns. Check for a comma in a number or a name that is not in quotation marks.
no-zone = It has no zone. Write inside, outside or both.
not-a-zone = “{ $cell }” is not a zone. Write inside, outside or both.
no-firing-date = It says how it came out, but not when it was fired. Give the day of the firing.
fired-before-glazed = It was fired before it was glazed. Check both dates.
no-cone = It has no cone. Write the cone it was fired to, such as 6 or 06.
not-a-cone = “{ $cell }” is not a cone. Write its number, such as 6 or 06.
not-a-result = “{ $cell }” is not a result. Write thin, right or thick.
not-a-fault = “{ $cell }” is not a fault that laydown knows. Write it as the screen after a firing does, or move it to the notes.
not-a-rating = “{ $cell }” is not a rating. Write a number from 1 to 5.
# Kept as a firing's note.
places-not-known = Imported from a spreadsheet. Where the pieces stood on the shelves is not known.
not-a-code = “{ $cell }” is not a laydown code. Set that column to Piece instead.
not-yes-or-no = “{ $cell }” is neither yes nor no, in the “control piece” column.
# $most: a whole number, 80 or more.
note-too-long = Its note is longer than { $most } characters. Shorten it.
name-too-long = The name “{ $cell }” is longer than { $most } characters. Shorten it.
no-date = It has no date.
a-formula = “{ $cell }” is a formula. Save the sheet with its result instead.
not-a-date = “{ $cell }” is not a date. Write it as 2026-11-25, for example.
not-a-time = “{ $cell }” is not a time of day. Write it as 14:30, for example.
still-to-come = { $cell } is in the future. Check the date.
too-long-ago = { $cell } is too long ago. You can import readings from 1970 on.
no-form = It has no form.
form-not-here = There is no form “{ $cell }” here. Add it first, or choose one above.
no-glaze = It has no glaze.
glaze-not-here = There is no glaze “{ $cell }” here. Add it first, or choose one above.
no-weight = It has no weight.
# $wet and $difference: weights.
weights-differ = Its wet weight is { $wet }, but glazed minus bare is { $difference }. Correct one of them.
# $aim, $low and $high: weights.
aim-outside = Its aim of { $aim } is not between { $low } and { $high }. Correct them, or leave these columns out.
not-a-verdict = “{ $cell }” is not a verdict. Write within, short, over or cannot tell, or leave that column out.
code-taken = The code { $code } is already on another piece, or this zone of it is already coated. Check the foot.
# $form: the potter's name of a form. $zone: a code.
no-area = { $zone ->
    [inside] “{ $form }” has no glazed area inside. Open it in Studio and give one.
    [outside] “{ $form }” has no glazed area outside. Open it in Studio and give one.
   *[whole] “{ $form }” has no glazed area inside and outside. Open it in Studio and give one.
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
no-file = This is not a file. Choose the spreadsheet, saved as CSV.
too-large = This file is larger than 20 MB, which is too large for a sheet of readings. Choose another file, or split it.
empty = This file is empty. Choose the spreadsheet, saved as CSV.
workbook = This spreadsheet is in its program’s own format. In that program choose Save as, CSV, and import that file.
no-text = This is not a text file. Save the spreadsheet as CSV, then choose it.
# $most: a whole number, such as 60.
too-many-columns = { $columns ->
    [one] This sheet has { $columns } column; the limit is { $most }. Save only those with readings.
   *[other] This sheet has { $columns } columns; the limit is { $most }. Save only those with readings.
}
# $most: a whole number, such as 100000.
too-many-lines = This sheet has more than { $most } lines. Split it into several files and import them one by one.
open-quote = Line { $line }: a quotation mark is opened and never closed. Close it or remove it, and save again.
no-lines = There are no readings below the first line. Choose another file.
