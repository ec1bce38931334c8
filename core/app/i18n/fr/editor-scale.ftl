### Not yet read by a native potter.

new = Nouvelle balance
title = Balance
archive = Archiver cette balance
name-hint = Balance d’établi
capacity = Portée
capacity-help = Marquée Max sur sa plaque.
step = Échelon
step-help = Marqué d sur sa plaque : le plus petit écart qu’elle affiche.
minimum = Minimum, s’il est connu
minimum-help = Marqué Min sur sa plaque.
repeatability = Répétabilité, si elle est testée
repeatability-help = Pesez dix fois une même pièce : voir Tests de balance dans l’atelier.
accurate-to = Une couche pesée après tare est exacte à ±{ $half-width }, 95 fois sur 100.
class = Classe de précision, si elle est marquée
class-help = I, II, III ou IIII sur sa plaque.
no-class = Aucune
