### What a fault of the fired glaze often speaks of, never more than "often", and what the witness cones say.

crawling = Often too thick, or dust or grease on the bisque.
raw-cracking = Often too thick, or a glaze that shrinks too much as it dries.
running = Often too thick, above all near the rim and where glazes overlap; or too hot.
pooling = Often too much left inside: pour out at once and let it drain.
blistering = Often too thick or too hot, or gas from the clay.
thin = Often too little glaze, or a bucket that has been thinned.
dry = Often too little glaze, or not hot enough.
bare-spot = Often a finger mark, or a place the glaze did not reach.
crazing = Mostly how glaze and clay fit, less often the amount; a thick coat shows it more. Crazed ware can leak, and can break with boiling water.
shivering = How glaze and clay fit, not the amount. The slivers are sharp: do not use such a piece.
dunting = Mostly the cooling or the clay, not the amount.
pinholing = Mostly gas from the clay or a short hold, less often the amount.
bloating = The clay, fired too far; not the amount.
overfired = The firing, not the amount.
matting = Mostly the firing, the cooling or the recipe.
speck = Dust, a crumb of shelf, or iron in the clay.
metal-marking = The recipe, not the amount. Only a laboratory test can tell whether the surface leaches.

## What a witness cone says against the cone aimed at. $cone: its number. $reading: a code: standing, soft, at, hard or flat.
cone-as-aimed = Cone { $cone } { $reading ->
    [standing] not bent
    [soft] soft
    [at] bent
    [hard] hard
   *[flat] flat
}: right on target.
cone-near-aim = Cone { $cone } { $reading ->
    [standing] not bent
    [soft] soft
    [at] bent
    [hard] hard
   *[flat] flat
}: close to target.
cone-over-aim = Cone { $cone } { $reading ->
    [standing] not bent
    [soft] soft
    [at] bent
    [hard] hard
   *[flat] flat
}: over target.
cone-under-aim = Cone { $cone } { $reading ->
    [standing] not bent
    [soft] soft
    [at] bent
    [hard] hard
   *[flat] flat
}: under target.
