### Not yet read by a native potter.

new = Neue Form
title = Form
archive = Diese Form archivieren
name-hint = Frühstücksbecher
shape = Gestalt
shape-help = Den ähnlichsten Umriss wählen.

way = Gemessen über
way-capacity = Fassungsvermögen
way-capacity-detail = Ein geschrühtes Stück bis zum Rand füllen und das Wasser wiegen oder messen. Schnell und etwas ungenau.
way-points = Gemessene Punkte
way-points-detail = Ein paar Breiten mit dem Taster, dazu Wand und Fuß. Am genauesten.
way-photograph = Foto von der Seite
way-photograph-detail = Von der Seite, auf halber Höhe, vor ruhigem Hintergrund, mit einem bekannten Maß.
way-one-measure = Ein Maß
way-one-measure-detail = Nur Breite, Höhe oder Tongewicht. Am ungenauesten, doch bei einem Teller genügt die Breite.
clay = Tongewicht
clay-detail = Der feuchte Ton, aus dem es gedreht wird, vor dem Abdrehen und ohne Henkel.
way-areas = Flächen
way-areas-detail = Wenn die glasierten Flächen bekannt sind. Gemessene Flächen haben Vorrang.
capacity = Fassungsvermögen bis zum Rand
capacity-help = Eines geschrühten Stücks, nicht eines gebrannten.
capacity-if-measured = Fassungsvermögen bis zum Rand, falls gemessen
area-inside = Glasierte Fläche innen
area-outside = Glasierte Fläche außen
tile-has-no-profile = Eine Fliese hat kein Profil. „{ way-areas }“ wählen und die Fläche der glasierten Seite angeben.

points = Außenprofil
points-help = Von unten nach oben: Höhe und Breite überall dort, wo der Umriss sich ändert, etwa an Fuß, Bauch, Hals und Rand.
height-in = Höhe, { $unit }
across-in = Breite, { $unit }
wall-in = Wand, { $unit }
point-half-given = Punkt { $number }: Höhe und Breite angeben.
point-error = Punkt { $number }: { $error }

photograph = Foto
photograph-help = Das Stück vor eine schlichte Wand oder ein Tuch stellen, den Henkel zu einer Seite. Das Handy gerade halten, auf halber Höhe des Stücks und eine Armlänge entfernt.
take-photograph = Foto aufnehmen
choose-picture = Bild wählen
photograph-missing = Foto: aufnehmen oder ein Bild wählen.
photograph-unreadable = Dieses Bild ist nicht lesbar. Neu aufnehmen oder ein anderes wählen.
photograph-too-large = Dieses Bild ist größer als 64 MB. Die Kamera kleiner einstellen und neu aufnehmen.
known = Bekanntes Maß
known-height = Höhe
known-width = Größte Breite
known-width-detail = Ohne Henkel.
known-length = Münze oder Lineal
known-length-detail = Im Bild, aufrecht oder neben dem Stück, so weit vom Handy wie die Mitte des Stücks.
size = Maß
camera-distance = Abstand Handy zum Stück
camera-distance-help = Ein ungefährer Wert genügt.
sureness-and-handle = { $side ->
    [left] { $sureness } Der Henkel links zählt nicht mit: sein Maß unten angeben.
   *[right] { $sureness } Der Henkel rechts zählt nicht mit: sein Maß unten angeben.
}

