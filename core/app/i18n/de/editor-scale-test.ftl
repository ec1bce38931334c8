### Not yet read by a native potter.

new = Eine Waage prüfen
title = Waagenprüfung
archive = Diese Prüfung archivieren
scale = Waage
readings = Zehn Ablesungen
readings-help = Die Waage auf null stellen. Ein Stück vom üblichen Gewicht auflegen, ablesen, abnehmen, auf null warten. Zehnmal.
shown-column = Anzeige, { $unit }
known = Bekanntes Gewicht, falls vorhanden
known-help = Ein Prüfgewicht, oder was eine andere verlässliche Waage zeigt.
known-shown = Anzeige dafür
both-weights = Das bekannte Gewicht eintippen und was die Waage dafür zeigt.
weigh-something = Eine Last zehnmal wiegen oder ein bekanntes Gewicht prüfen.
row-refused = Zeile { $row }: { $why }
saved = { $scale }: Prüfung gespeichert.
saved-and-used = { $scale }: Prüfung gespeichert. Beim Wiegen wird ab jetzt damit gerechnet.
repeats = { $loads ->
    [one] { $loads } Ablesung: Mittel { $mean }, Standardabweichung { $deviation } ({ $low } bis { $high }, in 95 von 100 Fällen).
   *[other] { $loads } Ablesungen: Mittel { $mean }, Standardabweichung { $deviation } ({ $low } bis { $high }, in 95 von 100 Fällen).
}
repeats-as-its-step = Sie wiederholt so gut wie ihre Teilung.
repeats-worse = Sie wiederholt schlechter als ihre Teilung. Waagerecht stellen, vor Zug schützen und noch einmal prüfen; beim Wiegen wird das berücksichtigt.
good-from = Gut für Aufträge ab { $from } bei ±{ $tolerance }; ab { $barely } entscheidet sie nur manche.
class-allows = Klasse { $class } erlaubt im Gebrauch ±{ $allowed } bei { $load }.
class-impossible = Keine Waage mit dieser Teilung und Höchstlast hat Klasse { $class }. Das Schild prüfen.
known-right = Richtig beim bekannten Gewicht: { $off } daneben, ±{ $allowed } ist erlaubt.
known-over = Sie zeigt { $off } zu viel; ±{ $allowed } ist erlaubt. Kalibrieren oder das Gewicht prüfen. Nach dem Tarieren gewogene Aufträge trifft das kaum.
known-under = Sie zeigt { $off } zu wenig; ±{ $allowed } ist erlaubt. Kalibrieren oder das Gewicht prüfen. Nach dem Tarieren gewogene Aufträge trifft das kaum.
too-few = { $loads ->
    [one] { $loads } Ablesung. Die Last { $wanted }-mal wiegen, mindestens { $fewest }-mal.
   *[other] { $loads } Ablesungen. Die Last { $wanted }-mal wiegen, mindestens { $fewest }-mal.
}
no-load = Zeile { $row } ist kein Gewicht, das diese Waage zeigen kann.
stray = Zeile { $row }, { $reading }, ist weit von den anderen. War es eine andere Last oder vertippt?
fits = { $advice ->
    [decides] gut für diesen Auftrag
    [only_just] entscheidet nur manche dieser Aufträge
    [too_coarse] zu grob für diesen Auftrag
   *[over_capacity] zu klein für dieses Stück
}
