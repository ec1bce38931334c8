### Not yet read by a native potter.

new = Neues Messgefäß
title = Messgefäß
archive = Dieses Messgefäß archivieren
name-hint = Marmeladenglas
empty = Leergewicht
empty-help = Innen und außen trocken.
with-water = Gewicht mit Wasser
with-water-help = Randvoll oder bis zu einer geritzten Linie. Mit Glasur bis zur selben Linie füllen.
temperature = Wassertemperatur, °C
holds = Fasst { $volume }.
