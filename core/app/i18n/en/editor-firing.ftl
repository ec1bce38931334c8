### The editor of a firing: cone and program before it; witness cones, temperature and time after it.

new = New firing
title = Firing
# The button that saves a new firing and leads to its load.
begin = Start loading
delete = Remove this firing
kiln = Kiln
# What goes through the firing.
fires = What is fired
glazed-ware = Glazed ware
bisque = Bisque
bisque-detail = Bare clay, no glaze
date = Date
fired-on = Fired on
number = Firing number
number-impossible = Use a whole number, such as 12.
name-hint = Autumn market
cone-aimed-at = Target cone
# $cone: the number of a cone, such as "06" or "6".
cone = Cone { $cone }
cone-kind = Cone type
cone-kind-help = Each type bends at its own temperature.
program = Program
program-hint = 100 °C an hour to 600, then 150 an hour, hold 10 minutes
note = Note
# $cone: the number of a cone, such as "06" or "6". $kiln: the name of the kiln.
saved = Cone { $cone }, { $kiln }.

## Witness cones: cones set beside the ware, which bend as it takes in heat

witnesses = Witness cones
witnesses-help = Read them after the firing: they show how much heat the ware got.
no-witnesses = None
# $cones: the numbers of cones, such as "5, 6, 7".
cones = Cones { $cones }
cone-below = Lower witness cone
cone-at-aim = Target witness cone
cone-above = Higher witness cone
# One that was placed though it is not next to the target.
witness-cone = Witness cone { $cone }
# “Bent”, “soft” and “hard” are readings of cone-reading.
witness-help = Bent: the tip is level with the base. Soft is less, hard is more.
not-read-yet = Not read yet
none-stood = None there
# $reading: the stored code of how the cone looks after the firing: from unbent to lying flat; at: its tip is level with its base.
cone-reading = { $reading ->
    [standing] Cone { $cone } not bent
    [soft] Cone { $cone } soft
    [hard] Cone { $cone } hard
    [flat] Cone { $cone } flat
   *[at] Cone { $cone } bent
}

## After the firing

top = Top temperature, °C
top-impossible = A firing ends between 500 and 1500 °C. Check the figure.
hours = Firing time, hours
hours-impossible = A firing takes from a few minutes to a week. Check the figure.
