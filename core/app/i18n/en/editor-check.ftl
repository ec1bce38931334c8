### The check of a bucket: its SG by a vessel, by a known volume, or as read off a hydrometer.

# $glaze, $bucket: their names.
title = Check { $glaze }, { $bucket }
save = Save this check
way = Method
way-help = Stir well to the bottom first, and let the froth settle.
typed-way = SG or hydrometer
# $sg: an SG, such as "1.45". Bé and Tw are the scales of hydrometers: degrees Baumé and Twaddell.
typed-way-detail = { $sg }, 40 Bé or 90 Tw
volume-way = A measured volume
volume-way-detail = A cup or syringe with a mark
vessel-way = My vessel
vessel-way-detail = Weighed once with water, then with glaze
vessel = Vessel
vessel-full = Weight with glaze
vessel-full-help = Fill the vessel to the same line as with water.
empty = Weight empty
empty-help = 0 if you tared the scale with it on.
with-glaze = Weight with glaze
glaze-volume = Volume of glaze
sg = SG
sg-help = Or type 1450 g/l, 40 Bé or 90 Tw.
flow = Flow cup, seconds
flow-help = If you use one. It is not a viscosity: it only compares this bucket with itself.
# $powder: a percentage.
sg-and-powder = SG { $sg }, { $powder } powder by weight.
# $bucket: the name of the bucket.
checked = { $bucket } checked: SG { $sg }.
# $sg: the SG of the last check. $when: the day of it: "today", "yesterday", "5 days ago".
as-before = No change: SG was { $sg } { $when }.
# $when: the day of the last check: "today", "yesterday", "5 days ago". $sg: the SG of it.
thicker = Thicker: SG was { $sg } { $when }. Targets follow; thin it only if it coats badly.
# $when: the day of the last check: "today", "yesterday", "5 days ago". $sg: the SG of it.
thinner = Thinner: SG was { $sg } { $when }. Was it stirred to the bottom?
# To gel is to stiffen as it stands, without losing water.
gelled = Same SG, but it flows more slowly than this bucket used to: the glaze has gelled. Stir hard, wait ten minutes, let it come to room temperature, sieve, and check again before you add water, which would only make the coat too thin.
remove = Remove this check
note = Note
cup = Flow cup
other-cup = Another cup
other-cup-detail = A cup of your own, or one not listed
# $viscosity: a number.
viscosity = An oil of { $viscosity } mm²/s takes as long. Glaze thins as it is stirred, so compare seconds, not this.
settled = Same SG, but it flows faster than this bucket used to. Stir to the bottom, let it come to room temperature, sieve, and check again before you dip.
