### What the geometry of a form says beside the form and beside the weighing.

newer-profile = A profile in this studio was saved by a newer version. Update laydown, then open it again.
# $weight: heavier or lighter than the drawing of it. $percent: by how much, a whole number. $point: the number of a point.
weight-off-at-point = { $weight ->
    [heavier] The weighed piece is { $percent }% heavier than this drawing of it. Check point { $point }: without it they match.
   *[lighter] The weighed piece is { $percent }% lighter than this drawing of it. Check point { $point }: without it they match.
}
# $weight: heavier or lighter than the drawing of it. $percent: by how much, a whole number.
weight-off = { $weight ->
    [heavier] The weighed piece is { $percent }% heavier than this drawing of it. Check the wall, the floor, the unit, and when it was measured.
   *[lighter] The weighed piece is { $percent }% lighter than this drawing of it. Check the wall, the floor, the unit, and when it was measured.
}
# $band: a length: how far down from the rim.
overlap = Both glazes overlap on the top { $band }: too thick there, they crawl or run. Keep the second coat thin on that band.
wide-floor = The floor is wide, so glaze pools there. Pour out at once and let it drain upside down.