stage = Wann gemessen
stage-help = Glasiert wird Schrühware; andere Maße werden darauf umgerechnet.
body = Masse
body-not-said = Nicht angegeben
add-body-first = Erst die Masse unter Werkstatt hinzufügen: Ihre Schwindung ergibt das Schrühmaß.
choose-body = Die Masse wählen: Ihre Schwindung ergibt das Schrühmaß.
wall = Wandstärke
wall-help = Die übliche Stärke; ein Punkt kann eine eigene haben.
more = Fuß, Glasurgrenzen, Henkel, Gewicht
floor = Bodenstärke
floor-help = In der Mitte.
foot-width = Breite des Fußrings
foot-width-help = Nur der Ton, auf einer Seite. Leer bei flachem Boden.
foot-height = Höhe des Fußrings
bare-foot = Glasurfreier Fuß
bare-foot-help = Ab welcher Höhe über dem Boden die Glasur beginnt.
overlap = Überlappung
overlap-help = Wie weit unter den Rand sich beide Glasuren außen überlappen. Leer, wenn gar nicht.
fill = Füllhöhe
fill-help = Wie weit unter dem Rand gefüllt wird, falls der Inhalt im Gebrauch interessiert.
handle-length = Länge des Henkels
handle-girth = Umfang des Henkels
handle-girth-help = Einen Papierstreifen darumlegen.
extra-area = Weitere glasierte Fläche
extra-area-help = Knauf, Tülle und Ähnliches.
bisque-weight = Schrühgewicht
bisque-weight-help = Mit Henkel. Es verrät ein falsch eingegebenes Maß.

holds = Fasst { $volume } bis zum Rand
holds-in-use = Fasst { $volume } bis zum Rand, { $in-use } bei Füllung bis { $depth } darunter
zone-area = { $zone ->
    [inside] Innen: { $area }, auf { $percent } genau
    [outside] Außen: { $area }, auf { $percent } genau
   *[whole] Innen und außen: { $area }, auf { $percent } genau
}
targets-change = Ziele dieser Form, die von anderen Formen kommen, ändern sich um { $change }.
targets-of-zone-change = { $zone ->
    [inside] Innen ändern sich die Ziele dieser Form, die von anderen Formen kommen, um { $change }.
    [outside] Außen ändern sich die Ziele dieser Form, die von anderen Formen kommen, um { $change }.
   *[whole] Innen und außen zusammen ändern sich die Ziele dieser Form, die von anderen Formen kommen, um { $change }.
}
targets-change-by-capacity = Ziele über das Fassungsvermögen ändern sich um { $change }.
own-targets-stay = Die eigenen Vergleichsstücke behalten ihr Gewicht. Wird die Form jetzt in einer anderen Größe gemacht, eine neue hinzufügen.
part-area = { $part ->
    [foot] glasurfreier Fuß { $area }
    [outside_wall] Außenwand { $area }
    [overlap_band] Überlappungsband { $area }
    [rim] Rand { $area }
    [inside_wall] Innenwand { $area }
   *[inside_floor] Innenboden { $area }
}
parts = { $parts }.
capacities-differ = { $difference ->
    [more] Das gemessene Fassungsvermögen liegt { $percent } über dem aus den Punkten. Auf eine falsch eingegebene Breite oder Höhe prüfen.
   *[less] Das gemessene Fassungsvermögen liegt { $percent } unter dem aus den Punkten. Auf eine falsch eingegebene Breite oder Höhe prüfen.
}

drawing = Links aufgeschnitten, rechts ganz: { $height } hoch, { $width } breit. Einen Punkt oder eine Linie ziehen; auf die Wand tippen, um einen Punkt hinzuzufügen.
drawing-of-photograph = Das Foto mit dem darin gefundenen Umriss.
bare-foot-line = Glasur beginnt { $height } über dem Boden
overlap-line = Beide Glasuren überlappen sich oben auf { $depth }
no-overlap-line = Keine Überlappung
fill-line = Gefüllt bis { $depth } unter den Rand
point = Punkt { $number }: { $height } hoch, { $width } breit
mark-from = Ein Ende der bekannten Länge
mark-to = Das andere Ende

foot-lip-handle = Fuß, Rand, Henkel
waxed-foot-help = Wie hoch über dem Boden die Glasur beginnt, etwa an der Wachskante. Leer heißt wie üblich { $usual }.
handle = Henkel
handle-none = Kein Henkel
handle-code = { $code ->
    [small] Tassenhenkel
    [large] Großer Henkel oder Krughenkel
   *[usual] Becherhenkel
}
handle-size = { $long } lang, { $around } Umfang
handle-own = Eigenes Maß
handle-is = Henkel: { $handle } von { $outside } außen
