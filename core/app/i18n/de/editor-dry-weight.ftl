### Not yet read by a native potter.

title = Trockengewicht
title-of = { $piece }: Trockengewicht
piece = Stück
bare-was = Unglasiert gewogen: { $bare }.
bare-help = Was dieses Stück vor dem ersten Auftrag wog. Ohne das sagt das Trockengewicht nichts.
bone-dry = Stück, ganz trocken
bone-dry-help = Trocken ist es, wenn zwei Wägungen im Abstand von einer Stunde gleich sind. Am glasurfreien Fuß halten und Glasurstaub von den Händen waschen.
weigh-it = Das ganz trockene Stück wiegen und eintippen, was die Waage zeigt.
dry-and-by-sg = Trockene Glasur: { $dry } gewogen; { $by-sg } nach der Dichte des Eimers.
with-doubt = { $number } ±{ $doubt }
of-all-coats = { $coats ->
    [one] Das ist das Gewicht von { $coats } Auftrag.
   *[other] Das ist das Gewicht von { $coats } Aufträgen zusammen. Es wird nach ihren Nassgewichten verteilt; jeder ist daher weniger sicher.
}
of-one-coat = { $zone }: { $dry }, { $laydown }.
agree = Trockengewicht und Dichte stimmen überein.
disagree = { $direction ->
    [more] Das Trockengewicht ist { $percent } mehr Glasur, als die Dichte sagt. Eins davon stimmt nicht:
   *[less] Das Trockengewicht ist { $percent } weniger Glasur, als die Dichte sagt. Eins davon stimmt nicht:
}
suspect-sg = { $direction ->
    [more] Die Dichte war { $would-be }, nicht { $checked }: Nach der Prüfung ist Wasser verdunstet, oder Gefäß, Marke oder Temperatur stimmten nicht.
   *[less] Die Dichte war { $would-be }, nicht { $checked }: Die Glasur hatte sich abgesetzt, Wasser kam dazu, oder Gefäß, Marke oder Temperatur stimmten nicht.
}
suspect-powder = Die Pulverdichte ist { $would-be }, nicht { $set }: Sie steht bei der Glasur.
suspect-wet-bisque = { $water } Wasser war in der Schrühware, als sie unglasiert gewogen wurde, etwa vom Abspülen.
suspect-lost = { $lost } trockene Glasur ging nach dem Wiegen ab, etwa beim Abwischen des Fußes.
suspect-not-dry = { $water } Wasser ist noch im Stück: morgen noch einmal wiegen.
saved = Trockengewicht gespeichert. Für die Ziele zählt es neben der Dichte.
removed = Trockengewicht entfernt.
was-fired = Dieses Stück ist gebrannt; seine Glasur wiegt jetzt anders. Nur vor dem Brand trocken gewogen zählt es.
no-bare = Eintippen, was das unglasierte Stück wog.
not-over-bare = Das ist nicht mehr als das unglasierte Stück, { $bare }. Beide Gewichte prüfen.
not-under-wet = Der Auftrag wöge trocken so viel wie nass, { $wet }. Die Gewichte prüfen oder trocknen lassen.
over-capacity = Die Waage wiegt höchstens { $capacity }. Das Gewicht prüfen.
weigh-dry = Das trockene Stück wiegen
weigh-a-dry-piece = Ein trockenes Stück wiegen
weighed-dry = { $dry } trocken
