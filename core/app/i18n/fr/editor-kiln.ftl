### Not yet read by a native potter.

new = Nouveau four
title = Four
archive = Archiver ce four
name-hint = Four du jardin
round = Plaques rondes
across-round = Diamètre des plaques
across = Largeur des plaques
deep = Profondeur des plaques
shelves = Nombre de plaques
shelf-impossible = Une plaque mesure entre 5 cm et 3 m. Vérifiez le chiffre et l’unité.
shelves-impossible = Un four prend de 1 à { $most } plaques. Saisissez un nombre entier.
