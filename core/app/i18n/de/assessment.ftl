### Not yet read by a native potter.

position = { $pieces ->
    [one] { $number } von { $pieces }
   *[other] { $number } von { $pieces }
}
fault-and-place = { $fault }, { $place }
fault-and-hint = { $fault }. { $about } { $hint }
inside = Innen
outside = Außen
overlap = Überlappung
saved = Gespeichert.
saved-found = Gespeichert: { $found }.
no-outline = Diese Form hat keinen Umriss zum Antippen.
fault-first = Erst einen Fehler antippen, dann die Stelle.
liking-range = Mit 1 bis 5 bewerten.
note-too-long = { $letters ->
    [one] Diese Notiz ist zu lang. Höchstens { $letters } Zeichen.
   *[other] Diese Notiz ist zu lang. Höchstens { $letters } Zeichen.
}

photo-unreadable = Dieses Bild ist nicht lesbar. Neu aufnehmen oder ein anderes wählen.
photo-saved = Foto gespeichert.
photo-removed = Foto entfernt.

sharp = Kanten und Splitter sind scharf. Handschuhe und Augenschutz tragen, und dieses Stück nicht bei Tisch verwenden.
crazed = Ware mit Haarrissen kann undicht sein und bei kochendem Wasser brechen. Nur eine Laborprüfung kann zeigen, ob etwas ins Essen übergeht.
thick-and-over = Beim Wiegen war es zu viel, das passt dazu. Nächstes Mal beim Ziel bleiben.
thick-but-short = Beim Wiegen war es zu wenig. Also eine andere Ursache suchen: Brand, Dichte im Eimer oder ein Tropfen.
thick-but-within = Beim Wiegen passte es. Werden noch mehr Stücke dick, liegt das Ziel vielleicht zu hoch.
thin-and-short = Beim Wiegen war es zu wenig, das passt dazu. Nächstes Mal beim Ziel bleiben.
thin-but-over = Beim Wiegen war es zu viel. Also eine andere Ursache suchen: Brand, Dichte im Eimer oder feuchte Schrühware.
thin-but-within = Beim Wiegen passte es. Werden noch mehr Stücke dünn, liegt das Ziel vielleicht zu tief.
