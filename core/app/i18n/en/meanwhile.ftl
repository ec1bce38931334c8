### What other phones archived, removed or renamed meanwhile, and where two phones say different things.

nothing = Nothing new from your other phones.
# A row that leads here. $news: how many things.
news = { $news ->
    [one] { $news } thing was archived, removed or renamed on another phone
   *[other] { $news } things were archived, removed or renamed on other phones
}
disagreements = { $clashes ->
    [one] Two phones disagree on { $clashes } thing
   *[other] Two phones disagree on { $clashes } things
}
# $thing: such as "Glaze: Ash white". $phone: "another phone", or a name.
archived = { $thing }: archived on { $phone }. You find it under Archived.
removed = { $thing }: removed on { $phone }.
# $before: the name it had.
renamed = { $thing }: it was { $before } until { $phone } renamed it.
# $value: such as "Wet weight: 19.6 g".
ours = This phone: { $value }
theirs = { $phone }: { $value }
# $names: both names.
both-in-name = The name becomes { $names }.
both-in-note = The one that counts stays, and the note says the other.
not-both = Both cannot be kept here. Choose one.
# $value: such as "Wet weight: 19.6 g".
other-phone-said = The other phone said: { $value }.
settled = Settled.
