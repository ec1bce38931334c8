### Not yet read by a native potter.

crawling = Souvent trop épais, ou de la poussière ou du gras sur le biscuit.
raw-cracking = Souvent trop épais, ou un émail qui se rétracte trop en séchant.
running = Souvent trop épais, surtout près du bord et là où les émaux se chevauchent ; ou trop chaud.
pooling = Souvent trop d’émail resté dedans : videz aussitôt et laissez égoutter.
blistering = Souvent trop épais ou trop chaud, ou du gaz venu de la terre.
thin = Souvent trop peu d’émail, ou un seau qui a été dilué.
dry = Souvent trop peu d’émail, ou pas assez chaud.
bare-spot = Souvent une trace de doigt, ou un endroit que l’émail n’a pas atteint.
crazing = Surtout l’accord entre l’émail et la terre, moins souvent la quantité ; une couche épaisse le montre davantage. Une pièce tressaillée peut fuir, et se casser sous l’eau bouillante.
shivering = L’accord entre l’émail et la terre, pas la quantité. Les éclats coupent : ne vous servez pas d’une telle pièce.
dunting = Surtout le refroidissement ou la terre, pas la quantité.
pinholing = Surtout du gaz venu de la terre ou un palier trop court, moins souvent la quantité.
bloating = La terre, cuite trop loin ; pas la quantité.
overfired = La cuisson, pas la quantité.
matting = Surtout la cuisson, le refroidissement ou la recette.
speck = De la poussière, une miette de plaque, ou du fer dans la terre.
metal-marking = La recette, pas la quantité. Seule une analyse en laboratoire dit si la surface relargue quelque chose.
cone-as-aimed = Cône { $cone } { $reading ->
    [standing] debout
    [soft] amolli
    [at] tombé
    [hard] très tombé
   *[flat] à plat
} : exactement sur la cible.
cone-near-aim = Cône { $cone } { $reading ->
    [standing] debout
    [soft] amolli
    [at] tombé
    [hard] très tombé
   *[flat] à plat
} : près de la cible.
cone-over-aim = Cône { $cone } { $reading ->
    [standing] debout
    [soft] amolli
    [at] tombé
    [hard] très tombé
   *[flat] à plat
} : au-dessus de la cible.
cone-under-aim = Cône { $cone } { $reading ->
    [standing] debout
    [soft] amolli
    [at] tombé
    [hard] très tombé
   *[flat] à plat
} : au-dessous de la cible.
