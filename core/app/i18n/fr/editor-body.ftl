### Not yet read by a native potter.

new = Nouvelle terre
title = Terre
archive = Archiver cette terre
name-hint = Grès blanc
to-bisque = Retrait au biscuit, %
to-bisque-help = Par rapport à la taille tournée. Tracez deux repères à 100 mm l’un de l’autre dans la terre humide : chaque millimètre perdu fait 1 %.
to-fired = Retrait après cuisson d’émail, %
to-fired-help = Aussi par rapport à la taille tournée : les mêmes repères après la cuisson d’émail.
density = Densité du biscuit, g/ml
density-help = Si elle est mesurée : poids sec divisé par le volume extérieur. Avec elle, le poids d’une pièce biscuitée révèle une cote mal saisie.
density-impossible = Le biscuit pèse de 1 à 3 g par ml. Vérifiez le chiffre, ou laissez vide.
grew = Une pièce cuite était plus grande de { $size } au biscuit, avec { $area } de surface à émailler en plus.
