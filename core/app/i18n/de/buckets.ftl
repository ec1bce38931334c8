### Not yet read by a native potter.

no-bucket = Noch keine Eimer. Eine Glasur hinzufügen: Ihr erster Eimer kommt mit.
stir-and-check = Vor den nächsten Stücken bis zum Boden umrühren und die Dichte prüfen.
sg-not-checked = Dichte nicht geprüft

checked-and-coats = { $coats ->
    [one] Geprüft: { $when }, seitdem 1 Auftrag
   *[other] Geprüft: { $when }, seitdem { $coats } Aufträge
}
coats-so-far = { $coats ->
    [one] Bisher 1 Auftrag
   *[other] Bisher { $coats } Aufträge
}

powder-by-weight = Pulver nach Gewicht
dry-in-litre = Trockene Glasur je Liter
dry-in-bucket = Trockene Glasur im Eimer

flow = { $seconds } s im Auslaufbecher
