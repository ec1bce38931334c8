### Not yet read by a native potter.

none-like-that = Kein Stück passt. Einen Filter entfernen.
none-with-code = Kein Stück hat diesen Code.
too-many = { $shown ->
    [one] Nur das zuletzt glasierte Stück wird gezeigt. Für andere einen Filter hinzufügen.
   *[other] Nur die { $shown } zuletzt glasierten Stücke werden gezeigt. Für andere einen Filter hinzufügen.
}

form = Form
any-form = Jede Form
glaze = Glasur
any-glaze = Jede Glasur
fault = Fehler
any-fault = Mit oder ohne Fehler
firing = Brand
any-firing = Jeder Brand oder keiner
glazed = Glasiert
any-time = Jederzeit
laydown = Auftragsmenge
any-laydown = Jede Auftragsmenge
glazed-when = { $when ->
    [month] In den letzten 30 Tagen
    [year] In den letzten 365 Tagen
   *[before] Länger her
}
laydown-between = { $from } bis { $to }
laydown-under = Unter { $to }
laydown-from = { $from } oder mehr
