### Not yet read by a native potter.

new = Tester une balance
title = Test de balance
archive = Archiver ce test
scale = Balance
readings = Dix lectures
readings-help = Mettez la balance à zéro. Posez une pièce du poids que vous émaillez d’habitude, lisez, retirez-la, attendez le zéro. Dix fois.
shown-column = Affiché, { $unit }
known = Poids connu, si vous en avez un
known-help = Un poids étalon, ou ce que montre une autre balance sûre.
known-shown = Affiché pour lui
both-weights = Tapez le poids connu et ce que la balance affiche pour lui.
weigh-something = Pesez dix fois une même charge, ou vérifiez un poids connu.
row-refused = Ligne { $row } : { $why }
saved = { $scale } : test enregistré.
saved-and-used = { $scale } : test enregistré. La pesée en tient compte désormais.
repeats = { $loads ->
    [one] { $loads } lecture : moyenne { $mean }, écart type { $deviation } ({ $low } à { $high }, 95 fois sur 100).
   *[other] { $loads } lectures : moyenne { $mean }, écart type { $deviation } ({ $low } à { $high }, 95 fois sur 100).
}
repeats-as-its-step = Elle se répète aussi bien que son échelon.
repeats-worse = Elle se répète moins bien que son échelon. Mettez-la de niveau, à l’abri des courants d’air, et testez-la de nouveau ; la pesée en tient compte d’ici là.
good-from = Bonne pour des couches à partir de { $from } à ±{ $tolerance } ; à partir de { $barely }, elle n’en tranche que certaines.
class-allows = La classe { $class } permet ±{ $allowed } en service à { $load }.
class-impossible = Aucune balance de cet échelon et de cette portée n’est de classe { $class }. Vérifiez sa plaque.
known-right = Juste pour le poids connu : { $off } d’écart, ±{ $allowed } est permis.
known-over = Elle affiche { $off } de trop ; ±{ $allowed } est permis. Étalonnez-la ou vérifiez le poids. Les couches pesées après tare en souffrent à peine.
known-under = Elle affiche { $off } de moins ; ±{ $allowed } est permis. Étalonnez-la ou vérifiez le poids. Les couches pesées après tare en souffrent à peine.
too-few = { $loads ->
    [one] { $loads } lecture. Pesez la charge { $wanted } fois, { $fewest } au moins.
   *[other] { $loads } lectures. Pesez la charge { $wanted } fois, { $fewest } au moins.
}
no-load = La ligne { $row } n’est pas un poids que cette balance peut afficher.
stray = La ligne { $row }, { $reading }, est loin des autres. Était-ce une autre charge, ou une faute de frappe ?
fits = { $advice ->
    [decides] bonne pour cette couche
    [only_just] ne tranche que certaines de ces couches
    [too_coarse] trop grossière pour cette couche
   *[over_capacity] trop petite pour cette pièce
}
