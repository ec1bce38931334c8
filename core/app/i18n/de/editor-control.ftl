### Not yet read by a native potter.

new = Neues Vergleichsstück
title = Vergleichsstück
archive = Dieses Vergleichsstück archivieren
zone = Bereich
net = Nassgewicht
net-help = Was ein guter Auftrag auf der Waage ausmachte, sofort abgelesen.
weighs-nothing = Ein guter Auftrag wiegt etwas. Das Stück vor und nach dem Glasieren wiegen.
too-much = So viel Glasur kann diese Form nicht tragen. Gewicht und Form prüfen.
in-use = Gespeichert. Die Ziele richten sich jetzt danach.

no-longer = Nicht mehr als Vergleichsstück nehmen
note = Warum es richtig ist
note-hint = Bricht am Rand braun
wet-at-sg = { $glaze }: { $wet } nass bei Dichte { $sg }.
laydown = { $laydown }.
weighed = Gewogen: { $moment }.
