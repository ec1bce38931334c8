### Not yet read by a native potter.

intro = Alles in einer Datei: Gewichte, Brände und Fotos. Eine Kopie außerhalb dieses Handys aufbewahren; sie lässt sich auf jedem Handy wiederherstellen. Wer die Datei hat, kann alles lesen.
last-backup = Letzte Sicherung: { $moment }.
none-yet = Auf diesem Handy gibt es noch keine Sicherung.
saved-and-verified = Sicherung gespeichert und geprüft: { $contents }.
restored = Wiederhergestellt: { $new }. Inhalt der Datei: { $held }.
all-here-already = Nichts wiederherzustellen. Schon auf diesem Handy: { $contents }.
nothing-new = Es gab nichts Neues wiederherzustellen.
photos-left-out = { $photos ->
    [one] { $photos } Foto war nicht lesbar und wurde ausgelassen: { $names }.
   *[other] { $photos } Fotos waren nicht lesbar und wurden ausgelassen: { $names }.
}
photo-name = „{ $letters }…“

entries = { $entries ->
    [one] { $entries } Eintrag
   *[other] { $entries } Einträge
}
entries-and-photos = { $entries ->
    [one] { $entries } Eintrag
   *[other] { $entries } Einträge
} und { $photos ->
    [one] { $photos } Foto
   *[other] { $photos } Fotos
}
with-missing-photos = { $missing ->
    [one] { $contents } ({ $missing } weiteres Foto nicht gefunden)
   *[other] { $contents } ({ $missing } weitere Fotos nicht gefunden)
}

last-backup-line = Letzte Sicherung: { $moment }
none-yet-line = Alles in einer Datei, zum Aufbewahren außerhalb des Handys

too-long-ago = { $days ->
    [one] Die letzte Sicherung ist { $days } Tag alt. Geht dieses Handy verloren, ist alles seither verloren.
   *[other] Die letzte Sicherung ist { $days } Tage alt. Geht dieses Handy verloren, ist alles seither verloren.
}
never = Es gibt noch keine Sicherung. Geht dieses Handy verloren, ist alles verloren: unter Werkstatt, Sicherung eine erstellen.

rhythm = { $rhythm ->
    [week] Jede Woche
    [month] Jeden Monat
   *[never] Nie
}
rhythm-not-listed = Aus der Liste wählen, wie oft.
no-folder = Kein Ordner gewählt.
folder-first = Erst einen Ordner für die Sicherungen wählen.
off = Die automatische Sicherung ist aus.
choose-folder = Einen Ordner für automatische Sicherungen wählen: auf einer Speicherkarte oder einen, den eine andere App auf den Computer kopiert.
automatic = { $rhythm ->
    [month] Sichert jeden Monat, wenn es Neues gibt. Behält die neuesten { $backups } und entfernt nur ältere Sicherungen, die laydown erstellt hat.
   *[week] Sichert jede Woche, wenn es Neues gibt. Behält die neuesten { $backups } und entfernt nur ältere Sicherungen, die laydown erstellt hat.
}
automatic-and-last = { $automatic } Letzte Sicherung: { $moment }.
not-made = { $trouble ->
    [place_gone] Keine Sicherung erstellt ({ $moment }): Sicherungsordner nicht gefunden. Die Daten sind auf diesem Handy sicher. Karte wieder einsetzen oder einen anderen Ordner wählen.
    [not_allowed] Keine Sicherung erstellt ({ $moment }): laydown darf nicht mehr in den Ordner schreiben. Den Ordner neu wählen.
    [place_full] Keine Sicherung erstellt ({ $moment }): Der Ordner ist voll. Dort Platz schaffen oder einen anderen Ordner wählen.
    [phone_full] Keine Sicherung erstellt ({ $moment }): Dieses Handy ist voll. Platz schaffen, dann erneut versuchen.
    [not_made] Keine Sicherung erstellt ({ $moment }): Auf diesem Handy ging etwas schief. „Sicherung erstellen“ antippen, um den Grund zu sehen.
    [not_whole] Keine Sicherung erstellt ({ $moment }): Die Datei im Ordner stimmt nicht mit dem überein, was laydown geschrieben hat. Erneut versuchen oder einen anderen Ordner wählen.
   *[no_answer] Keine Sicherung erstellt ({ $moment }): Der Ordner hat nicht geantwortet. Erneut versuchen oder einen anderen Ordner wählen.
}

journal = Journal als JSON-Zeilen
journal-detail = Jeder Eintrag, wie er gemacht wurde, für andere Programme. Ohne Fotos. laydown kann es wiederherstellen.
all-tables = Alle Tabellen
all-tables-detail = Eine Zip-Datei mit einer Datei je Tabelle
table = { $table ->
    [readings] Wägungen
    [pieces] Gebrannte Stücke
    [firings] Brände
    [buckets] Eimer
    [checks] Dichteprüfungen
    [glazes] Glasuren
   *[forms] Formen
}
table-detail = { $table ->
    [readings] Eine Zeile je Auftrag: Form, Glasur, Gewicht, Urteil
    [pieces] Eine Zeile je Stück in einem Brand
    [firings] Eine Zeile je Brand
    [buckets] Eine Zeile je Eimer, mit der letzten Dichte
    [checks] Eine Zeile je Prüfung
    [glazes] Eine Zeile je Glasur
   *[forms] Eine Zeile je Form, mit ihren Flächen
}
table-not-listed = Eine Tabelle aus der Liste wählen.
journal-written = { $entries ->
    [one] Gespeichert: { $entries } Eintrag. laydown kann ihn wie eine Sicherung wiederherstellen.
   *[other] Gespeichert: { $entries } Einträge. laydown kann sie wie eine Sicherung wiederherstellen.
}
tables-written = { $tables ->
    [one] Gespeichert: { $tables } Tabelle in einer Zip-Datei.
   *[other] Gespeichert: { $tables } Tabellen in einer Zip-Datei.
}
table-written = Gespeichert: { $table }. Die Datei mit einem Tabellenprogramm öffnen.
