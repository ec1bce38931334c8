### Not yet read by a native potter.

new = Neues Probeplättchen
title = Probeplättchen
archive = Dieses Probeplättchen archivieren
name-hint = Plättchen 12
area = Glasierte Fläche
area-help = Länge mal Breite des Glasierten; beide Seiten, wenn beide glasiert sind.
net = Auftrag, Nassgewicht
dry = Auftrag, Trockengewicht
dry-help = Ganz durchgetrocknet. Besser als das Nassgewicht, wenn Zeit dafür war.
no-weight = Das Trockengewicht angeben, oder das Nassgewicht und die Dichte.
