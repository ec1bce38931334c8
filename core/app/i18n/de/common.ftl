### Not yet read by a native potter.

missing = { $what ->
    [body] Diese Masse ist nicht mehr in der Werkstatt. Eine andere wählen.
    [bucket] Dieser Eimer ist nicht mehr in der Werkstatt. Einen anderen wählen.
    [coat] Dieser Auftrag ist nicht mehr in der Werkstatt. Einen anderen wählen.
    [check] Diese Prüfung ist nicht mehr in der Werkstatt. Eine andere wählen.
    [bucket_entry] Dieser Eintrag ist nicht mehr in der Werkstatt. Einen anderen wählen.
    [control_piece] Dieses Vergleichsstück ist nicht mehr in der Werkstatt. Ein anderes wählen.
    [fault] Dieser Fehler steht nicht in der Liste. Einen anderen wählen.
    [firing] Dieser Brand ist nicht mehr in der Werkstatt. Einen anderen wählen.
    [form] Diese Form ist nicht mehr in der Werkstatt. Eine andere wählen.
    [glaze] Diese Glasur ist nicht mehr in der Werkstatt. Eine andere wählen.
    [glazed] Dieser Zeitraum steht nicht in der Liste. Einen anderen wählen.
    [kiln] Dieser Ofen ist nicht mehr in der Werkstatt. Einen anderen wählen.
    [laydown] Diese Spanne der Auftragsmenge steht nicht in der Liste. Eine andere wählen.
    [photograph] Dieses Foto ist nicht mehr in der Werkstatt. Ein anderes wählen.
    [piece] Dieses Stück ist nicht mehr in der Werkstatt. Ein anderes wählen.
    [scale] Diese Waage ist nicht mehr in der Werkstatt. Eine andere wählen.
    [shelf] Diese Platte gibt es in diesem Ofen nicht. Eine andere wählen.
    [target] Dieses Ziel ist nicht mehr in der Werkstatt. Ein anderes wählen.
    [test_tile] Dieses Probeplättchen ist nicht mehr in der Werkstatt. Ein anderes wählen.
    [thing] Das ist nicht mehr in der Werkstatt. Etwas anderes wählen.
    [to_weigh_with] Form, Eimer oder Waage ist nicht mehr in der Werkstatt. Neu wählen.
    [vessel] Dieses Messgefäß ist nicht mehr in der Werkstatt. Ein anderes wählen.
    [zone] Diesen Bereich gibt es hier nicht. Einen anderen wählen.
   *[record] Dieser Eintrag ist nicht mehr in der Werkstatt. Einen anderen wählen.
}
nothing-to-undo = Nichts rückgängig zu machen.
undone = Rückgängig gemacht.
form-and-zone = { $form }, { $zone }
newer = aus einer neueren Version
impossible-sg = { $number } (unmöglich)
sg = Dichte { $sg }

the-firing = Der Brand
the-scale-test = Die Waagenprüfung
the-control-piece = Das Vergleichsstück
the-check = Die Prüfung
the-entry = Der Eintrag
