### Not yet read by a native potter.

nothing-known = Aucune bonne quantité n’est encore connue. Prenez une couche qui vous plaît comme pièce témoin, ou ajoutez une pièce témoin dans Atelier.
intro = Les quantités ci-dessous valent pour « { $glaze } » aujourd’hui, à la densité { $sg }.
the-form-gone-by = Les autres formes sont calculées d’après celle-ci.
by-capacity = { $times } fois la surface : elle contient { $ours } contre { $theirs }, et la surface croît moins vite que cela.
by-area = { $times } fois la surface : { $ours } contre { $theirs }.
