### Not yet read by a native potter.

saved = Gespeichert
wet-weight = Nassgewicht
bare-glazed = Unglasiert, glasiert
added = Nachgebessert: dazu
rubbed-off = Abgerieben
verdict = Urteil
reading = Ablesung
confirmed = Weit vom Ziel, bestätigt
target-then = Ziel beim Wiegen
aim-and-span = { $aim } ({ $span })
aim-and-guess = { $aim }, geschätzt: vielleicht { $span }
laydown = Auftragsmenge
weighed-dry = Trocken gewogen
dipped = Getaucht oder gegossen
seconds = { $time } s
glaze-bucket = Glasur, Eimer
sg = Dichte
area = Fläche
make-control = Als Vergleichsstück nehmen
no-longer-control = Nicht mehr als Vergleichsstück nehmen
control-marked = Jetzt ein Vergleichsstück. Die Ziele richten sich danach.
control-unmarked = Kein Vergleichsstück mehr.
removed = Auftrag entfernt.
control-came-out = { $thickness ->
    [thin] Dieses Stück ist zu dünn geworden. Als Vergleichsstück eines wählen, das richtig geworden ist.
   *[thick] Dieses Stück ist zu dick geworden. Als Vergleichsstück eines wählen, das richtig geworden ist.
}
control-was-off = { $verdict ->
    [short] Dieser Auftrag war beim Wiegen zu wenig, und wie er aus dem Ofen kam, ist nicht angegeben. Die Ziele trotzdem danach richten?
   *[over] Dieser Auftrag war beim Wiegen zu viel, und wie er aus dem Ofen kam, ist nicht angegeben. Die Ziele trotzdem danach richten?
}
control-not-judged = Ob dieses Stück richtig geworden ist, ist noch nicht angegeben. Die Ziele trotzdem danach richten?
control-not-fired = Dieses Stück ist noch nicht gebrannt; ob es richtig ist, lässt sich noch nicht wissen. Die Ziele trotzdem danach richten?
note = Notiz
