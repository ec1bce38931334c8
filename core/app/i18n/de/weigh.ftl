### Not yet read by a native potter.

add-to-weigh = Erst eine Form, eine Glasur und eine Waage hinzufügen. Dann lässt sich ein Stück wiegen.
no-area-to-glaze = „{ $form }“ hat keine Fläche zum Glasieren. Unter Werkstatt öffnen und eine angeben.
form = Eine Form
form-help = Eine Form, die immer wieder gedreht wird, und wie viel sie fasst.
glaze = Eine Glasur
glaze-help = Ihr Name, wie empfindlich sie auf die Schichtdicke reagiert, und die Dichte im Eimer.
scale = Eine Waage
scale-help = Höchstlast und Teilung.

net = Auftrag, nach dem Tarieren
bare = Unglasiertes Stück
glazed = Glasiertes Stück
seconds = Tauchen, gießen
seconds-unit = s

right-is = Richtig: { $span }
may-be = Vielleicht { $span }
every-digit = Alle Ziffern eingeben, die die Waage zeigt, etwa { $example }.

did-you-mean = { $weight } gemeint?
wrong-way-round = Das Stück wiegt glasiert weniger als unglasiert. Sind die beiden Gewichte vertauscht?
exchange = Tauschen
tare-forgotten = { $weight } ist etwa ein unglasiertes Stück ({ $bare }) mit seinem Auftrag. Wurde nicht tariert?
weigh-two = Auch das Gewicht unglasiert eingeben
twice-the-aim = { $weight } ist das Doppelte des Ziels von { $aim }. Sind es beide Aufträge zusammen, oder wurde nicht tariert?
dry-already = { $weight } ist, was von { $wet } ohne das Wasser bleibt. Ist es schon trocken?
far-off = { $weight } ist weit vom Ziel von { $aim }. Stimmt das?
other-scale = { $scale } kann dieses Gewicht nicht zeigen. Welche Waage wurde benutzt?
it-is-right = Es stimmt
it-is-wet = Nein, es ist nass

glaze-and-bucket = { $glaze }, { $bucket }
tolerance = ±{ $tolerance } wird akzeptiert: { $glaze } steht auf „{ $sensitivity ->
    [low] gutmütig
    [high] empfindlich
   *[medium] normal
}“.

no-sg-yet = { $bucket } hat noch keine Dichte: { $sg } wird angenommen, und das Ziel ist nur so gut wie sie. Den Eimer prüfen.
old-sg = Dichte zuletzt geprüft: { $when }. Umrühren und den Eimer prüfen: Glasur dickt ein und setzt sich ab.
tiles-not-asked = { $count ->
    [one] Ein Probeplättchen dieser Glasur zählt noch nicht: unter Werkstatt angeben, wie es aus dem Ofen kam.
   *[other] { $count } Probeplättchen dieser Glasur zählen noch nicht: unter Werkstatt angeben, wie sie aus dem Ofen kamen.
}
sides-differ = Innen und außen brauchen nach ihren eigenen Vergleichsstücken { $sides }, einmal Tauchen nach seinem eigenen aber { $dip }. Das falsche Vergleichsstück nicht mehr als solches nehmen.
impossible-density = Die Pulverdichte von „{ $glaze }“ ist unmöglich, darum rechnet laydown mit { $density }. In der Glasur berichtigen.

next-inside = Innenseite dieses Stücks
next-outside = Außenseite dieses Stücks
saved = Gespeichert: { $form }, { $zone }, { $wet }, { $verdict }.
saved-with-code = Gespeichert: { $form }, { $zone }, { $wet }, { $verdict }. { $code } mit Eisen- oder Kobaltlösung oder Unterglasurstift auf den Fuß schreiben: Bleistift brennt weg.
saved-on-piece = Gespeichert: { $form } { $code }, { $zone }, { $wet }, { $verdict }.

some-form = Unbekannte Form
nothing-today = Heute noch nichts gewogen.
today = { $coats ->
    [one] Heute 1 Auftrag, davon { $within } passend.
   *[other] Heute { $coats } Aufträge, davon { $within } passend.
}

zone-of-piece = { $zone }, { $piece }
zone-of-same-piece = { $zone }, selbes Stück
this-piece = Dieses Stück
wall-is-wet = { $piece }: { $zone } glasiert { $ago }. Die Wand ist noch nass und nimmt weniger Glasur auf: erst trocknen lassen.
wall-may-be-damp = { $piece }: { $zone } glasiert { $ago }. Die Wand kann noch feucht sein und weniger Glasur aufnehmen: erst trocknen lassen.
glazed-before = { $piece }: { $zone } glasiert { $ago }.
insides-waiting = Innen fertig, außen fehlt
other-unfired = Andere ungebrannte Stücke
new-piece = Neues Stück
nothing-unfired = Kein ungebranntes Stück hat einen Auftrag.
no-piece-with-code = Kein Stück hat den Code { $code }. Am Fuß nachsehen.
form-and-code = { $form }, { $code }
its-coat-was-undone = Auftrag rückgängig gemacht
glazes-and-ago = { $glazes }, { $ago }
weigh-again = Noch einmal wiegen
weigh-code-again = { $code } noch einmal wiegen
already-carries = { $coats ->
    [one] Dieser Bereich hat schon einen Auftrag: { $laydown }.
   *[other] Dieser Bereich hat schon { $coats } Aufträge: zusammen { $laydown }.
}
with-this-coat = Mit diesem Auftrag trägt er { $laydown }.
glazed-by = Glasiert von { $hand }. Zu ändern unter Werkstatt, Einheiten.
dip-hint = { $dips ->
    [one] Etwa { $time } s für dieses Ziel, { $from } bis { $to }: nach { $dips } Auftrag aus diesem Eimer. Die Waage entscheidet.
   *[other] Etwa { $time } s für dieses Ziel, { $from } bis { $to }: nach { $dips } Aufträgen aus diesem Eimer. Die Waage entscheidet.
}
