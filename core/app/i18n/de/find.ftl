### Not yet read by a native potter.

none-like-that = Kein Stück passt. Einen Filter entfernen.
none-with-code = Kein Stück hat diesen Code.
first-of-more = { $shown ->
    [one] Das { $shown } zuletzt glasierte. Scrollen für mehr.
   *[other] Die { $shown } zuletzt glasierten. Scrollen für mehr.
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
came-out = Ergebnis
any-answer = Jedes Ergebnis
answer = { $answer ->
    [thin] Irgendwo dünn
    [right] Irgendwo richtig
   *[thick] Irgendwo dick
}
liking = Bewertung
any-liking = Jede Bewertung, oder keine
stars = { $stars } von 5
control = Vergleichsstück
any-control = Vergleichsstücke und andere
only-control = Nur Vergleichsstücke
glazed-when = { $when ->
    [month] In den letzten 30 Tagen
    [year] In den letzten 365 Tagen
   *[before] Länger her
}
laydown-between = { $from } bis { $to }
laydown-under = Unter { $to }
laydown-from = { $from } oder mehr
