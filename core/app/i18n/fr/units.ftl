### Not yet read by a native potter.

decimal-mark = {","}
span = { $low } à { $high }
percent = { $number } %
laydown-unit = { $mass } pour 100 { $area }
laydown = { $number } { $unit }
empty = { $quantity ->
    [weight] Saisissez le poids, par exemple { $example }.
    [volume] Saisissez le volume, par exemple { $example }.
    [surface] Saisissez la surface, par exemple { $example }.
    [length] Saisissez la longueur, par exemple { $example }.
    [time] Saisissez la durée, par exemple { $example }.
    [temperature] Saisissez la température, par exemple { $example }.
    [specific_gravity] Saisissez la densité, par exemple { $example }.
   *[number] Saisissez le nombre, par exemple { $example }.
}
not-a-number = { $quantity ->
    [weight] « { $text } » ne se lit pas comme un poids. Écrivez en chiffres, par exemple { $example }.
    [volume] « { $text } » ne se lit pas comme un volume. Écrivez en chiffres, par exemple { $example }.
    [surface] « { $text } » ne se lit pas comme une surface. Écrivez en chiffres, par exemple { $example }.
    [length] « { $text } » ne se lit pas comme une longueur. Écrivez en chiffres, par exemple { $example }.
    [time] « { $text } » ne se lit pas comme une durée. Écrivez en chiffres, par exemple { $example }.
    [temperature] « { $text } » ne se lit pas comme une température. Écrivez en chiffres, par exemple { $example }.
    [specific_gravity] « { $text } » ne se lit pas comme une densité. Écrivez en chiffres, par exemple { $example }.
   *[number] « { $text } » ne se lit pas comme un nombre. Écrivez en chiffres, par exemple { $example }.
}
unknown-unit = { $quantity ->
    [weight] « { $unit } » n’est pas une unité de poids. Écrivez comme { $example }, ou des chiffres seuls.
    [volume] « { $unit } » n’est pas une unité de volume. Écrivez comme { $example }, ou des chiffres seuls.
    [surface] « { $unit } » n’est pas une unité de surface. Écrivez comme { $example }, ou des chiffres seuls.
    [length] « { $unit } » n’est pas une unité de longueur. Écrivez comme { $example }, ou des chiffres seuls.
    [time] « { $unit } » n’est pas une unité de durée. Écrivez comme { $example }, ou des chiffres seuls.
    [temperature] « { $unit } » n’est pas une unité de température. Écrivez comme { $example }, ou des chiffres seuls.
    [specific_gravity] « { $unit } » n’est pas une unité de densité que laydown connaît. Écrivez comme { $example }, ou des chiffres seuls.
   *[number] « { $unit } » n’est pas une unité que laydown connaît pour un nombre. Écrivez comme { $example }, ou des chiffres seuls.
}
us-or-imperial = L’unité « { $unit } » n’a pas la même taille aux États-Unis et en Grande-Bretagne. Écrivez « us { $unit } » ou « imp { $unit } ».
mixed-units = « { $text } » mélange des unités. Écrivez d’abord la plus grande, et nommez chacune, par exemple 1 lb 2 oz.
two-marks = « { $text } » a plus d’un signe décimal. Retirez le séparateur de milliers.
thousands-or-decimal = « { $text } », est-ce { $whole }, ou un peu plus de { $part } ? Écrivez { $whole }, ou prenez « { $mark } » comme signe décimal.
space-in-number = « { $text } » a un espace à l’intérieur d’un nombre. Écrivez-le sans espace.
negative = { $quantity ->
    [weight] Un poids ne peut pas être inférieur à zéro. Vérifiez le signe moins, ou tarez de nouveau la balance.
    [volume] Un volume ne peut pas être inférieur à zéro. Vérifiez le signe moins.
    [surface] Une surface ne peut pas être inférieure à zéro. Vérifiez le signe moins.
    [length] Une longueur ne peut pas être inférieure à zéro. Vérifiez le signe moins.
    [time] Une durée ne peut pas être inférieure à zéro. Vérifiez le signe moins.
    [temperature] Une température ne peut pas être inférieure à zéro ici. Vérifiez le signe moins.
    [specific_gravity] Une densité ne peut pas être inférieure à zéro. Vérifiez le signe moins.
   *[number] Un nombre ne peut pas être inférieur à zéro ici. Vérifiez le signe moins.
}
too-large = { $quantity ->
    [weight] Ce poids dépasse la limite de 100 kg. Vérifiez le chiffre et l’unité.
    [volume] Ce volume dépasse la limite de 1000 litres. Vérifiez le chiffre et l’unité.
    [surface] Cette surface dépasse la limite de 10 m². Vérifiez le chiffre et l’unité.
    [length] Cette longueur dépasse la limite de 10 m. Vérifiez le chiffre et l’unité.
    [time] Cette durée dépasse la limite de 24 heures. Vérifiez le chiffre et l’unité.
    [temperature] Cette température dépasse la limite de 1500 °C. Vérifiez le chiffre et l’unité.
    [specific_gravity] Cette densité dépasse la limite de 2,2. Vérifiez le chiffre et l’unité.
   *[number] Ce nombre dépasse la limite de 1 000 000 000. Vérifiez le chiffre et l’unité.
}
no-temperature = Ni un atelier ni un four n’atteint { $degrees } °C. Vérifiez le chiffre et l’unité.
no-heavier-than-water = Densité { $number } : ce n’est pas plus lourd que l’eau, et un émail l’est toujours. Remuez le seau jusqu’au fond et pesez de nouveau.
too-thin-for-glaze = Densité { $number } : c’est presque de l’eau, un émail a 1,02 ou plus. Remuez le seau jusqu’au fond et pesez de nouveau.
too-heavy-for-glaze = Densité { $number } : c’est plus lourd que tout émail qui se verse. Vérifiez le chiffre : 1450 g par litre font 1,45.
very-thin-for-glaze = Densité { $number } : c’est très liquide pour un émail. Remuez le seau jusqu’au fond et contrôlez de nouveau.
no-laydown = Un grammage est compris entre 0 et { $most } g pour 100 cm², et { $number } g ne l’est pas. La plupart partent de près de 5,5.
no-powder-density = Une densité de poudre de { $number } n’est pas entre 1,5 et 7. La plupart des émaux sont proches de 2,6.
heavier-than-powder = Densité { $number } : c’est aussi lourd que la poudre sèche elle-même ({ $density }). Vérifiez la lecture, et la densité de la poudre de cet émail.
no-fraction = La part d’émail sec doit être entre 0 et 1, et { $number } ne l’est pas. Pesez de nouveau l’émail humide et sec.
nothing-to-mix = La poudre et l’eau doivent toutes deux peser quelque chose. Pesez-les de nouveau.
empty-vessel = Le récipient ne pèse pas plus plein que vide. Pesez-le vide et sec, puis plein jusqu’à son trait.
too-unsure = Cette balance est trop grossière pour si peu d’émail. Prenez une balance plus fine, ou pesez-en plus.
no-volume = Donnez ce que le récipient contient jusqu’à son trait.
water-temperature = De l’eau à { $degrees } °C ne peut pas servir à mesurer un récipient. Prenez de l’eau entre 0 et 40 °C.
unknown-code = « { $code } » n’est pas { $what ->
    [zone] une zone
    [verdict] un verdict
    [sensitivity] une sensibilité
    [shape] une silhouette
    [stage] un stade
    [thickness] une épaisseur
    [fault] un défaut
    [cone] un cône
    [cone_kind] un type de cône
    [reading] une lecture
    [part] une partie
    [side] un côté
    [sureness] un degré de certitude
    [mass_unit] une unité de poids
    [volume_unit] une unité de volume
    [area_unit] une unité de surface
    [length_unit] une unité de longueur
    [decimal_mark] un signe décimal
    [rhythm] un rythme de sauvegarde
    [firing_state] une étape de cuisson
   *[other] un code
} que cette version de laydown connaît. Mettez laydown à jour, puis rouvrez l’atelier.
code-length = Le code d’une pièce a cinq caractères ou plus. Vérifiez de nouveau le pied.
code-character = Aucun code ne contient « { $character } ». Vérifiez de nouveau le pied.
code-check = Ce code a été mal lu ou mal écrit : son dernier caractère ne correspond pas aux autres. Vérifiez de nouveau le pied.
above-rim = C’est au-dessus du bord : le seau est profond de { $depth }. Vérifiez le niveau, ou la profondeur du seau.
more-water-than-there-is = Il n’y a que { $water } d’eau dans cet émail. Vérifiez le chiffre, et la quantité d’émail dans le seau.
outside-cup = Prévue pour { $from } à { $to } secondes : { $cup }. Il faudrait : { $better } ; ces secondes comparent tout de même ce seau à lui-même.
outside-every-cup = Prévue pour { $from } à { $to } secondes : { $cup }. Ces secondes comparent tout de même ce seau à lui-même.
