### Not yet read by a native potter.

saved = Gespeichert
wet-weight = Nassgewicht
bare-glazed = Unglasiert, glasiert
verdict = Urteil
target-then = Ziel beim Wiegen
aim-and-span = { $aim } ({ $span })
laydown = Auftragsmenge
glaze-bucket = Glasur, Eimer
sg = Dichte
area = Fläche
make-control = Als Vergleichsstück nehmen
no-longer-control = Nicht mehr als Vergleichsstück nehmen
control-marked = Jetzt ein Vergleichsstück. Die Ziele richten sich danach.
control-unmarked = Kein Vergleichsstück mehr.
removed = Auftrag entfernt.
