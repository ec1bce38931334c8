### Not yet read by a native potter.

forms = Formen
add-form = Form hinzufügen
no-forms = Die Formen, die immer wieder gedreht werden.
bodies = Massen
add-body = Masse hinzufügen
no-bodies = Die Massen und wie sie schwinden: So lässt sich ein gebranntes Stück messen und das Schrühmaß ausrechnen.
bisque-lots = Schrühchargen
add-bisque-lot = Eine Schrühcharge hinzufügen
no-bisque-lots = Wie viel Wasser die Ware jedes Schrühbrands aufnimmt: Davon hängt ab, wie viel Glasur ein Tauchgang nimmt.
glazes = Glasuren
add-glaze = Glasur hinzufügen
no-glazes = Zu jeder, wie empfindlich sie auf die Schichtdicke reagiert.
controls = Vergleichsstücke
add-control = Vergleichsstück hinzufügen
no-controls = Ein Stück, das richtig geworden ist. Einen gespeicherten Auftrag als Vergleichsstück nehmen oder eine bewährte Menge eingeben.
tiles = Probeplättchen
add-tile = Probeplättchen hinzufügen
no-tiles = Den Auftrag auf einem Plättchen wiegen: Das zeigt, wie dick die Proben wirklich sind.
scales = Waagen
add-scale = Waage hinzufügen
no-scales = Jede mit Höchstlast und Teilung.
scale-tests = Waagenprüfungen
add-scale-test = Eine Waage prüfen
no-scale-tests = Ein Stück zehnmal wiegen: Dann ist bekannt, wie gut die Waage wiederholt.
kilns = Öfen
add-kiln = Ofen hinzufügen
no-kilns = Jeder mit seinen Platten, um den Besatz zu planen.
vessels = Messgefäße
add-vessel = Messgefäß hinzufügen
no-vessels = Ein beliebiges Glas: einmal mit Wasser wiegen, dann misst es immer die Dichte.

shrinks = schwindet { $bisque } bis zum Schrühbrand, { $fired } bis zum Glasurbrand
thickness = { $sensitivity ->
    [low] Dicke: gutmütig
    [high] Dicke: empfindlich
   *[medium] Dicke: normal
}
oblong-shelves = { $count ->
    [one] { $count } Platte, { $across } mal { $deep }
   *[other] { $count } Platten, { $across } mal { $deep }
}
round-shelves = { $count ->
    [one] { $count } Platte, Durchmesser { $across }
   *[other] { $count } Platten, Durchmesser { $across }
}
weighed-control = { $glaze }: { $wet } nass, { $moment }
typed-control = { $glaze }: { $wet } nass
tile = { $glaze }, { $laydown }: { $result }
tile-not-asked = { $glaze }, { $laydown }: Ergebnis angeben
scale-repeats = Standardabweichung { $deviation }, geprüft { $when }
scale-checked = bekanntes Gewicht geprüft { $when }
planned-tile = { $glaze }: geplant mit { $wet }
