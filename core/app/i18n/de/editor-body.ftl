### Not yet read by a native potter.

new = Neue Masse
title = Masse
archive = Diese Masse archivieren
name-hint = Weißes Steinzeug
to-bisque = Schwindung bis zum Schrühbrand, %
to-bisque-help = Vom gedrehten Maß. Im feuchten Ton zwei Striche im Abstand von 100 mm ritzen: Jeder verlorene Millimeter ist 1 %.
to-fired = Schwindung bis zum Glasurbrand, %
to-fired-help = Auch vom gedrehten Maß: dieselben Striche nach dem Glasurbrand.
density = Dichte der Schrühware, g/ml
density-help = Falls gemessen: Trockengewicht geteilt durch Außenvolumen. Damit verrät das Schrühgewicht ein falsch eingegebenes Maß.
density-impossible = Schrühware wiegt 1 bis 3 g je ml. Den Wert prüfen oder leer lassen.
grew = Ein gebranntes Stück war geschrüht { $size } größer und hatte { $area } mehr Fläche zu glasieren.
