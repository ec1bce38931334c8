### Not yet read by a native potter.

nothing = Nichts Neues von den anderen Handys.
news = { $news ->
    [one] { $news } Ding wurde auf einem anderen Handy archiviert, entfernt oder umbenannt
   *[other] { $news } Dinge wurden auf anderen Handys archiviert, entfernt oder umbenannt
}
disagreements = { $clashes ->
    [one] Zwei Handys sagen in { $clashes } Fall Verschiedenes
   *[other] Zwei Handys sagen in { $clashes } Fällen Verschiedenes
}
archived = { $thing }: archiviert auf { $phone }. Zu finden unter „Archiviert“.
removed = { $thing }: entfernt auf { $phone }.
renamed = { $thing }: hieß { $before }, umbenannt auf { $phone }.
ours = Dieses Handy: { $value }
theirs = { $phone }: { $value }
both-in-name = Der Name wird { $names }.
both-in-note = Was gilt, bleibt, und die Notiz nennt das andere.
not-both = Beides geht hier nicht. Eines wählen.
other-phone-said = Das andere Handy sagte: { $value }.
settled = Entschieden.
