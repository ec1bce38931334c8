### The editor of a form: by its capacity, by points measured with calipers, by a photograph, or by areas calculated otherwise.

new = New form
title = Form
archive = Archive this form
name-hint = Breakfast mug
shape = Shape
shape-help = Pick the outline nearest to yours.

## What the form is known by

way = Measured by
way-capacity = Capacity
way-capacity-detail = Fill a bisque piece to the rim and weigh or measure the water. Quick, and a little rough.
way-points = Measured points
way-points-detail = A few widths taken with calipers, plus the wall and the foot. The most accurate.
way-photograph = Side photo
way-photograph-detail = From the side, level with its middle, against a plain background, with one known size.
way-one-measure = One measure
way-one-measure-detail = Its width, its height or its clay alone. The roughest, though for a plate its width is enough.
clay = Clay weight
clay-detail = The wet clay it is thrown of, before trimming and without its handle.
way-areas = Areas
way-areas-detail = If you know the glazed areas. Your measured areas take precedence.
capacity = Capacity to the rim
capacity-help = Of a bisque piece, not a fired one.
capacity-if-measured = Capacity to the rim, if measured
area-inside = Glazed area inside
area-outside = Glazed area outside
tile-has-no-profile = A tile has no profile. Choose “{ way-areas }” and give the area of its glazed face.

## Measured points

points = Outside profile
points-help = From the ground up: the height and the width wherever the outline bends, such as foot, belly, neck and rim.
# The head of a column. $unit: the symbol of a unit of length.
height-in = Height, { $unit }
# The head of a column: the width of the pot at that height. $unit: the symbol of a unit of length.
across-in = Width, { $unit }
# The head of a column: the thickness of the wall. $unit: the symbol of a unit of length.
wall-in = Wall, { $unit }
# $number: the number of a point in the table.
point-half-given = Point { $number }: give both its height and its width.
# $number: the number of a point in the table. $error: a whole sentence saying what is wrong with one of its figures.
point-error = Point { $number }: { $error }

## A photograph

photograph = Photo
photograph-help = Stand the piece in front of a plain wall or cloth, with its handle to one side. Hold the phone level, at half the height of the piece and an arm's length away.
take-photograph = Take a photo
choose-picture = Choose a picture
photograph-missing = Photo: take one, or choose a picture.
photograph-unreadable = This picture cannot be read. Take it again, or choose another.
photograph-too-large = This picture is larger than 64 MB. Take it again with the camera set to a smaller size.
known = Known size
known-height = Height
known-width = Width at the widest
known-width-detail = Without the handle.
known-length = Coin or ruler
known-length-detail = In the picture, upright or beside the piece, as far from the phone as the middle of the piece.
size = Size
camera-distance = Phone to piece
camera-distance-help = A rough figure is good enough.
# Said after the outline was found. $side: on which side of the picture the handle is. $sureness: a whole sentence saying how far the outline is to be trusted.
sureness-and-handle = { $side ->
    [left] { $sureness } The handle on the left is not counted: give its size below.
   *[right] { $sureness } The handle on the right is not counted: give its size below.
}

## What is known beside the outline

stage = When measured
stage-help = You glaze bisque, so other sizes are converted to it.
body = Body
body-not-said = Not given
add-body-first = Add its body in Studio first: its shrinkage gives the bisque size.
choose-body = Choose its body: its shrinkage gives the bisque size.
wall = Wall thickness
wall-help = The usual thickness; a point can have its own.
more = Foot, glaze lines, handle, weight
floor = Floor thickness
floor-help = In the middle.
foot-width = Foot ring width
foot-width-help = The clay only, on one side. Empty for a flat bottom.
foot-height = Foot ring height
bare-foot = Bare foot
bare-foot-help = How high above the ground the glaze begins.
overlap = Overlap
overlap-help = How far below the rim, outside, both glazes overlap. Empty for none.
fill = Fill line
fill-help = How far below the rim you fill it, if you want to know what it holds in use.
handle-length = Handle length
handle-girth = Handle girth
handle-girth-help = Wrap a strip of paper around it.
extra-area = Extra glazed area
extra-area-help = Knob, spout and the like.
bisque-weight = Bisque weight
bisque-weight-help = With its handle. It shows up a mistyped size.

## What follows from the measures

# $volume: what it holds.
holds = Holds { $volume } to the rim
# $volume: what it holds. $in-use: what it holds when it is filled to $depth below the rim.
holds-in-use = Holds { $volume } to the rim, { $in-use } when filled to { $depth } below it
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
targets-change-by-capacity = Targets based on capacity change by { $change }.
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
    [more] The measured capacity is { $percent } more than the points give. Check for a mistyped width or height.
   *[less] The measured capacity is { $percent } less than the points give. Check for a mistyped width or height.
}

## The drawing, for whoever listens to it

# $height, $width: lengths.
drawing = Cut open on the left, whole on the right: { $height } high, { $width } wide. Drag a point or a line; tap the wall to add a point.
drawing-of-photograph = Your photo with the outline that was found in it.
# $height: a length.
bare-foot-line = Glaze begins { $height } above the ground
# $depth: a length.
overlap-line = Both glazes overlap on the top { $depth }
no-overlap-line = No overlap
# $depth: a length.
fill-line = Filled to { $depth } below the rim
# $number: the number of the point. $height, $width: lengths.
point = Point { $number }: { $height } high, { $width } wide
mark-from = One end of the known length
mark-to = The other end

## Foot, lip and handle of a form known by its capacity

foot-lip-handle = Foot, lip, handle
# $usual: a length, such as "0.8 cm".
waxed-foot-help = How high above the ground the glaze begins, such as the edge of the wax. Empty for the usual { $usual }.
handle = Handle
handle-none = No handle
# $code: the stored code of a usual size.
handle-code = { $code ->
    [small] Cup handle
    [large] Large or jug handle
   *[usual] Mug handle
}
# $long and $around: lengths.
handle-size = { $long } long, { $around } around
handle-own = My own size
# $handle and $outside: areas.
handle-is = Handle: { $handle } of { $outside } outside
