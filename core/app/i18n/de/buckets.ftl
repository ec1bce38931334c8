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
flow-in = { $seconds } s, { $cup }
volume = Jetzt im Eimer
expected-sg = Erwartete Dichte heute
check-due = Nächste Prüfung
now = Jetzt
in-days = { $days ->
    [one] In { $days } Tag
   *[other] In { $days } Tagen
}
evaporation = Verdunstung
each-open-day = { $volume } je Tag, an dem er offen ist
pieces = { $pieces ->
    [one] Noch { $pieces } Stück
   *[other] Noch etwa { $pieces } Stück
}
changed-since = Seit der letzten Prüfung kam Wasser oder trockene Glasur dazu oder weg. Vor den nächsten Stücken die Dichte prüfen.
entry = { $what }: { $amount }
