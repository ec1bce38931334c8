### What can hurt in a glazing studio. Every caution defers to those who know the place: local rules, safety data sheets, laboratory tests, licensed people. No glaze is ever called safe.

dust = Dust
dust-text = Dry glaze and clay hold silica, which damages the lungs for good. Clean up wet and never sweep dry. Add powder to water, not water to powder. If you cannot keep dust down, wear a respirator rated for silica. Your workplace rules and the safety data sheets come first.
materials = Toxic and soluble materials
materials-text = Some glaze materials are poisonous, and some dissolve and soak through the skin. Read every safety data sheet, wear gloves, keep food and drink out, and wash your hands. Dispose of waste as your local rules say.
spraying = Spraying
spraying-text = You breathe spray mist in deep. Spray only in a booth with working extraction, and wear a respirator rated for it. Ask a licensed person about the extraction.
food = Food and drink
food-text = The right amount of glaze does not make a glaze fit for food. Only a laboratory test of the fired piece can tell what leaches from it, and local law says what is allowed.
crazing = Crazed ware and boiling water
crazing-text = A crazed or thick piece can break when you pour in boiling water. Test unproven ware at arm's length over a sink, and never sell it for hot drinks on a guess.
edges = Sharp edges
edges-text = Fired glaze drips and chipped rims cut like blades. Smooth them before the firing, wear eye protection and gloves when you grind, and keep your fingers off fresh shards.
kiln = The kiln
kiln-text = Kilns burn, give off fumes and carry dangerous voltages. Ventilate the room, keep anything that can burn well away, and follow the maker's manual. Leave wiring and gas to licensed people.
