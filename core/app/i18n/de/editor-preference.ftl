### Not yet read by a native potter.

title = Einheiten, Ton und Vibration
mass = Gewichte
volume = Volumen
area = Flächen
length = Längen
decimal = Dezimalzeichen
speak = Urteil ansagen
tick = Bei jeder Taste vibrieren
code-pieces = Jedes Stück mit Code
code-pieces-help = Auf den Fuß schreiben, um das Stück nach dem Brand zu erkennen. Aus: Gleiche Stücke werden zusammen als Serie gezählt.
phone = Name des Handys
phone-hint = Tablet am Waschbecken
hand = Wer glasiert
hand-hint = Leer lassen, wenn es nicht wichtig ist
hand-help = Dieser Name kommt auf jeden neuen Auftrag, bis er geändert wird. Unter Erkenntnisse steht dann, wie gleichmäßig jede Hand glasiert.
ask-dip = Nach Tauchzeiten fragen
ask-dip-help = Beim Wiegen: wie lange jeder Auftrag getaucht oder gegossen wurde. Nach vier Aufträgen aus einem Eimer gibt es einen Anhalt, wie lange.
