### Not yet read by a native potter.

title = Notiz: { $glaze }, { $bucket }
remove = Diesen Eintrag entfernen
what = Was
volume = Wie viel Wasser
amount = Wie viel trockene Glasur
amount-if-known = Wie viel, falls gewogen
never-dosed = laydown notiert das nur. Wie viel dazugehört, sagen eigene Tests und das Datenblatt.
weight = Gewicht von Eimer und Glasur
tare-bucket = Mit dem Leergewicht des Eimers wird sein Gewicht zu einem Volumen.
level = Füllstand über dem Boden
level-help = Vom Boden bis zur Glasur messen.
level-is = Das sind { $volume }.
measure-bucket = Mit der Breite des Eimers wird ein Füllstand zu einem Volumen.
date = Tag
note = Notiz
dust = Trockene Glasur staubt: Atemschutz tragen, ins Wasser geben, nass aufwischen.
saved = Notiert für { $bucket }.
