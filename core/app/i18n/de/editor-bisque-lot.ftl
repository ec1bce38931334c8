### Not yet read by a native potter.

new = Neue Schrühcharge
title = Schrühcharge
archive = Diese Charge archivieren
name-hint = Schrühbrand 14
body = Masse
cone = Kegel
not-known = Nicht notiert
fired-on = Gebrannt am
soaking = Gewässert durch
soaking-help = Bei einer Art bleiben: Vergleichbar sind nur gleich gewässerte Chargen.
way = { $way ->
    [boil] 5 Stunden kochen, dann einen Tag im Wasser lassen. Vorsicht mit Dampf und heißem Topf.
    [cold] Ein Tag in kaltem Wasser. Füllt weniger Poren.
   *[vacuum] Unter Vakuum. Füllt die meisten.
}
dry = Ganz trocken
dry-help = Ein unglasierter Scherben reicht, ab 50 g. Zwei Stunden bei 110 °C im Backofen trocknen und abkühlen lassen.
soaked = Getränkt
soaked-help = Den Wasserfilm mit einem feuchten Tuch abtupfen und sofort wiegen.
suspended = In Wasser hängend, falls gewogen
suspended-help = Das getränkte Stück an einem Faden, unter Wasser und frei vom Boden. Ergibt Dichte und Poren.
temperature = Wassertemperatur, °C
drinks = Nimmt { $percent } (±{ $doubt }) seines Trockengewichts auf, { $way }.
usual = Bei Kegel 06 bis 04 geschrüht nimmt Ware meist { $from } bis { $to } auf.
pores = Rohdichte { $density } g/ml; offene Poren sind { $porosity } des Volumens.
as-before = Wie die Chargen davor, im Mittel { $mean }.
drinks-more = Mehr als die Chargen davor, im Mittel { $mean }: Derselbe Tauchgang nimmt mehr auf. Kühler oder kürzer gebrannt?
drinks-less = Weniger als die Chargen davor, im Mittel { $mean }: Derselbe Tauchgang nimmt weniger auf. Heißer oder länger gebrannt?
no-weight = Ein trockenes Stück wiegt etwas. Das Gewicht prüfen.
soaked-under-dry = Getränkt wiegt es weniger als trocken. Die Gewichte tauschen oder neu wiegen.
too-much = So viel nimmt keine Schrühware auf. Beide Gewichte prüfen.
suspended-over-dry = In Wasser hängend wiegt ein Stück weniger als trocken. Prüfen, welches Gewicht welches ist.
no-water = Die Wassertemperatur prüfen.
row = nimmt { $percent } auf ({ $way }), { $day }
wet = { $bare } ist { $over } mehr als die trockenen Stücke dieser Form, etwa { $usual }. Nach dem Abspülen ist so viel Wasser noch darin: trocknen lassen, sonst nimmt es zu wenig Glasur auf.
