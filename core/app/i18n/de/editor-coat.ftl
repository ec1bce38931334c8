### Not yet read by a native potter.

title = Auftrag berichtigen
piece = Stück
piece-of-its-own = Ein eigenes Stück
only-coat = Das ist der einzige Auftrag auf { $piece }, und das Stück ist in einem Brand oder hat Fotos. Stattdessen Bereich oder Gewicht berichtigen oder es erst aus dem Brand nehmen.
zone = Bereich
bucket = Glasur, Eimer
net = Auftrag wie gewogen
added = Nachgebessert: dazu
rubbed-off = Abgerieben
touch-up-help = Was nach dem Wiegen aufgepinselt oder abgerieben wurde. Sonst leer lassen.
wet-and-verdict = Zusammen { $wet }: { $verdict }.
corrected = Auftrag berichtigt. Der Verlauf zeigt, wie er war.
hand = Wer glasiert hat
dip = Tauchen oder Gießen, Sekunden
dip-help = Vom Eintauchen bis zum Herausnehmen. Vier Aufträge aus einem Eimer ergeben einen Anhalt, wie lange.
dip-impossible = Ein Tauchgang dauert 0,5 bis 600 Sekunden.
