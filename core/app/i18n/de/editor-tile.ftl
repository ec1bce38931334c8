### Not yet read by a native potter.

new = Neues Probeplättchen
title = Probeplättchen
archive = Dieses Probeplättchen archivieren
name-hint = Plättchen 12
area = Glasierte Fläche
area-help = Länge mal Breite des Glasierten; beide Seiten, wenn beide glasiert sind.
net = Auftrag, Nassgewicht
dry = Auftrag, Trockengewicht
dry-help = Ganz durchgetrocknet. Besser als das Nassgewicht, wenn Zeit dafür war.
no-weight = Das Trockengewicht angeben, oder das Nassgewicht und die Dichte.
size = Gemessen über
by-sides = Die Seiten
by-area = Die glasierte Fläche
long = Länge
wide = Breite
sides-help = Der glasierten Seite.
came-out = Ergebnis
came-out-help = Die Ziele richten sich erst nach einem Plättchen, wenn es gebrannt und richtig geworden ist.
takes = Bei Dichte { $sg } braucht dieses Plättchen { $wet } für das Ziel dieser Glasur, { $laydown }.
counts = { $result ->
    [right] Die Ziele richten sich nach diesem Plättchen.
    [thin] Zu dünn geworden: Für die Ziele zählt es nicht.
    [thick] Zu dick geworden: Für die Ziele zählt es nicht.
   *[not_fired] Für die Ziele zählt es erst, wenn es gebrannt und richtig geworden ist.
}
coats = Aufträge
coats-help = Von wie vielen Aufträgen das Gewicht ist.
so-many-coats = { $coats ->
    [one] { $coats } Auftrag
   *[other] { $coats } Aufträge
}
compare-with = Mit einer Form vergleichen
no-form = Mit keiner
as-thick-as = So dick wie { $wet } auf { $form }, { $zone }.
planned = Geplant: { $wet } nass.
