### The editor of a test tile: its area and its coat say how thick the test was.

new = New test tile
title = Test tile
archive = Archive this test tile
name-hint = Tile 12
area = Glazed area
area-help = Length times width of what was glazed; both sides if both were.
net = Wet coat weight
dry = Dry coat weight
dry-help = When bone dry. Better than the wet weight, if you waited.
no-weight = Give the dry weight, or the wet weight and the SG.
