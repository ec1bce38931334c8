### Not yet read by a native potter.

new = Nouvelle pièce témoin
title = Pièce témoin
archive = Archiver cette pièce témoin
zone = Zone
net = Poids humide
net-help = Ce qu’une bonne couche a ajouté sur la balance, lu tout de suite.
weighs-nothing = Une bonne couche pèse quelque chose. Pesez la pièce avant et après l’émaillage.
too-much = Cette forme ne peut pas porter autant d’émail. Vérifiez le poids et la forme.
in-use = Enregistré. Les cibles en tiennent compte.
no-longer = Ne plus prendre comme pièce témoin
note = Pourquoi elle est réussie
note-hint = Brunit sur le bord
wet-at-sg = { $glaze } : { $wet } humide, densité { $sg }.
laydown = { $laydown }.
weighed = Pesée : { $moment }.
