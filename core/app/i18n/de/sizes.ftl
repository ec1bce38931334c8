### Not yet read by a native potter.

nothing-known = Noch keine Menge ist als richtig bekannt. Einen guten Auftrag als Vergleichsstück nehmen oder unter Werkstatt ein Vergleichsstück hinzufügen.
intro = Die Mengen unten gelten heute für { $glaze } bei Dichte { $sg }.

the-form-gone-by = Nach dieser Form richten sich die anderen.
by-capacity = { $times }-fache Fläche: fasst { $ours } gegenüber { $theirs }, und die Fläche wächst mit dem Volumen hoch zwei Drittel.
by-area = { $times }-fache Fläche: { $ours } gegenüber { $theirs }.
