### Not yet read by a native potter.

headline-within = BON
headline-short = PAS ASSEZ
headline-over = TROP
headline-cannot-tell = INDÉCIDABLE
save-it = Enregistrer
add = Ajouter { $amount }
take-off = Retirer { $amount }
use-finer-scale = Prendre une balance plus fine
add-to-be-sure = Ajouter { $amount } par sécurité
take-off-to-be-sure = Retirer { $amount } par sécurité
on-the-aim = Exactement sur la cible.
under-the-aim = { $amount } sous la cible, dans la fourchette : { $span }.
over-the-aim = { $amount } au-dessus de la cible, dans la fourchette : { $span }.
target-too-coarse = Cible : { $span }. Cette balance est trop grossière pour trancher.
target-add = Cible : { $span }. Ajoutez { $amount }.
target-take-off = Cible : { $span }. Retirez { $amount } à l’éponge, au grattoir ou à l’eau.
scale-too-coarse = Trop grossière : cette balance lit par échelons de { $step }, et la cible est { $span }.
too-near-the-edge = Trop près de la limite de { $span } pour une balance qui lit par échelons de { $step }.
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
spoken-too-coarse = Indécidable. Cette balance est trop grossière.
spoken-add-to-be-sure = Indécidable. Ajoutez { $amount } par sécurité.
spoken-take-off-to-be-sure = Indécidable. Retirez { $amount } par sécurité.
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
scale-is-too-coarse = Cette balance lit par échelons de { $step }, trop grossiers pour cette couche. Prenez-en une plus fine.
scale-is-too-small = La pièce avec sa couche dépasse la portée de cette balance ({ $capacity }).
laboratory-balance = Seule une balance de laboratoire pèse { $capacity } par échelons de { $step }. Regardez de nouveau la plaque.
very-few-steps = Une balance de { $capacity } avec un échelon de { $step } a très peu d’échelons. Regardez de nouveau la plaque.
