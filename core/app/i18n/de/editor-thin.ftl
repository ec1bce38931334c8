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
