### What a fault of the fired glaze often speaks of, never more than "often", and what the witness cones say.

crawling = Often too thick, or dust and grease on the bisque.
raw-cracking = Often too thick, or a coat that shrinks too much as it dries.
running = Often too thick, most of all near the rim and where glazes meet; or too hot.
pooling = Often too much left inside: pour out at once and let it drain.
blistering = Often too thick or too hot, or gas from the clay.
thin = Often too little, or a bucket that has been thinned.
dry = Often too little, or not hot enough.
bare-spot = Often a touch of the fingers, or a place the glaze did not reach.
crazing = Mostly how glaze and clay fit, less often the amount; a thick coat shows it more. Crazed ware can leak and break with boiling water.
shivering = How glaze and clay fit, not the amount. The slivers are sharp: such a piece is not for use.
dunting = Mostly cooling or the clay, not the amount.
pinholing = Mostly gas from the clay or a short hold, less often the amount.
bloating = The clay, taken too far; not the amount.
overfired = The firing, not the amount.
matting = Mostly the firing, the cooling or the recipe.
speck = Dust, a crumb of shelf or iron in the clay.
metal-marking = The recipe, not the amount. A laboratory test tells whether the surface gives anything off.

## What a witness cone says against the cone aimed at. $cone: its number. $reading: a code: standing, soft, at, hard or flat.
cone-as-aimed = Cone { $cone } { $reading ->
    [standing] standing
    [soft] soft
    [at] at
    [hard] hard
   *[flat] flat
}: as aimed.
cone-near-aim = Cone { $cone } { $reading ->
    [standing] standing
    [soft] soft
    [at] at
    [hard] hard
   *[flat] flat
}: near what was aimed at.
cone-over-aim = Cone { $cone } { $reading ->
    [standing] standing
    [soft] soft
    [at] at
    [hard] hard
   *[flat] flat
}: over what was aimed at.
cone-under-aim = Cone { $cone } { $reading ->
    [standing] standing
    [soft] soft
    [at] at
    [hard] hard
   *[flat] flat
}: under what was aimed at.
