### Not yet read by a native potter.

waiting = { $pieces ->
    [0] Keine glasierten Stücke warten auf einen Brand.
    [one] { $pieces } Stück wartet auf einen Brand.
   *[other] { $pieces } Stücke warten auf einen Brand.
}
no-firing-yet = Einen beginnen, wenn die Stücke trocken sind: Ofen und Kegel wählen, dann die Platten besetzen.
pieces = { $pieces ->
    [one] { $pieces } Stück
   *[other] { $pieces } Stücke
}
state = { $state ->
    [loading] wird eingesetzt
    [fired] gebrannt, auszuräumen
    [done] ausgeräumt
   *[newer] aus einer neueren Version
}
firing-title = Kegel { $cone }, { $kiln }
bisque-title = Schrühbrand bis Kegel { $cone }, { $kiln }
numbered-title = Brand { $number }: { $title }
unknown-form = Unbekannte Form
unknown-piece = Unbekanntes Stück
never-weighed = nicht gewogen
glaze-on-zone = { $zone ->
    [inside] { $glaze } innen
    [outside] { $glaze } außen
    [whole] { $glaze } innen und außen
   *[newer] { $glaze }, aus einer neueren Version
}
unknown-glaze-on-zone = { $zone ->
    [inside] unbekannte Glasur innen
    [outside] unbekannte Glasur außen
    [whole] unbekannte Glasur innen und außen
   *[newer] unbekannte Glasur, aus einer neueren Version
}
to-be-fired-again = noch einmal zu brennen
coat-label = { $zone ->
    [inside] Innen, { $glaze }
    [outside] Außen, { $glaze }
    [whole] Innen und außen, { $glaze }
   *[newer] Aus einer neueren Version, { $glaze }
}
unknown-glaze-coat-label = { $zone ->
    [inside] Innen, unbekannte Glasur
    [outside] Außen, unbekannte Glasur
    [whole] Innen und außen, unbekannte Glasur
   *[newer] Aus einer neueren Version, unbekannte Glasur
}
weighed = { $verdict ->
    [within] { $weight }, passt (Ziel { $aim })
    [short] { $weight }, zu wenig (Ziel { $aim })
    [over] { $weight }, zu viel (Ziel { $aim })
    [cannot_tell] { $weight }, unklar (Ziel { $aim })
   *[newer] { $weight } (Ziel { $aim })
}
place = { $place ->
    [front_left] Platte { $shelf }, vorn links
    [front] Platte { $shelf }, vorn
    [front_right] Platte { $shelf }, vorn rechts
    [left] Platte { $shelf }, links
    [right] Platte { $shelf }, rechts
    [back_left] Platte { $shelf }, hinten links
    [back] Platte { $shelf }, hinten
    [back_right] Platte { $shelf }, hinten rechts
   *[middle] Platte { $shelf }, Mitte
}
