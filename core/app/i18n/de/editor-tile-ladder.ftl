### Not yet read by a native potter.

title = Leiter aus Probeplättchen
save = Diese Plättchen speichern
count = Wie viele Plättchen
count-help = In gleichen Schritten von 60% bis 140% des Ziels der Glasur. Bei ungerader Zahl liegt eines auf dem Ziel.
count-impossible = Eine Leiter hat { $fewest } bis { $most } Plättchen.
sg = Dichte des Eimers
firing = In einen Brand einsetzen
no-firing = Noch nicht
aim = Ziel dieser Glasur: { $laydown }.
rung = { $label }: { $wet } nass, { $share } des Ziels.
scratch = Die Bezeichnung vor dem Schrühbrand in jedes Plättchen ritzen oder mit Unterglasur schreiben: Bleistift verbrennt.
thin-ones = Plättchen unter { $share } des Ziels zeigen nur das dünne Ende; für Ziele zählen sie nicht.
planned = { $tiles ->
    [one] { $tiles } Plättchen geplant. Den Auftrag wiegen und in seinen Eintrag tippen.
   *[other] { $tiles } Plättchen geplant. Jeden Auftrag wiegen und in seinen Eintrag tippen.
}
piece = Probeplättchen { $label }
section = Leitern aus Probeplättchen
add = Eine Leiter planen
none = Eine Glasur von dünn bis dick auf einer Reihe Plättchen zeigt, welche Dicke sie will.
