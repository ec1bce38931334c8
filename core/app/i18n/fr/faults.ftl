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
underfired = La cuisson est restée en dessous, pas la quantité. Lisez les cônes témoins.
stuck = Souvent trop épais en bas, ou de l’émail resté sur le pied. L’émail éclaté coupe : protégez vos yeux.
warped = La terre, un séchage inégal ou la cuisson, pas la quantité.
cracked = Surtout le séchage ou un raccord, pas la quantité.
plucked = Le pied a collé à une plaque usée : remettez de l’enduit. Les arêtes coupent.
matting = Surtout la cuisson, le refroidissement ou la recette.
speck = De la poussière, une miette de plaque, ou du fer dans la terre.
metal-marking = La recette, pas la quantité. Seule une analyse en laboratoire dit si la surface relargue quelque chose.
about = { $fault ->
    [crawling] L’émail s’est retiré de la terre nue.
    [pinholing] Petits trous jusqu’à la terre.
    [blistering] Bulles, entières ou éclatées, aux bords vifs.
    [running] L’émail a coulé le long de la paroi.
    [crazing] Un réseau de fines fissures dans l’émail.
    [delayed_crazing] Le même réseau, des jours ou des mois plus tard.
    [shivering] Des éclats d’émail sautent des arêtes.
    [dunting] Le pot s’est fendu en refroidissant.
    [underfired] Pas fondu : terne ou poudreux.
    [overfired] Trop cuit : émail délavé, ou terre affaissée.
    [stuck] L’émail a collé le pied à la plaque.
    [warped] Le pot n’est plus rond ou plat.
    [cracked] Une fente au bord, au fond ou à un raccord.
    [plucked] Des éclats du pied sont restés sur la plaque.
    [bloating] La terre a gonflé.
    [thin] Trop peu d’émail à cet endroit.
    [dry] Rugueux au doigt.
    [bare_spot] Un endroit sans émail.
    [pooling] L’émail s’est accumulé au fond.
    [sagging] L’émail a glissé en bourrelet.
    [pitting] Petits creux qui n’atteignent pas la terre.
    [beading] L’émail s’est mis en gouttes.
    [raw_cracking] La couche sèche s’est fissurée avant cuisson.
    [flaking] La couche sèche s’est décollée.
    [matting] Mat là où ça devrait briller.
    [scumming] Un voile pâle à la surface.
    [blushing] Une couleur venue d’ailleurs.
    [speck] Des points d’autre chose.
   *[metal_marking] Des lignes grises de couverts.
}
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
