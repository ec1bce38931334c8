### Not yet read by a native potter.

choose = Ein Stück wählen
control-piece = Vergleichsstück
firing = Brand
came-out = Ergebnis

glaze = { $zone ->
    [inside] Innen: Glasur
    [outside] Außen: Glasur
   *[whole] Innen und außen: Glasur
}
wet-weight = { $zone ->
    [inside] Innen: Nassgewicht
    [outside] Außen: Nassgewicht
   *[whole] Innen und außen: Nassgewicht
}
laydown = { $zone ->
    [inside] Innen: Auftragsmenge
    [outside] Außen: Auftragsmenge
   *[whole] Innen und außen: Auftragsmenge
}
reading = { $zone ->
    [inside] Innen: Urteil
    [outside] Außen: Urteil
   *[whole] Innen und außen: Urteil
}
sg = { $zone ->
    [inside] Innen: Dichte im Eimer
    [outside] Außen: Dichte im Eimer
   *[whole] Innen und außen: Dichte im Eimer
}
glazed = { $zone ->
    [inside] Innen: glasiert
    [outside] Außen: glasiert
   *[whole] Innen und außen: glasiert
}
