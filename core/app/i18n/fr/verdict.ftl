### Not yet read by a native potter.

headline-within = BON
headline-short = PAS ASSEZ
headline-over = TROP
headline-cannot-tell = INCERTAIN
headline-near = { $because ->
    [guess] PRÈS DE L’ESTIMATION
    [tiles] PRÈS DE VOS PLAQUETTES
    [bucket] PRÈS : DENSITÉ NON CONTRÔLÉE
    [pots] PRÈS : ENCORE TROP PEU DE PIÈCES
   *[area] PRÈS : SURFACE NON MESURÉE
}
headline-under = { $because ->
    [guess] SOUS L’ESTIMATION
    [tiles] SOUS VOS PLAQUETTES
    [bucket] DESSOUS : DENSITÉ NON CONTRÔLÉE
    [pots] DESSOUS : ENCORE TROP PEU DE PIÈCES
   *[area] DESSOUS : SURFACE NON MESURÉE
}
headline-above = { $because ->
    [guess] AU-DESSUS DE L’ESTIMATION
    [tiles] AU-DESSUS DE VOS PLAQUETTES
    [bucket] AU-DESSUS : DENSITÉ NON CONTRÔLÉE
    [pots] AU-DESSUS : ENCORE TROP PEU DE PIÈCES
   *[area] AU-DESSUS : SURFACE NON MESURÉE
}
save-it = Enregistrer
add = Ajouter { $amount }
take-off = Retirer { $amount }
use-finer-scale = Prendre une balance plus fine
add-and-use-finer-scale = En ajouter, puis prendre une balance plus fine
take-off-and-use-finer-scale = En retirer, puis prendre une balance plus fine
add-or-save = Ajouter { $amount }, ou enregistrer
take-off-or-save = Retirer { $amount }, ou enregistrer
add-to-be-sure = Ajouter { $amount } par sécurité
take-off-to-be-sure = Retirer { $amount } par sécurité
on-the-aim = Exactement sur la cible.
under-the-aim = { $amount } sous la cible, dans la fourchette : { $span }.
over-the-aim = { $amount } au-dessus de la cible, dans la fourchette : { $span }.
target-too-coarse = Cible : { $span }. Cette balance est trop grossière pour trancher.
target-add = Cible : { $span }. Ajoutez { $amount } pour atteindre la cible.
target-take-off = Cible : { $span }. Retirez { $amount } à l’éponge, au grattoir ou à l’eau pour atteindre la cible.
guess-on-the-aim = Exactement sur la cible. Le bon poids : peut-être { $span }.
guess-under-the-aim = { $amount } sous la cible. Le bon poids : peut-être { $span }.
guess-over-the-aim = { $amount } au-dessus de la cible. Le bon poids : peut-être { $span }.
scale-too-coarse = Trop grossière : cette balance lit par échelons de { $step }, et la cible est { $span }.
too-near-the-edge = Trop près de la limite de { $span } pour une balance qui lit par échelons de { $step }.
rests-on-fired = { $right ->
    [one] Repose sur { $right } pièce témoin sortie juste.
   *[other] Repose sur { $right } pièces témoins sorties justes.
}
rests-on-controls = { $pieces ->
    [one] Repose sur { $pieces } pièce témoin, pas jugée après cuisson.
   *[other] Repose sur { $pieces } pièces témoins, aucune jugée après cuisson.
}
rests-on-tiles = Repose sur des plaquettes d’essai, sur aucune pièce.
rests-on-start = Encore ni pièce ni plaquette de cet émail.
sg-checked = Densité contrôlée { $when }.
sg-not-checked = Densité non contrôlée.
area-not-measured = Surface estimée.
certainty = Exact à ±{ $half_width }.
carries = { $dry } sec, { $laydown }
on-control = Sur votre pièce témoin, cette couche pèserait { $amount }.
spoken-grams = { $form ->
    [single] { $number } gramme
   *[several] { $number } grammes
}
spoken-ounces = { $form ->
    [single] { $number } once
   *[several] { $number } onces
}
spoken-within = Bon. Enregistrez.
spoken-short = Pas assez. Ajoutez { $amount }.
spoken-over = Trop. Retirez { $amount }.
spoken-near = { $because ->
    [guess] Près de votre première estimation. Enregistrez.
    [tiles] Près de vos plaquettes. Enregistrez.
    [bucket] Près, mais la densité n’est pas contrôlée. Enregistrez.
    [pots] Près, mais d’après trop peu de pièces encore. Enregistrez.
   *[area] Près, mais la surface n’est pas mesurée. Enregistrez.
}
spoken-under = { $because ->
    [guess] Sous votre première estimation. Ajoutez { $amount }, ou enregistrez.
    [tiles] Sous vos plaquettes. Ajoutez { $amount }, ou enregistrez.
    [bucket] Dessous, mais la densité n’est pas contrôlée. Ajoutez { $amount }, ou enregistrez.
    [pots] Dessous, mais d’après trop peu de pièces encore. Ajoutez { $amount }, ou enregistrez.
   *[area] Dessous, mais la surface n’est pas mesurée. Ajoutez { $amount }, ou enregistrez.
}
spoken-above = { $because ->
    [guess] Au-dessus de votre première estimation. Retirez { $amount }, ou enregistrez.
    [tiles] Au-dessus de vos plaquettes. Retirez { $amount }, ou enregistrez.
    [bucket] Au-dessus, mais la densité n’est pas contrôlée. Retirez { $amount }, ou enregistrez.
    [pots] Au-dessus, mais d’après trop peu de pièces encore. Retirez { $amount }, ou enregistrez.
   *[area] Au-dessus, mais la surface n’est pas mesurée. Retirez { $amount }, ou enregistrez.
}
spoken-short-too-coarse = Pas assez. Ajoutez-en, puis prenez une balance plus fine.
spoken-over-too-coarse = Trop. Retirez-en, puis prenez une balance plus fine.
spoken-too-coarse = Incertain. Cette balance est trop grossière.
spoken-add-to-be-sure = Incertain. Ajoutez { $amount } par sécurité.
spoken-take-off-to-be-sure = Incertain. Retirez { $amount } par sécurité.
no-number = Ce n’est pas un poids. Saisissez ce que montre la balance.
no-bare = La pièce nue doit peser quelque chose. Pesez-la avant l’émaillage.
glazed-under-bare = Elle pèse moins émaillée ({ $glazed }) que nue ({ $bare }). Vérifiez que les deux poids sont de cette pièce, et pas inversés.
negative = Le poids est inférieur à zéro. Tarez avec la pièce nue sur la balance, puis pesez de nouveau.
nothing = La balance ne montre pas d’émail. Pesez la pièce après la couche.
over-capacity = { $weight } dépasse la portée de cette balance ({ $capacity }). Prenez une balance plus grande, ou choisissez celle qui a servi.
under-minimum = { $weight } est moins que ce que cette balance doit peser ({ $minimum }). Prenez une balance plus fine.
finer-than-step = Cette balance lit par échelons de { $step } et ne peut pas montrer { $weight }. Saisissez ce qu’elle montre, ou choisissez celle qui a servi.
more-than-piece-holds = { $weight }, c’est plus d’émail que cette pièce n’en peut porter (environ { $most } au plus). Vérifiez que la balance a été tarée avec la pièce nue.
read-at-once = Lisez la balance dès que la pièce ne goutte plus. La couche perd de l’eau dès la première minute.
weigh-again-first = Pesez de nouveau la pièce juste avant cette couche et prenez ce poids comme tare : la paroi garde l’eau de la couche d’avant. Lisez ensuite dès que la pièce ne goutte plus.
no-step = Donnez l’échelon de la balance, par exemple 0,1 g.
no-capacity = Donnez le maximum que pèse la balance. Il doit faire de nombreuses fois son échelon.
minimum = Le minimum de la balance doit être inférieur à sa portée. Laissez vide si vous ne le connaissez pas.
repeatability = La répétabilité de la balance ne peut pas être juste. Pesez dix fois un même objet, ou laissez vide.
scale-decides = Cette balance lit par échelons de { $step }, assez fins pour cette couche.
scale-decides-only-just = Cette balance lit par échelons de { $step }, tout juste assez fins pour cette couche. Une plus fine vous en dirait plus.
scale-is-too-coarse = Cette balance lit par échelons de { $step } : aucun poids qu’elle montre ne peut convenir.
weigh-together = Pesez { $together } pièces ensemble (cible { $total }).
weigh-finer = Prenez une balance à échelon de { $fine } ou plus fin.
weigh-together-or-finer = Pesez { $together } pièces ensemble (cible { $total }), ou prenez une balance à échelon de { $fine }.
scale-is-too-small = La pièce avec sa couche dépasse la portée de cette balance ({ $capacity }).
laboratory-balance = Seule une balance de laboratoire pèse { $capacity } par échelons de { $step }. Regardez de nouveau la plaque.
very-few-steps = Une balance de { $capacity } avec un échelon de { $step } a très peu d’échelons. Regardez de nouveau la plaque.
