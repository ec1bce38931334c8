### Not yet read by a native potter.

no-size = Angeben, was die Form bis zum Rand fasst, oder ihren gemessenen Umriss, oder ihre glasierten Flächen.
capacity = Eine Form fasst 5 ml bis 100 Liter; { $millilitres } ml liegen außerhalb. Wert und Einheit prüfen.
area = Eine glasierte Fläche misst 1 cm² bis 5 m²; { $square_centimetres } cm² liegen außerhalb. Wert und Einheit prüfen.
one-measure = Ein Gefäß dieser Form und Größe würde etwa { $millilitres } ml fassen. Zahl und Einheit prüfen.
holds-nothing = Eine Fliese fasst nichts. Die Fläche der glasierten Seite angeben.
height-of-plate = Die Höhe eines Tellers sagt nichts über seine Größe. Seine Breite angeben.

too-few-points = Ein Profil braucht mindestens drei Punkte: Fuß, weiteste Stelle und Rand.
too-many-points = Das sind mehr als { $most } Punkte. Nur die behalten, an denen der Umriss sich ändert.
out-of-reach = Punkt { $point } ist kein mögliches Maß für ein Stück: höchstens 1,5 m hoch und 1,5 m breit. Werte und Einheit prüfen.
same-height = Die Punkte { $first } und { $second } liegen auf gleicher Höhe. Einen berichtigen; bei einem Absatz ein Ende einen halben Millimeter höher setzen.
crosses = Der Umriss kreuzt sich selbst nahe Punkt { $point }. Prüfen, ob die Punkte der Wand von unten nach oben folgen.
no-wall = Die Wand muss eine Stärke haben. Am Rand messen oder ein altes Stück aufschneiden.
wall-too-thick = An Punkt { $point } ist die Wand dicker, als das Stück dort breit ist. Wand und Breite prüfen.
floor = Boden und Fußring sind höher als das Stück. Boden, Fußring und Einheit prüfen.
foot-ring = Der Fußring ist breiter als der Fuß. Seine Breite prüfen: nur den Ton zählen, auf einer Seite.
no-weight = Gewicht und Dichte der Schrühware müssen über null liegen. Beide Werte prüfen.
nothing-to-glaze = Der glasurfreie Fuß reicht bis zum Rand, außen bleibt nichts zu glasieren. Die Höhe prüfen, in der die Glasur beginnt.

shrinkage = Ton schwindet vom Drehen bis zum Brand 0 bis 30 %, und mindestens so viel wie bis zum Schrühbrand. Beide Werte prüfen: Jeder wird vom gedrehten Maß aus gemessen.

photo-no-picture = Diese Datei ist kein JPEG- oder PNG-Bild. Neu aufnehmen oder die Kamera auf JPEG stellen.
photo-cut-short = Ein Teil dieses Bildes fehlt. Neu aufnehmen.
photo-too-large = Dieses Bild hat über 50 Megapixel, das ist zu viel. Die Kamera kleiner einstellen.
photo-too-small = Dieses Bild ist zu klein zum Messen. Neu aufnehmen, in voller Größe der Kamera.
photo-too-dark = Es ist zu dunkel, um die Kante des Stücks zu erkennen. Mit mehr Licht neu aufnehmen, ohne Sonne dahinter.
photo-busy = Der Hintergrund ist zu unruhig. Ein einfarbiges Tuch oder Laken hinter das Stück hängen, in einer anderen Farbe als das Stück.
photo-nothing = Kein Stück hebt sich vom Hintergrund ab. Einen viel helleren oder dunkleren Hintergrund nehmen.
photo-cut-off = Das Stück ragt aus dem Bild. Zurücktreten, bis rundherum Hintergrund zu sehen ist.
photo-too-far = Das Stück ist im Bild zu klein. Näher herangehen, bis es mindestens ein Drittel der Höhe füllt.
photo-not-alone = Im Bild ist mehr als ein Gegenstand. Nur das Stück stehen lassen, das Lineal weit zur Seite.
photo-too-tilted = Das Handy war zu schräg. Gerade halten, damit das Stück aufrecht steht.
photo-lopsided = Die beiden Seiten sind für ein rundes Stück zu verschieden. Den Henkel genau zu einer Seite drehen, Schatten und helle Fenster vermeiden.
photo-from-above = Das Handy sah von oben auf das Stück. Die Linse auf die halbe Höhe des Stücks halten.
photo-stacked = Das sieht nach zwei Stücken aus, eines im oder auf dem anderen. Jedes Stück allein und ohne Deckel fotografieren.
photo-too-flat = Ein so flaches Stück lässt sich nicht von der Seite messen. Stattdessen ein paar Breiten und Höhen messen.
photo-size = Dieses Maß passt nicht zum Bild. Den Wert und die Einheit prüfen, und ob die Marken an den Enden sitzen.
