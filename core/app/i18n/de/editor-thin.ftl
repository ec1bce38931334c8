### Not yet read by a native potter.

title = Verdünnen: { $glaze }, { $bucket }
from = Dichte jetzt
to = Dichte gewünscht
volume = Glasur im Eimer
there-already = Diese Dichte hat sie schon.
add-water = { $water } Wasser zugeben.
add-in-parts = Zwei Drittel zugeben, umrühren, prüfen, dann den Rest: Wasser bekommt man am selben Tag nicht wieder heraus.
take-off-water = Absetzen lassen und { $water } klares Wasser abnehmen.
or-add-powder = Oder { $powder } der trockenen Glasur einrühren.
dust = Trockene Glasur staubt: Atemschutz tragen, ins Wasser geben, nass aufwischen.
done = Fertig: jetzt prüfen
goal = Auf welche Dichte
to-working = Die Arbeitsdichte
to-control = Wie beim Vergleichsstück
to-check = Wie geprüft { $when }
to-typed = Eine andere Dichte
by = Wie
by-water = Wasser abnehmen
by-powder = Trockene Glasur zugeben
done-water = Wasser, wie es wirklich war
done-powder = Trockene Glasur, wie es wirklich war
done-help = Ändern, wenn es weniger war.
