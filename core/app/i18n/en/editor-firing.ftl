### The editor of a firing: cone and program before it; witness cones, temperature and time after it.

new = New firing
title = Firing
delete = Delete this firing
kiln = Kiln
cone-aimed-at = Cone aimed at
# $cone: the number of a cone, such as "06" or "6".
cone = Cone { $cone }
cone-kind = Kind of cones
cone-kind-help = Each kind bends at a temperature of its own.
program = Program
program-hint = 100 an hour to 600, then 150 an hour, hold 10 minutes
note = Note
# $cone: the number of a cone, such as "06" or "6". $kiln: the name of the kiln.
saved = Cone { $cone }, { $kiln }.

## Witness cones: cones set beside the ware, which bend as it takes in heat

witnesses = Witness cones set
witnesses-help = Read after the firing: they tell what the ware felt.
no-witnesses = None
# $cones: the numbers of cones, such as "5, 6, 7".
cones = Cones { $cones }
cone-below = Witness cone below
cone-at-aim = Witness cone aimed at
cone-above = Witness cone above
# “at” is the reading in cone-reading.
witness-help = Level with its base is “at”.
not-read-yet = Not read yet
none-stood = None stood there
# $reading: the stored code of how the cone looks after the firing: from unbent to lying flat; at: its tip is level with its base.
cone-reading = { $reading ->
    [standing] Cone { $cone } standing
    [soft] Cone { $cone } soft
    [hard] Cone { $cone } hard
    [flat] Cone { $cone } flat
   *[at] Cone { $cone } at
}

## After the firing

top = Top temperature, °C
top-impossible = A glaze firing ends between 500 and 1500 °C. Check the figure.
hours = Hours it took
hours-impossible = A firing takes from a few minutes to a week. Check the figure.
