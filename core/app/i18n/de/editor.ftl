### Not yet read by a native potter.

save = Speichern
name = Name
glaze = Glasur
form = Form
dipped-at = Dichte beim Tauchen
laydown-is = Auftragsmenge { $laydown }.
add-first = { $kind ->
    [form] Erst eine Form hinzufügen.
    [kiln] Erst einen Ofen hinzufügen.
   *[glaze] Erst eine Glasur hinzufügen.
}
saved = Gespeichert.
is-saved = { $name } ist gespeichert.
is-archived = { $name } ist archiviert.
firing-removed = Der Brand ist entfernt.
piece-removed = Das Stück ist entfernt.
piece-was-fired = Dieses Stück wurde nach einem Brand angesehen, also bleibt es.
control-archived = Das Vergleichsstück ist archiviert.
cannot-be-removed = Das lässt sich nicht entfernen.
nothing-to-save = Hier gibt es nichts zu speichern.
write-here = { $field }: hier etwas eingeben.
type-here = { $field }: hier eingeben.
choose-here = { $field }: hier auswählen.
fill-in = { $field }: ausfüllen.
choose-from-list = { $field }: aus der Liste wählen.
too-long = Zu lang. Höchstens { $most } Zeichen.
too-short = Zu kurz. Mindestens { $fewest } Zeichen.
no-day = Einen Tag wählen, höchstens ein Jahr voraus.
not-on-this-phone = Nicht auf diesem Handy
secret-saved = Auf diesem Handy gespeichert. Zum Ersetzen neu eingeben.
entry-removed = Aus dem Notizbuch entfernt.
