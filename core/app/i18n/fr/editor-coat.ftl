### Not yet read by a native potter.

title = Corriger cette couche
piece = Pièce
piece-of-its-own = Une pièce à part
only-coat = C’est la seule couche de { $piece }, qui est dans une cuisson ou a des photos. Corriger plutôt la zone ou le poids, ou retirer d’abord la pièce de la cuisson.
zone = Zone
bucket = Émail, seau
net = Couche pesée
added = Ajouté en retouche
rubbed-off = Gratté
touch-up-help = Ce qui a été ajouté au pinceau ou gratté après la pesée. Laisser vide si rien.
wet-and-verdict = { $wet } en tout : { $verdict }.
corrected = Couche corrigée. Son historique montre ce qu’elle était.
hand = Qui a émaillé
dip = Trempage ou versage, secondes
dip-help = De l’entrée à la sortie. Quatre couches d’un seau donnent une idée de la durée.
dip-impossible = Un trempage dure de 0,5 à 600 secondes.
