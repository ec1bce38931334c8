### The editor of a form: by its capacity, by points measured with calipers, by a photograph, or by areas calculated otherwise.

new = New form
title = Form
archive = Archive this form
name-hint = Breakfast mug
shape = Shape
shape-help = The outline nearest to yours.

## What the form is known by

way = Known by
way-capacity = Capacity
way-capacity-detail = Fill the bisque piece to the rim and weigh or measure the water. Quick, and a little rough.
way-points = Measured points
way-points-detail = A few widths taken with calipers, the wall, the foot. The surest.
way-photograph = A photograph
way-photograph-detail = From the side, level with its middle, before a plain ground, with one size known.
way-areas = Areas
way-areas-detail = If you know the glazed areas: your measured areas take precedence.
capacity = Capacity to the rim
capacity-help = Of the bisque piece, not of the fired one.
capacity-if-measured = Capacity to the rim, if measured
area-inside = Area inside
area-outside = Area outside, as far as it is glazed
tile-has-no-profile = A tile has no profile. Choose “{ way-areas }” and give the area of its glazed face.

## Measured points

points = Outside, from the ground up
points-help = Height above the ground and width across, where the outline bends: foot, belly, neck, rim.
# The head of a column. $unit: the symbol of a unit of length.
height-in = Height, { $unit }
# The head of a column: the width of the pot at that height. $unit: the symbol of a unit of length.
across-in = Across, { $unit }
# The head of a column: the thickness of the wall. $unit: the symbol of a unit of length.
wall-in = Wall, { $unit }
# $number: the number of a point in the table.
point-half-given = Point { $number }: give both its height above the ground and its width across.
# $number: the number of a point in the table. $error: a whole sentence saying what is wrong with one of its figures.
point-error = Point { $number }: { $error }

## A photograph

photograph = Photograph
photograph-help = Stand the piece before a plain wall or cloth, its handle to one side. Hold the phone level, at half the height of the piece, an arm's length away.
take-photograph = Take the photograph
choose-picture = Choose a picture
photograph-missing = Photograph: take one, or choose a picture.
photograph-unreadable = This picture cannot be read. Take it again, or choose another.
photograph-too-large = This picture is larger than 64 MB. Take it again with the camera set to a smaller size.
known = What do you know of it?
known-height = Its height
known-width = Its width at the widest
known-width-detail = Without the handle.
known-length = A coin or a ruler in the picture
known-length-detail = It must stand upright or lie beside the piece, as far from the phone as the middle of the piece.
size = How much is that?
camera-distance = From the phone to the piece
camera-distance-help = About is good enough.
# Said after the outline was found. $side: on which side of the picture the handle is. $sureness: a whole sentence saying how far the outline is to be trusted.
sureness-and-handle = { $side ->
    [left] { $sureness } The handle on the left is left out: give its size below.
   *[right] { $sureness } The handle on the right is left out: give its size below.
}

## What is known beside the outline

stage = Measured when
stage-help = Glaze goes onto bisque: other sizes are converted to it.
body = Body
body-not-said = Not said
add-body-first = Add its body under Studio first: how it shrinks says how large it was as bisque.
choose-body = Choose its body: how it shrinks says how large it was as bisque.
wall = Wall
wall-help = Its usual thickness; a point may have its own.
more = Foot, glaze lines, handle, weight
floor = Floor, in the middle
foot-width = Foot ring, width of the clay
foot-width-help = Empty for a flat bottom.
foot-height = Foot ring, height
bare-foot = Bare foot
bare-foot-help = The height above the ground at which the glaze begins.
overlap = Overlap below the rim
overlap-help = How far down, outside, both glazes lie on each other. Empty for none.
fill = Filled to, below the rim
fill-help = Where the drink ends, if you want to know what it holds in use.
handle-length = Handle, length along it
handle-girth = Handle, girth
handle-girth-help = A strip of paper around it.
extra-area = Knob, spout and the like, area
bisque-weight = Weight of a bisque piece
bisque-weight-help = With its handle. It shows whether a size was mistyped.

## What follows from the measures

# $volume: what it holds.
holds = Holds { $volume } to the rim
# $volume: what it holds. $in-use: what it holds when it is filled to $depth below the rim.
holds-in-use = Holds { $volume } to the rim, { $in-use } filled to { $depth } below it
# $zone: the stored code of what takes one coat; whole: inside and outside. $percent: how far the area may be out.
zone-area = { $zone ->
    [inside] Inside: { $area }, give or take { $percent }
    [outside] Outside: { $area }, give or take { $percent }
   *[whole] Inside and outside: { $area }, give or take { $percent }
}
# Another size changes targets. $change: a percentage with its sign, such as "+12%".
targets-change = Targets of this form from other forms change by { $change }.
targets-of-zone-change = { $zone ->
    [inside] Inside, targets of this form from other forms change by { $change }.
    [outside] Outside, targets of this form from other forms change by { $change }.
   *[whole] Inside and outside together, targets of this form from other forms change by { $change }.
}
targets-change-by-capacity = Targets that go by what each form holds change by { $change }.
own-targets-stay = Its own control pieces keep their grams. If you now make it in another size, add a new form.
# An item of the list in parts. $part: the stored code of a part of the form's surface.
part-area = { $part ->
    [foot] bare foot { $area }
    [outside_wall] outside wall { $area }
    [overlap_band] overlap band { $area }
    [rim] rim { $area }
    [inside_wall] inside walls { $area }
   *[inside_floor] inside floor { $area }
}
# $parts: a list of part-area.
parts = { $parts }.
# $difference: whether the measured capacity is more or less. $percent: by how much.
capacities-differ = { $difference ->
    [more] The measured capacity is { $percent } more than the points give. Look for a mistyped width or height.
   *[less] The measured capacity is { $percent } less than the points give. Look for a mistyped width or height.
}

## The drawing, for whoever listens to it

# $height, $width: lengths.
drawing = Cut open on the left, as it stands on the right: { $height } high, { $width } across. Drag a point or a line; tap the wall to add a point.
drawing-of-photograph = Your photograph with the outline that was found in it.
# $height: a length.
bare-foot-line = Glaze begins { $height } above the ground
# $depth: a length.
overlap-line = Both glazes lie on the upper { $depth }
no-overlap-line = Overlap band: none
# $depth: a length.
fill-line = Filled to { $depth } below the rim
# $number: the number of the point. $height, $width: lengths.
point = Point { $number }: { $height } high, { $width } across
mark-from = One end of what you know the length of
mark-to = The other end
