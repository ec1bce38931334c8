### Not yet read by a native potter.

new = Neuer Brand
title = Brand
begin = Einsetzen beginnen
delete = Diesen Brand entfernen
kiln = Ofen
fires = Was gebrannt wird
glazed-ware = Glasierte Ware
bisque = Schrühbrand
bisque-detail = Roher Ton, keine Glasur
date = Datum
fired-on = Gebrannt am
number = Nummer des Brandes
number-impossible = Eine ganze Zahl nehmen, etwa 12.
name-hint = Herbstmarkt
cone-aimed-at = Zielkegel
cone = Kegel { $cone }
cone-kind = Kegelart
cone-kind-help = Jede Art fällt bei ihrer eigenen Temperatur.
program = Programm
program-hint = 100 °C je Stunde bis 600, dann 150 je Stunde, 10 Minuten halten
note = Notiz
saved = Kegel { $cone }, { $kiln }.

witnesses = Brennkegel
witnesses-help = Nach dem Brand ablesen: Sie zeigen, wie viel Wärme die Ware bekommen hat.
no-witnesses = Keine
cones = Kegel { $cones }
cone-below = Brennkegel unter dem Ziel
cone-at-aim = Brennkegel am Ziel
cone-above = Brennkegel über dem Ziel
witness-cone = Brennkegel { $cone }
witness-help = Gefallen: Die Spitze steht auf Höhe des Fußes. Angeneigt ist weniger, stark gefallen ist mehr.
not-read-yet = Noch nicht abgelesen
none-stood = Keiner da
cone-reading = { $reading ->
    [standing] Kegel { $cone } steht
    [soft] Kegel { $cone } angeneigt
    [hard] Kegel { $cone } stark gefallen
    [flat] Kegel { $cone } liegt flach
   *[at] Kegel { $cone } gefallen
}

top = Höchste Temperatur, °C
top-impossible = Ein Brand endet zwischen 500 und 1500 °C. Den Wert prüfen.
hours = Brenndauer, Stunden
hours-impossible = Ein Brand dauert wenige Minuten bis eine Woche. Den Wert prüfen.
