### Not yet read by a native potter.

none-like-that = Aucune pièce ne correspond. Retirez un filtre.
none-with-code = Aucune pièce n’a ce code.
too-many = { $shown ->
    [one] Seule la dernière pièce émaillée est montrée. Ajoutez un filtre pour voir les autres.
   *[other] Seules les { $shown } dernières pièces émaillées sont montrées. Ajoutez un filtre pour voir les autres.
}
form = Forme
any-form = Toutes les formes
glaze = Émail
any-glaze = Tous les émaux
fault = Défaut
any-fault = Avec ou sans défauts
firing = Cuisson
any-firing = Toutes les cuissons, ou aucune
glazed = Émaillage
any-time = N’importe quand
laydown = Grammage
any-laydown = Tous les grammages
glazed-when = { $when ->
    [month] Dans les 30 derniers jours
    [year] Dans les 365 derniers jours
   *[before] Il y a plus longtemps
}
laydown-between = { $from } à { $to }
laydown-under = Moins de { $to }
laydown-from = { $from } ou plus
