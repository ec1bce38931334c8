### Not yet read by a native potter.

add-to-weigh = Ajoutez d’abord une forme, un émail et une balance. Vous pourrez alors peser une pièce.
no-area-to-glaze = « { $form } » n’a pas de surface à émailler. Ouvrez-la dans Atelier et donnez-en une.
form = Une forme
form-help = Une forme que vous tournez encore et encore, et ce qu’elle contient.
glaze = Un émail
glaze-help = Son nom, sa sensibilité à l’épaisseur, et la densité du seau.
scale = Une balance
scale-help = Sa portée et son échelon.
net = Couche, après tare
bare = Pièce nue
glazed = Pièce émaillée
glaze-and-bucket = { $glaze }, { $bucket }
tolerance = ±{ $tolerance } acceptés : « { $glaze } » est réglé sur « { $sensitivity ->
    [low] tolérant
    [high] sensible
   *[medium] normal
} ».
no-sg-yet = « { $bucket } » n’a pas encore de densité : laydown suppose { $sg }, et la cible ne vaut pas mieux que cela. Contrôlez le seau.
old-sg = Densité contrôlée { $when }. Remuez et contrôlez le seau : l’émail épaissit et décante.
impossible-density = La densité de la poudre de « { $glaze } » est impossible : laydown prend { $density }. Corrigez-la dans l’émail.
next-inside = Intérieur de cette pièce
next-outside = Extérieur de cette pièce
saved = Enregistré : { $form }, { $zone }, { $wet }, { $verdict }.
saved-with-code = Enregistré : { $form }, { $zone }, { $wet }, { $verdict }. Écrivez { $code } au crayon sur le pied.
some-form = Forme inconnue
nothing-today = Rien de pesé aujourd’hui.
today = { $coats ->
    [one] { $coats } couche aujourd’hui, { $within } bonne.
   *[other] { $coats } couches aujourd’hui, bonnes : { $within }.
}
