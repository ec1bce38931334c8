### What can hurt in a glazing studio. Every caution defers to those who know the place: local rules, safety data sheets, laboratory tests, licensed people. No glaze is ever called safe.

dust = Dust
dust-text = Dry glaze and clay hold silica, which harms the lungs for good. Clean wet, never sweep dry; add powder to water, not water to powder; wear a respirator fit for silica when dust cannot be kept down. Your workplace rules and the safety data sheets come first.
materials = Toxic and soluble materials
materials-text = Some glaze materials are poisonous, and some dissolve and pass through skin. Read each safety data sheet, wear gloves, keep food and drink out, wash your hands, and take waste where your local rules say.
spraying = Spraying
spraying-text = A sprayed mist is breathed in deep. Spray only in a booth with working extraction, with a respirator fit for it. Ask a licensed person about the extraction.
food = Food and drink
food-text = The right amount of glaze does not make a glaze fit for food. What leaches from it only a laboratory test of the fired piece can tell, and local law says what is allowed.
crazing = Crazed ware and boiling water
crazing-text = A crazed or thick piece can break when boiling water is poured in. Try unproven ware at arm's length over a sink, and do not sell it for hot drinks on a guess.
edges = Sharp edges
edges-text = Glaze drips and chipped rims fire into blades. Smooth them before the firing, wear eye protection and gloves when grinding, and keep fingers off fresh shards.
kiln = The kiln
kiln-text = Kilns burn, fume and carry dangerous voltages. Air the room, keep clear of what burns, follow the maker's manual, and leave wiring and gas to licensed people.
