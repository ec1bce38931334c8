### The check of a bucket: its SG by a vessel, by a known volume, or as read off a hydrometer.

# $glaze, $bucket: their names.
title = Check { $glaze }, { $bucket }
save = Save this check
way = Checked with
way-help = Stir well first, down to the bottom; let the froth settle.
typed-way = SG or hydrometer
# $sg: an SG, such as "1.45". Bé and Tw are the scales of hydrometers: degrees Baumé and Twaddell.
typed-way-detail = { $sg }, 40 Bé or 90 Tw
volume-way = A measured volume
volume-way-detail = A cup or syringe with a mark
vessel-way = My vessel
vessel-way-detail = Weighed once with water, then with glaze
vessel = Vessel
vessel-full = Full of glaze, to the same line
empty = Empty
empty-help = 0 if you tared the scale on it.
with-glaze = With glaze
glaze-volume = Volume of the glaze
sg = SG
sg-help = Also 1450 g/l, 40 Bé or 90 Tw.
flow = Flow cup, seconds, if you use one
flow-help = Not a viscosity: only to compare this bucket with itself.
# $powder: a percentage.
sg-and-powder = SG { $sg }, { $powder } powder by weight.
# $bucket: the name of the bucket.
checked = { $bucket } checked: SG { $sg }.
# $sg: the SG of the last check. $when: the day of it: "today", "yesterday", "5 days ago".
as-before = As before: SG was { $sg } { $when }.
# $when: the day of the last check: "today", "yesterday", "5 days ago". $sg: the SG of it.
thicker = Thicker than { $when }, when SG was { $sg }. Targets follow; thin it only if it coats badly.
# $when: the day of the last check: "today", "yesterday", "5 days ago". $sg: the SG of it.
thinner = Thinner than { $when }, when SG was { $sg }. Was it stirred down to the bottom?
# To gel is to stiffen as it stands, without losing water.
gelled = Same SG but it flows slower: it has gelled. Stir hard and check again before adding any water; water would only thin the coat.
