### Not yet read by a native potter.

new = Pièces non pesées
title = Pièce
remove = Supprimer cette pièce
name-hint = Théière, ou à qui elle est
code = Code ou marque sur le pied
code-help = Il permet de retrouver la pièce.
is-weighed = Ce code est celui d’une pièce pesée : { $piece }. Cochez-la dans la liste des pièces en attente.
no-form = Aucune de mes formes
form-help = Une forme lui donne sa taille sur la plaque.
how-many = Combien
which-shelf = Plaque
shelf = Plaque { $number }
pieces-impossible = Ajoutez de 1 à { $most } pièces à la fois.
name-or-code = Donnez un nom, un code ou une forme.
added = { $pieces ->
    [one] { $pieces } pièce sur la plaque { $shelf }.
   *[other] { $pieces } pièces sur la plaque { $shelf }.
}
