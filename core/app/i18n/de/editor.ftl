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
