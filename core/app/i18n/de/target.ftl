### Not yet read by a native potter.

from-control = { $pieces ->
    [one] Vom Vergleichsstück dieser Form.
   *[other] Von den Vergleichsstücken dieser Form.
}
from-control-by-area = { $pieces ->
    [one] Vom Vergleichsstück der Form „{ $form }“, über die glasierte Fläche.
   *[other] Von den Vergleichsstücken der Form „{ $form }“, über die glasierte Fläche.
}
from-control-by-capacity = { $pieces ->
    [one] Vom Vergleichsstück der Form „{ $form }“, über das Fassungsvermögen.
   *[other] Von den Vergleichsstücken der Form „{ $form }“, über das Fassungsvermögen.
}
from-tiles = Von den Probeplättchen: { $laydown }.
from-start = Vom üblichen Startwert einer Glasur: { $laydown }.
from-sides = Was innen und außen zusammen brauchen.
from-import = Wie in der Tabelle notiert.

based-on-tiles = Beruht auf Probeplättchen, noch nicht auf Stücken.
based-on-nothing = Beruht noch auf keinem Stück. Ein gelungenes als Vergleichsstück speichern.
based-on-pots = { $pots ->
    [one] Beruht auf 1 Stück.
   *[other] Beruht auf { $pots } Stücken.
}

first-guess = Erste Schätzung: Die richtige Menge kann irgendwo zwischen { $low } und { $high } liegen.
most-likely = Die richtige Menge liegt höchstwahrscheinlich zwischen { $low } und { $high }.

no-area = „{ $form }“ hat keine glasierte Fläche. Das Fassungsvermögen angeben oder die Oberfläche messen.
unusable-control = Das Vergleichsstück der Form „{ $form }“ hat ein unmögliches Gewicht oder eine unmögliche Fläche. Berichtigen oder ein anderes Vergleichsstück wählen.
unusable-tile = Ein Probeplättchen dieser Glasur hat ein unmögliches Gewicht oder eine unmögliche Fläche. Berichtigen oder das Plättchen archivieren.
nothing-to-go-by = laydown weiß noch nicht, wie dick diese Glasur sein soll. Ein gelungenes Stück wiegen und als Vergleichsstück speichern.
no-number = Aus der Größe dieser Form und der Dichte dieses Eimers lässt sich kein Ziel berechnen. Beides prüfen.

tile-no-area = Die Fläche der glasierten Seite des Plättchens angeben.
tile-no-weight = Das Gewicht des Auftrags auf dem Plättchen angeben.
tile-too-much = So viel Glasur kann ein Plättchen dieser Größe nicht tragen. Gewicht und Fläche prüfen.
tile-is-thin = Dieses Plättchen trägt nur { $share } von dem, was die Stücke tragen werden, darum zählt es für die Ziele nicht. Ein dickeres glasieren.
