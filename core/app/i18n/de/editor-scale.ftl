### Not yet read by a native potter.

new = Neue Waage
title = Waage
archive = Diese Waage archivieren
name-hint = Tischwaage
capacity = Höchstlast
capacity-help = Auf dem Schild mit Max bezeichnet.
step = Teilung
step-help = Auf dem Schild mit d bezeichnet: die kleinste Änderung, die sie anzeigt.
minimum = Mindestlast, falls bekannt
minimum-help = Auf dem Schild mit Min bezeichnet.
repeatability = Wiederholbarkeit, falls geprüft
repeatability-help = Ein Stück zehnmal wiegen: siehe Waagenprüfungen in der Werkstatt.
accurate-to = Ein nach dem Tarieren gewogener Auftrag ist auf ±{ $half-width } genau, in 95 von 100 Fällen.
class = Genauigkeitsklasse, falls bezeichnet
class-help = I, II, III oder IIII auf dem Schild.
no-class = Keine bezeichnet
