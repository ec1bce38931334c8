### Not yet read by a native potter.

new = Nouvelle cuisson
title = Cuisson
delete = Supprimer cette cuisson
kiln = Four
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
top-impossible = Une cuisson d’émail finit entre 500 et 1500 °C. Vérifiez le chiffre.
hours = Durée de cuisson, heures
hours-impossible = Une cuisson dure de quelques minutes à une semaine. Vérifiez le chiffre.
