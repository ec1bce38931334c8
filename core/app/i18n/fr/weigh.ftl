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
seconds = Trempage, versage
seconds-unit = s
right-is = Cible : { $span }
may-be = Peut-être { $span }
every-digit = Saisissez tous les chiffres que montre la balance, par exemple { $example }.
did-you-mean = Vouliez-vous dire { $weight } ?
wrong-way-round = La pièce pèse moins émaillée que nue. Les deux poids sont-ils inversés ?
exchange = Inverser
tare-forgotten = { $weight }, c’est à peu près une pièce nue ({ $bare }) et sa couche. La tare a-t-elle été oubliée ?
weigh-two = Saisir aussi le poids à nu
twice-the-aim = { $weight }, c’est deux fois la cible de { $aim }. Sont-ce les deux couches ensemble, ou une tare oubliée ?
dry-already = { $weight }, c’est ce que pèsent { $wet } une fois l’eau partie. La couche est-elle déjà sèche ?
far-off = { $weight }, c’est loin de la cible de { $aim }. Est-ce exact ?
other-scale = La balance « { $scale } » ne peut pas montrer ce poids. Laquelle a servi ?
it-is-right = C’est exact
it-is-wet = Non, elle est humide
glaze-and-bucket = { $glaze }, { $bucket }
tolerance = ±{ $tolerance } acceptés : « { $glaze } » est réglé sur « { $sensitivity ->
    [low] tolérant
    [high] sensible
   *[medium] normal
} ».
no-sg-yet = « { $bucket } » n’a pas encore de densité : laydown suppose { $sg }, et la cible ne vaut pas mieux que cela. Contrôlez le seau.
old-sg = Densité contrôlée { $when }. Remuez et contrôlez le seau : l’émail épaissit et décante.
tiles-not-asked = { $count ->
    [one] { $count } plaquette d’essai de cet émail ne compte pas encore : dites dans Atelier comment elle est sortie du four.
   *[other] { $count } plaquettes d’essai de cet émail ne comptent pas encore : dites dans Atelier comment elles sont sorties du four.
}
sides-differ = L’intérieur et l’extérieur prennent { $sides } d’après leurs propres pièces témoins, mais un seul trempage prend { $dip } d’après les siennes. Retirez la pièce témoin qui est fausse.
impossible-density = La densité de la poudre de « { $glaze } » est impossible : laydown prend { $density }. Corrigez-la dans l’émail.
next-inside = Intérieur de cette pièce
next-outside = Extérieur de cette pièce
saved = Enregistré : { $form }, { $zone }, { $wet }, { $verdict }.
saved-with-code = Enregistré : { $form }, { $zone }, { $wet }, { $verdict }. Écrivez { $code } sur le pied au lavis de fer ou de cobalt, ou au crayon sous émail : le crayon ordinaire brûle.
saved-on-piece = Enregistré : { $form } { $code }, { $zone }, { $wet }, { $verdict }.
some-form = Forme inconnue
nothing-today = Rien de pesé aujourd’hui.
today = { $coats ->
    [one] { $coats } couche aujourd’hui, { $within } bonne.
   *[other] { $coats } couches aujourd’hui, bonnes : { $within }.
}

zone-of-piece = { $zone }, { $piece }
zone-of-same-piece = { $zone }, même pièce
this-piece = Cette pièce
wall-is-wet = { $piece } : { $zone } émaillé { $ago }. La paroi est encore mouillée et prend moins d’émail : laisser sécher d’abord.
wall-may-be-damp = { $piece } : { $zone } émaillé { $ago }. La paroi peut être encore humide et prendre moins d’émail : laisser sécher d’abord.
glazed-before = { $piece } : { $zone } émaillé { $ago }.
insides-waiting = Intérieurs en attente de l’extérieur
other-unfired = Autres pièces non cuites
new-piece = Nouvelle pièce
nothing-unfired = Aucune pièce non cuite n’a de couche.
no-piece-with-code = Aucune pièce n’a le code { $code }. Vérifier ce qui est écrit sur le pied.
form-and-code = { $form }, { $code }
its-coat-was-undone = Sa couche a été annulée
glazes-and-ago = { $glazes }, { $ago }
weigh-again = Repeser
weigh-code-again = Repeser { $code }
already-carries = { $coats ->
    [one] Cette zone a déjà une couche : { $laydown }.
   *[other] Cette zone a déjà { $coats } couches : { $laydown } en tout.
}
with-this-coat = Avec cette couche, elle porte { $laydown }.
glazed-by = Émaillé par { $hand }. À changer dans l'atelier, sous les unités.
dip-hint = { $dips ->
    [one] Environ { $time } s pour cette cible, { $from } à { $to } : d’après { $dips } couche de ce seau. La balance décide.
   *[other] Environ { $time } s pour cette cible, { $from } à { $to } : d’après { $dips } couches de ce seau. La balance décide.
}
