### Not yet read by a native potter.

none-like-that = Aucune pièce ne correspond. Retirez un filtre.
none-with-code = Aucune pièce n’a ce code.
first-of-more = { $shown ->
    [one] La { $shown } émaillée en dernier. Faites défiler pour la suite.
   *[other] Les { $shown } émaillées en dernier. Faites défiler pour la suite.
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
came-out = Résultat
any-answer = Tous les résultats
answer = { $answer ->
    [thin] Mince quelque part
    [right] Juste quelque part
   *[thick] Épais quelque part
}
liking = Note
any-liking = Toute note, ou aucune
stars = { $stars } sur 5
control = Pièce témoin
any-control = Pièces témoins et autres
only-control = Pièces témoins seulement
glazed-when = { $when ->
    [month] Dans les 30 derniers jours
    [year] Dans les 365 derniers jours
   *[before] Il y a plus longtemps
}
laydown-between = { $from } à { $to }
laydown-under = Moins de { $to }
laydown-from = { $from } ou plus
