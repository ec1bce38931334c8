### Not yet read by a native potter.

new = Nouvelle cuisson
title = Cuisson
begin = Commencer à enfourner
delete = Supprimer cette cuisson
kiln = Four
fires = Ce qui est cuit
glazed-ware = Pièces émaillées
bisque = Biscuit
bisque-detail = Terre nue, sans émail
date = Date
fired-on = Cuite le
number = Numéro de cuisson
number-impossible = Indiquez un nombre entier, par exemple 12.
name-hint = Marché d’automne
cone-aimed-at = Cône visé
cone = Cône { $cone }
cone-kind = Type de cône
cone-kind-help = Chaque type tombe à sa propre température.
program = Programme
program-hint = 100 °C par heure jusqu’à 600, puis 150 par heure, palier de 10 minutes
note = Remarque
saved = Cône { $cone }, { $kiln }.
witnesses = Cônes témoins
witnesses-help = Lisez-les après la cuisson : ils montrent combien de chaleur les pièces ont reçu.
no-witnesses = Aucun
cones = Cônes { $cones }
cone-below = Cône témoin inférieur
cone-at-aim = Cône témoin visé
cone-above = Cône témoin supérieur
witness-cone = Cône témoin { $cone }
witness-help = Tombé : la pointe est au niveau de la base. Amolli, c’est moins ; très tombé, c’est plus.
not-read-yet = Pas encore lu
none-stood = Aucun à cet endroit
cone-reading = { $reading ->
    [standing] Cône { $cone } debout
    [soft] Cône { $cone } amolli
    [hard] Cône { $cone } très tombé
    [flat] Cône { $cone } à plat
   *[at] Cône { $cone } tombé
}
top = Température maximale, °C
top-impossible = Une cuisson finit entre 500 et 1500 °C. Vérifiez le chiffre.
hours = Durée de cuisson, heures
hours-impossible = Une cuisson dure de quelques minutes à une semaine. Vérifiez le chiffre.
