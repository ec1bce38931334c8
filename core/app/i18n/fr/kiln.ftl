### Not yet read by a native potter.

waiting = { $pieces ->
    [0] Aucune pièce émaillée n’attend une cuisson.
    [one] { $pieces } pièce attend une cuisson.
   *[other] { $pieces } pièces attendent une cuisson.
}
no-firing-yet = Commencez-en une quand les pièces sont sèches : choisissez un four et un cône, puis garnissez les plaques.
pieces = { $pieces ->
    [one] { $pieces } pièce
   *[other] { $pieces } pièces
}
state = { $state ->
    [loading] enfournement en cours
    [fired] cuite, à défourner
    [done] défournée
   *[newer] d’une version plus récente
}
firing-title = cône { $cone }, { $kiln }
bisque-title = biscuit au cône { $cone }, { $kiln }
numbered-title = Cuisson { $number } : { $title }
unknown-form = Forme inconnue
unknown-piece = Pièce inconnue
never-weighed = non pesée
glaze-on-zone = { $zone ->
    [inside] { $glaze } à l’intérieur
    [outside] { $glaze } à l’extérieur
    [whole] { $glaze } à l’intérieur et à l’extérieur
   *[newer] { $glaze }, d’une version plus récente
}
unknown-glaze-on-zone = { $zone ->
    [inside] émail inconnu à l’intérieur
    [outside] émail inconnu à l’extérieur
    [whole] émail inconnu à l’intérieur et à l’extérieur
   *[newer] émail inconnu, d’une version plus récente
}
to-be-fired-again = à recuire
coat-label = { $zone ->
    [inside] Intérieur, { $glaze }
    [outside] Extérieur, { $glaze }
    [whole] Intérieur et extérieur, { $glaze }
   *[newer] D’une version plus récente, { $glaze }
}
unknown-glaze-coat-label = { $zone ->
    [inside] Intérieur, émail inconnu
    [outside] Extérieur, émail inconnu
    [whole] Intérieur et extérieur, émail inconnu
   *[newer] D’une version plus récente, émail inconnu
}
weighed = { $verdict ->
    [within] { $weight }, bon (cible { $aim })
    [short] { $weight }, pas assez (cible { $aim })
    [over] { $weight }, trop (cible { $aim })
    [cannot_tell] { $weight }, incertain (cible { $aim })
    [guess] { $weight }, estimation (cible { $aim })
   *[newer] { $weight } (cible { $aim })
}
place = { $place ->
    [front_left] plaque { $shelf }, devant à gauche
    [front] plaque { $shelf }, devant
    [front_right] plaque { $shelf }, devant à droite
    [left] plaque { $shelf }, à gauche
    [right] plaque { $shelf }, à droite
    [back_left] plaque { $shelf }, au fond à gauche
    [back] plaque { $shelf }, au fond
    [back_right] plaque { $shelf }, au fond à droite
   *[middle] plaque { $shelf }, au milieu
}
