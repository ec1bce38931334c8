### Why a form, its profile, a clay's shrinkage or an outline from a photograph cannot be.

## A form.
no-size = Say what the form holds when filled to the rim, measure its outline, or give its glazed areas.
capacity = A form holds between 5 ml and 100 litres, and { $millilitres } ml is outside that. Check the figure and the unit.
area = A glazed surface is between 1 cm² and 5 m², and { $square_centimetres } cm² is outside that. Check the figure and the unit.
holds-nothing = A tile holds nothing. Give the area of its glazed face.

## Its profile. $point: the number of a point, counted from the ground up.
too-few-points = A profile needs at least three points: the foot, the widest place and the rim.
too-many-points = That is more than { $most } points. Keep those where the outline bends.
out-of-reach = Point { $point } is no size of a pot: at most 1.5 m high and 1.5 m across. Check the figures and the unit.
same-height = Points { $first } and { $second } are at the same height. Correct one; if it is a ledge, put one end half a millimetre higher.
crosses = The outline crosses itself near point { $point }. Check that the points follow the wall from the ground up.
no-wall = The wall must be thicker than nothing. Measure it at the rim, or cut an old piece open.
wall-too-thick = At point { $point } the wall is thicker than the pot is wide there. Check the wall and the width.
floor = The floor and the foot ring are higher than the pot. Check the floor, the ring and the unit.
foot-ring = The foot ring is wider than the foot. Check its width: only the clay counts, on one side.
no-weight = A bisque piece weighs something, and so does a millilitre of it. Check both figures.
nothing-to-glaze = The bare foot reaches up to the rim: nothing outside is glazed. Check the height at which the glaze begins.

## A clay.
shrinkage = Clay shrinks by 0 to 30% from thrown to fired, and not less by then than at the bisque. Check both figures: each is measured from the thrown size.

## A photograph that an outline is taken from. The piece is the pot, the ground what is behind it.
photo-no-picture = This file is no JPEG or PNG picture. Take the photograph again, or set the camera to save JPEG.
photo-cut-short = This picture was cut short and cannot be read to its end. Take it again.
photo-too-large = This picture has over 50 megapixels, which is more than is needed or can be held. Set the camera to a smaller size.
photo-too-small = This picture is too small to measure in. Take it again at the camera's full size.
photo-too-dark = It is too dark to see the edge of the piece. Take it again in more light, without the sun behind it.
photo-busy = The ground behind the piece is too busy. Hang a plain cloth or sheet behind it, one that differs from the piece.
photo-nothing = No piece stands out from the ground. Use a ground much lighter or darker than the piece.
photo-cut-off = The piece runs out of the picture. Step back until there is ground all around it.
photo-too-far = The piece is too small in the picture. Come nearer, until it takes up at least a third of the height.
photo-not-alone = There is more than one thing in the picture. Leave only the piece, and the ruler well beside it.
photo-too-tilted = The phone was held too much aslant. Hold it level, so that the piece stands upright.
photo-lopsided = Its two sides differ too much to be one round piece. Turn the handle straight to one side, and mind shadows and bright windows.
photo-too-flat = A piece this flat cannot be measured from the side. Measure a few widths and heights instead.
photo-size = This size does not fit the picture. Check the figure and its unit, and that the marks lie on its ends.
