### Not yet read by a native potter.

forms = Formes
add-form = Ajouter une forme
no-forms = Les formes que vous tournez encore et encore.
bodies = Terres
add-body = Ajouter une terre
no-bodies = Vos terres et leur retrait, pour retrouver la taille au biscuit en mesurant une pièce cuite.
bisque-lots = Lots de biscuit
add-bisque-lot = Ajouter un lot de biscuit
no-bisque-lots = L’eau qu’absorbe chaque lot de biscuit : elle change ce que prend un trempage.
glazes = Émaux
add-glaze = Ajouter un émail
no-glazes = Chacun avec sa sensibilité à l’épaisseur.
controls = Pièces témoins
add-control = Ajouter une pièce témoin
no-controls = Une pièce réussie. Prenez une couche enregistrée comme pièce témoin, ou saisissez une quantité dont vous êtes sûr.
tiles = Plaquettes d’essai
add-tile = Ajouter une plaquette d’essai
no-tiles = Pesez la couche d’une plaquette pour savoir quelle épaisseur ont vraiment vos essais.
scales = Balances
add-scale = Ajouter une balance
no-scales = Chacune avec sa portée et son échelon.
scale-tests = Tests de balance
add-scale-test = Tester une balance
no-scale-tests = Pesez dix fois une pièce : laydown sait alors si la balance se répète bien.
kilns = Fours
add-kiln = Ajouter un four
no-kilns = Chacun avec ses plaques, pour prévoir un enfournement.
vessels = Récipients
add-vessel = Ajouter un récipient
no-vessels = N’importe quel bocal : pesé une fois avec de l’eau, il contrôle la densité pour toujours.
shrinks = retrait { $bisque } au biscuit, { $fired } après cuisson d’émail
thickness = { $sensitivity ->
    [low] Épaisseur : tolérant
    [high] Épaisseur : sensible
   *[medium] Épaisseur : normal
}
oblong-shelves = { $count ->
    [one] { $count } plaque de { $across } sur { $deep }
   *[other] { $count } plaques de { $across } sur { $deep }
}
round-shelves = { $count ->
    [one] { $count } plaque de { $across } de diamètre
   *[other] { $count } plaques de { $across } de diamètre
}
weighed-control = { $glaze } : { $wet } humide, { $moment }
typed-control = { $glaze } : { $wet } humide
tile = { $glaze }, { $laydown } : { $result }
tile-not-asked = { $glaze }, { $laydown } : dites comment elle est sortie
scale-repeats = écart type { $deviation }, testée { $when }
scale-checked = poids connu vérifié { $when }
planned-tile = { $glaze } : prévue avec { $wet }
