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
underfired = The firing fell short, not the amount. Read the witness cones.
stuck = Often too thick low down, or glaze left on the foot. Chipped glaze is sharp: wear eye protection.
warped = The clay, uneven drying or the firing, not the amount.
cracked = Mostly drying or a join, not the amount.
plucked = The foot stuck to a worn shelf: use fresh kiln wash. The edges are sharp.
matting = Mostly the firing, the cooling or the recipe.
speck = Dust, a crumb of shelf, or iron in the clay.
metal-marking = The recipe, not the amount. Only a laboratory test can tell whether the surface leaches.
# What a fault is, in one line. $fault: its code.
about = { $fault ->
    [crawling] Glaze drawn back from bare clay.
    [pinholing] Small holes down to the clay.
    [blistering] Bubbles, whole or burst, with sharp edges.
    [running] Glaze flowed down the wall.
    [crazing] A net of fine cracks in the glaze.
    [delayed_crazing] The same net, days or months later.
    [shivering] Slivers of glaze spring off edges.
    [dunting] The pot cracked right through as it cooled.
    [underfired] Not melted through: dull or powdery.
    [overfired] Fired too far: glaze ran thin, or clay slumped.
    [stuck] Glaze glued the foot to the shelf.
    [warped] The pot went out of round or flat.
    [cracked] A crack in rim, floor or join.
    [plucked] Bits of the foot stayed on the shelf.
    [bloating] The clay swelled up.
    [thin] Too little glaze there.
    [dry] Rough to the finger.
    [bare_spot] A spot without any glaze.
    [pooling] Glaze gathered deep in the floor.
    [sagging] Glaze slipped down in a fold.
    [pitting] Small hollows that do not reach the clay.
    [beading] Glaze gathered in drops.
    [raw_cracking] The dry coat cracked before the firing.
    [flaking] The dry coat came off.
    [matting] Dull where it should shine.
    [scumming] A pale film on the surface.
    [blushing] Colour drifted over from elsewhere.
    [speck] Spots of something else.
   *[metal_marking] Grey lines from cutlery.
}

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
