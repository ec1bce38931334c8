### Not yet read by a native potter.

new = { $glaze }: neuer Eimer
title = { $glaze }: Eimer
archive = Diesen Eimer archivieren
name-hint = Großer Eimer
volume = Menge beim Ansetzen, falls bekannt
diameter = Breite innen
diameter-help = Auf halber Höhe. Damit wird ein Füllstand im Eimer zu einem Volumen.
depth = Tiefe bis zum Rand
holds = Fasst { $volume } bis zum Rand.
empty = Leergewicht
empty-help = Damit sagt das Gewicht des Eimers, wie viel Glasur darin ist.
