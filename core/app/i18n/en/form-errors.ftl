### Why a form, its profile, a clay's shrinkage or an outline from a photograph cannot be.

## A form.
no-size = Give what the form holds to the rim, or its measured outline, or its glazed areas.
capacity = A form holds from 5 ml to 100 litres, and { $millilitres } ml is outside that. Check the figure and the unit.
area = A glazed surface is from 1 cm² to 5 m², and { $square_centimetres } cm² is outside that. Check the figure and the unit.
one-measure = A pot of this shape and size would hold about { $millilitres } ml. Check the figure and the unit.
holds-nothing = A tile holds nothing. Give the area of its glazed face.
height-of-plate = A plate's height does not tell its size. Give its width.

## Its profile. $point: the number of a point, counted from the ground up.
too-few-points = A profile needs at least three points: the foot, the widest point and the rim.
too-many-points = That is more than { $most } points. Keep only those where the outline bends.
out-of-reach = Point { $point } is not a possible size for a pot: at most 1.5 m high and 1.5 m wide. Check the figures and the unit.
same-height = Points { $first } and { $second } are at the same height. Correct one; for a ledge, put one end half a millimetre higher.
crosses = The outline crosses itself near point { $point }. Check that the points follow the wall from the ground up.
no-wall = The wall must have some thickness. Measure it at the rim, or cut an old piece open.
wall-too-thick = At point { $point } the wall is thicker than the pot is wide there. Check the wall and the width.
floor = The floor and the foot ring are higher than the pot. Check the floor, the ring and the unit.
foot-ring = The foot ring is wider than the foot. Check its width: count the clay only, on one side.
no-weight = The weight and the density of bisque must be above zero. Check both figures.
nothing-to-glaze = The bare foot reaches the rim, so nothing outside is glazed. Check the height at which the glaze begins.

## A clay.
shrinkage = Clay shrinks 0 to 30% from thrown to fired, and at least as much as at bisque. Check both figures: each is measured from the thrown size.

## A photograph that an outline is taken from. The piece is the pot, the ground what is behind it.
photo-no-picture = This file is not a JPEG or PNG picture. Take the photo again, or set the camera to save JPEG.
photo-cut-short = Part of this picture is missing. Take it again.
photo-too-large = This picture has over 50 megapixels, which is too many. Set the camera to a smaller size.
photo-too-small = This picture is too small to measure from. Take it again at the camera's full size.
photo-too-dark = It is too dark to see the edge of the piece. Take it again in more light, without the sun behind it.
photo-busy = The background is too busy. Hang a plain cloth or sheet behind the piece, in a colour that differs from it.
photo-nothing = No piece stands out from the background. Use one much lighter or darker than the piece.
photo-cut-off = The piece runs out of the picture. Step back until you see background all around it.
photo-too-far = The piece is too small in the picture. Move closer, until it fills at least a third of the height.
photo-not-alone = There is more than one thing in the picture. Leave only the piece, and the ruler well to one side.
photo-too-tilted = The phone was tilted too much. Hold it level, so that the piece stands upright.
photo-lopsided = The two sides differ too much for one round piece. Turn the handle straight to one side, and avoid shadows and bright windows.
photo-from-above = The phone looked down on the piece. Hold the lens level with the middle of the piece.
photo-stacked = This looks like two pieces, one in or on the other. Photograph each piece alone, without a lid.
photo-too-flat = A piece this flat cannot be measured from the side. Measure a few widths and heights instead.
photo-size = This size does not fit the picture. Check the figure, its unit, and that the marks are at its ends.
