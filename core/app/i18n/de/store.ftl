### Not yet read by a native potter.

not-a-studio = Die Datei der Werkstatt stammt nicht von laydown und blieb unverändert. An einen anderen Ort verschieben, dann erneut versuchen.
newer = Eine neuere Version hat diese Werkstatt gespeichert; sie blieb unverändert. laydown aktualisieren, dann neu öffnen.
damaged = Die Datei der Werkstatt ist beschädigt und blieb unverändert. Retten, was lesbar ist: Das legt eine neue Datei an und behält die beschädigte.
busy = Diese Werkstatt ist in einem zweiten laydown geöffnet. Nichts ging verloren: das andere schließen, dann erneut versuchen.
full = Das Handy ist voll, darum wurde dies nicht gespeichert; sonst ging nichts verloren. Platz schaffen, dann erneut speichern.
not-allowed = Das Handy lässt laydown seine Datei nicht schreiben. In den Einstellungen des Handys erlauben, dann erneut versuchen.
no-folder = Der Ordner für diese Werkstatt fehlt. Anlegen, dann erneut versuchen.
removed = Die Datei der Werkstatt wurde verschoben oder gelöscht, während laydown offen war; dies wurde nicht gespeichert. Die Datei zurücklegen, dann laydown neu öffnen.
io = Der Speicher des Handys hat nicht geantwortet, darum wurde dies nicht ausgeführt; nichts ging verloren. Erneut versuchen.
forked = Zwei Handys haben unter einem Namen geschrieben, etwa wenn eine Werkstatt von einem aufs andere kopiert wurde. Hier wurde nichts geändert: eines davon als neues Handy einrichten.
bad-event = Dieser Eintrag ist nicht verwendbar. Nichts wurde geändert.
fault = In laydown ging etwas schief, aber nichts ging verloren. Bitte melden.

photo-empty = Die Kamera hat ein leeres Bild geliefert. Neu aufnehmen.
photo-heic = Das ist ein HEIC-Bild, das laydown nicht lesen kann. Die Kamera auf JPEG stellen, dann neu aufnehmen.
photo-no-picture = Dieses Bild ist weder JPEG noch PNG, oder ein Teil davon fehlt. Neu aufnehmen oder die Kamera auf JPEG stellen.
photo-too-large = Dieses Bild ist zu groß: höchstens 60 Megapixel und 64 MB. Die Kamera kleiner einstellen.

not-a-backup = Diese Datei ist keine Sicherung von laydown. Eine andere wählen.
backup-gone = Datei nicht gefunden. Neu wählen.
backup-unreadable = Diese Datei ist nicht lesbar. Auf das Handy kopieren, dann dort wählen.
backup-newer = Eine neuere Version hat diese Sicherung erstellt. laydown aktualisieren, dann wiederherstellen.
backup-damaged = Diese Sicherung ist beschädigt („{ $file }“ hat sich verändert), darum wurde nichts wiederhergestellt. Eine andere Sicherung verwenden.
backup-behind = In dieser Kopie fehlt manches aus dieser Werkstatt; die Daten sind auf diesem Handy sicher. Die Sicherung neu erstellen.
journal-damaged = Dieses Journal ist beschädigt, darum wurde nichts wiederhergestellt. Eine andere Datei verwenden.
backup-partly = { $events ->
    [one] { $events } Eintrag dieser Datei wurde übernommen, dann brach es ab. { $why } Was übernommen wurde, ist sicher: für den Rest die Datei erneut wiederherstellen.
   *[other] { $events } Einträge dieser Datei wurden übernommen, dann brach es ab. { $why } Was übernommen wurde, ist sicher: für den Rest die Datei erneut wiederherstellen.
}

refused = { $entries ->
    [one] Nicht übernommen: { $entries } Eintrag, der nicht von laydown stammen kann ({ $why ->
        [too_large] zu groß
        [too_many] zu viele zu einer Sache
        [too_many_devices] zu viele Handys
       *[no_such_number] unmögliche Zahlen
    }). Alles andere wurde übernommen.
   *[other] Nicht übernommen: { $entries } Einträge, die nicht von laydown stammen können ({ $why ->
        [too_large] zu groß
        [too_many] zu viele zu einer Sache
        [too_many_devices] zu viele Handys
       *[no_such_number] unmögliche Zahlen
    }). Alles andere wurde übernommen.
}
refused-forked = { $entries ->
    [one] Nicht übernommen: { $entries } Eintrag von einem Handy, dessen Name zweimal verwendet wird. Die Daten sind sicher: eines der beiden unter Werkstatt, Handys als neues Handy einrichten.
   *[other] Nicht übernommen: { $entries } Einträge von einem Handy, dessen Name zweimal verwendet wird. Die Daten sind sicher: eines der beiden unter Werkstatt, Handys als neues Handy einrichten.
}
refused-of-others = { $entries ->
    [one] Nicht übernommen: { $entries } Eintrag von anderen Handys.
   *[other] Nicht übernommen: { $entries } Einträge von anderen Handys.
}

recovered-nothing = Kein Eintrag war lesbar. Die beschädigte Datei liegt neben einer neuen, leeren: Gibt es eine Sicherung, jetzt wiederherstellen.
recovered-all = { $saved ->
    [one] Der eine bekannte Eintrag wurde gerettet. Die beschädigte Datei liegt neben der neuen.
   *[other] Alle { $saved } bekannten Einträge wurden gerettet. Die beschädigte Datei liegt neben der neuen.
}
recovered-some = { $saved ->
    [one] { $saved } von { $all } Einträgen wurde gerettet, und die beschädigte Datei liegt neben der neuen. Gibt es eine Sicherung, jetzt wiederherstellen: Sie kann den Rest zurückbringen.
   *[other] { $saved } von { $all } Einträgen wurden gerettet, und die beschädigte Datei liegt neben der neuen. Gibt es eine Sicherung, jetzt wiederherstellen: Sie kann den Rest zurückbringen.
}

segment-name = Die Journaldatei „{ $name }“ ist nicht verwendbar: So benennt laydown keine Datei.
segment-cut = Die Journaldatei „{ $name }“ ist nicht verwendbar: Ein Teil fehlt.
segment-packing = Die Journaldatei „{ $name }“ ist nicht verwendbar: Sie ist beschädigt.
segment-sum = Die Journaldatei „{ $name }“ ist nicht verwendbar: Sie ist beschädigt (ihre Prüfsumme stimmt nicht).
segment-foreign = Die Journaldatei „{ $name }“ ist nicht verwendbar: Sie stammt nicht von laydown.
segment-newer = Die Journaldatei „{ $name }“ ist nicht verwendbar: Eine neuere Version hat sie geschrieben. laydown aktualisieren.
segment-device = Die Journaldatei „{ $name }“ ist nicht verwendbar: Sie enthält Einträge eines anderen Handys.
segment-gap = Die Journaldatei „{ $name }“ ist nicht verwendbar: Sie enthält nicht die Einträge, die ihr Name nennt.
segment-line = Die Journaldatei „{ $name }“ ist nicht verwendbar: Zeile { $line } ist nicht lesbar.
segment-too-large = Die Journaldatei „{ $name }“ ist nicht verwendbar: Sie ist zu groß.
