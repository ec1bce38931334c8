### Not yet read by a native potter.

new = Neuer Ofen
title = Ofen
archive = Diesen Ofen archivieren
name-hint = Gartenofen
round = Runde Ofenplatten
across-round = Durchmesser der Platten
across = Breite der Platten
deep = Tiefe der Platten
shelves = Anzahl der Platten
shelf-impossible = Eine Ofenplatte misst zwischen 5 cm und 3 m. Wert und Einheit prüfen.
shelves-impossible = Ein Ofen fasst 1 bis { $most } Platten. Eine ganze Zahl eingeben.
