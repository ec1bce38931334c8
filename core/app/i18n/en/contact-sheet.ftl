### A firing on one sheet of paper: every piece with its picture and what came out.

# An item of a list. $mean: a number from 1 to 5.
liked-on-average = average rating { $mean } of 5
# One coat under its picture. $coat: zone and glaze. $weight: wet. $laydown: dry glaze on an area, with its unit.
coat = { $coat }: { $weight }, { $laydown }
program = Program: { $program }
top = Top temperature { $degrees }
took = took { $time }
page-not-painted = A page could not be drawn. Open the contact sheet again.
