### Not yet read by a native potter.

new = Neue Glasur
title = Glasur
archive = Diese Glasur und ihre Eimer archivieren
name-hint = Ascheweiß
sensitivity = Wie empfindlich sie auf die Schichtdicke reagiert
accepted = ±{ $percent } wird akzeptiert
sg = Dichte im Eimer, falls geprüft
sg-help = Ein Liter, der 1450 g wiegt, hat die Dichte { $sg }. Prüfen geht auch später.
powder-density = Pulverdichte
powder-density-help = { $density } passt für die meisten Glasuren. Mehr bei viel Zirkon, Barium oder anderen schweren Oxiden.
starting-laydown = Auftragsmenge zum Start, g pro 100 cm²
starting-laydown-help = Trockene Glasur. Gilt, bis es ein Probeplättchen oder ein Vergleichsstück gibt.
powder-in-bucket = Der Eimer enthält { $powder } Pulver nach Gewicht.
first-bucket = Erster Eimer
