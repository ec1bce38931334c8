### Not yet read by a native potter.

choose = Choisir une pièce
control-piece = pièce témoin
firing = Cuisson
came-out = Résultat
glaze = { $zone ->
    [inside] Intérieur : émail
    [outside] Extérieur : émail
   *[whole] Intérieur et extérieur : émail
}
wet-weight = { $zone ->
    [inside] Intérieur : poids humide
    [outside] Extérieur : poids humide
   *[whole] Intérieur et extérieur : poids humide
}
laydown = { $zone ->
    [inside] Intérieur : grammage
    [outside] Extérieur : grammage
   *[whole] Intérieur et extérieur : grammage
}
reading = { $zone ->
    [inside] Intérieur : verdict
    [outside] Extérieur : verdict
   *[whole] Intérieur et extérieur : verdict
}
sg = { $zone ->
    [inside] Intérieur : densité du seau
    [outside] Extérieur : densité du seau
   *[whole] Intérieur et extérieur : densité du seau
}
glazed = { $zone ->
    [inside] Intérieur : émaillage
    [outside] Extérieur : émaillage
   *[whole] Intérieur et extérieur : émaillage
}
