### Not yet read by a native potter.

this-phone = dieses Handy
this-phone-named = dieses Handy ({ $name })
another-phone = ein anderes Handy
this-phone-row = Dieses Handy
this-phone-named-row = Dieses Handy ({ $name })
another-phone-row = Ein anderes Handy
entries-last = { $entries ->
    [one] { $entries } Eintrag, der letzte { $moment }
   *[other] { $entries } Einträge, der letzte { $moment }
}
no-entries = Noch nichts gespeichert
intro-with-location = Jedes Handy hat alles und arbeitet für sich. Der Abgleich bringt alle auf den gleichen Stand.
intro-without-location = Jedes Handy hat alles und arbeitet für sich. Zum Teilen eine Sicherung an das andere Handy schicken und dort wiederherstellen.
new-phone-set-up = Die anderen sehen hier jetzt ein neues Handy. Alles bisher Gespeicherte bleibt, wie es ist.
clock-behind = { $days ->
    [one] Manche Einträge sind der Uhr dieses Handys bis zu { $days } Tag voraus. Nichts ist verloren. Das Datum richtig stellen, hier oder auf dem anderen Handy.
   *[other] Manche Einträge sind der Uhr dieses Handys bis zu { $days } Tage voraus. Nichts ist verloren. Das Datum richtig stellen, hier oder auf dem anderen Handy.
}
