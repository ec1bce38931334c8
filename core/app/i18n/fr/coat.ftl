### Not yet read by a native potter.

saved = Enregistré
wet-weight = Poids humide
bare-glazed = Nue, émaillée
verdict = Verdict
target-then = Cible à la pesée
aim-and-span = { $aim } ({ $span })
laydown = Dépôt
glaze-bucket = Émail, seau
sg = Densité
area = Surface
make-control = Prendre comme pièce témoin
no-longer-control = Ne plus prendre comme pièce témoin
control-marked = C’est maintenant une pièce témoin. Les cibles en tiennent compte.
control-unmarked = Ce n’est plus une pièce témoin.
removed = Couche retirée.
