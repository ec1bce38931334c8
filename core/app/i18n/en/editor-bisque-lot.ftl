### The editor of a bisque lot: how much water its ware drinks.

new = New bisque lot
title = Bisque lot
archive = Archive this lot
name-hint = Bisque 14
body = Body
cone = Cone
not-known = Not noted
fired-on = Fired on
soaking = Soaked by
soaking-help = Keep to one way: lots compare only with lots soaked alike.
# Beside each way. $way: a code.
way = { $way ->
    [boil] Boil 5 hours, then leave in the water for a day. Mind the steam and the hot pot.
    [cold] A day in cold water. Fills fewer pores.
   *[vacuum] Under vacuum. Fills the most.
}
dry = Bone dry
dry-help = A broken bare piece will do, 50 g or more. Dry it in the oven at 110 °C for two hours and let it cool.
soaked = Soaked
soaked-help = Blot off the water film with a damp cloth and weigh at once.
suspended = Hanging in water, if weighed
suspended-help = The soaked piece on a thread, under water and off the bottom. Gives density and pores.
temperature = Water temperature, °C
# $percent: a percentage. $doubt: a number of percent. $way: how it was soaked.
drinks = Absorbs { $percent } (±{ $doubt }) of its dry weight, { $way }.
# $from: a number of percent. $to: a percentage.
usual = Bisque at cone 06 to 04 usually absorbs { $from } to { $to }.
# $density: a number. $porosity: a percentage.
pores = Bulk density { $density } g/ml; open pores are { $porosity } of its volume.
# $mean: a percentage.
as-before = Like the lots before: { $mean } on average.
# $mean: a percentage.
drinks-more = More than the lots before, { $mean } on average: the same dip takes up more. Was it fired cooler or shorter?
# $mean: a percentage.
drinks-less = Less than the lots before, { $mean } on average: the same dip takes up less. Was it fired hotter or longer?
no-weight = Type what the dry piece weighs. It cannot be 0.
soaked-under-dry = Soaked it weighs less than dry. Swap the weights, or weigh again.
too-much = No bisque absorbs that much. Check both weights.
suspended-over-dry = Hanging in water a piece weighs less than dry. Check which weight is which.
no-water = Check the water temperature.
# On the list of lots. $percent: a percentage. $way: how it was soaked. $day: a date.
row = absorbs { $percent } ({ $way }), { $day }
# At Weigh. $bare, $over, $usual: weights.
wet = { $bare } is { $over } more than your dry pieces of this form, about { $usual }. If it was rinsed, that much water is still in it: let it dry, or it takes too little glaze.
