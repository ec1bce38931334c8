### Not yet read by a native potter.

decimal-mark = {","}
span = { $low } bis { $high }
percent = { $number } %
laydown-unit = { $mass } pro 100 { $area }
laydown = { $number } { $unit }

empty = { $quantity ->
    [weight] Das Gewicht eingeben, zum Beispiel { $example }.
    [volume] Das Volumen eingeben, zum Beispiel { $example }.
    [surface] Die Fläche eingeben, zum Beispiel { $example }.
    [length] Die Länge eingeben, zum Beispiel { $example }.
    [time] Die Zeit eingeben, zum Beispiel { $example }.
    [temperature] Die Temperatur eingeben, zum Beispiel { $example }.
    [specific_gravity] Die Dichte eingeben, zum Beispiel { $example }.
   *[number] Die Zahl eingeben, zum Beispiel { $example }.
}
not-a-number = { $quantity ->
    [weight] „{ $text }“ ist als Gewicht nicht lesbar. Ziffern eingeben, zum Beispiel { $example }.
    [volume] „{ $text }“ ist als Volumen nicht lesbar. Ziffern eingeben, zum Beispiel { $example }.
    [surface] „{ $text }“ ist als Fläche nicht lesbar. Ziffern eingeben, zum Beispiel { $example }.
    [length] „{ $text }“ ist als Länge nicht lesbar. Ziffern eingeben, zum Beispiel { $example }.
    [time] „{ $text }“ ist als Zeit nicht lesbar. Ziffern eingeben, zum Beispiel { $example }.
    [temperature] „{ $text }“ ist als Temperatur nicht lesbar. Ziffern eingeben, zum Beispiel { $example }.
    [specific_gravity] „{ $text }“ ist als Dichte nicht lesbar. Ziffern eingeben, zum Beispiel { $example }.
   *[number] „{ $text }“ ist als Zahl nicht lesbar. Ziffern eingeben, zum Beispiel { $example }.
}
unknown-unit = { $quantity ->
    [weight] „{ $unit }“ ist keine Gewichtseinheit. Wie { $example } schreiben oder nur Ziffern eingeben.
    [volume] „{ $unit }“ ist keine Volumeneinheit. Wie { $example } schreiben oder nur Ziffern eingeben.
    [surface] „{ $unit }“ ist keine Flächeneinheit. Wie { $example } schreiben oder nur Ziffern eingeben.
    [length] „{ $unit }“ ist keine Längeneinheit. Wie { $example } schreiben oder nur Ziffern eingeben.
    [time] „{ $unit }“ ist keine Zeiteinheit. Wie { $example } schreiben oder nur Ziffern eingeben.
    [temperature] „{ $unit }“ ist keine Temperatureinheit. Wie { $example } schreiben oder nur Ziffern eingeben.
    [specific_gravity] „{ $unit }“ kennt laydown nicht als Einheit der Dichte. Wie { $example } schreiben oder nur Ziffern eingeben.
   *[number] „{ $unit }“ kennt laydown nicht als Einheit einer Zahl. Wie { $example } schreiben oder nur Ziffern eingeben.
}
us-or-imperial = { $unit } ist in den USA eine andere Größe als in Großbritannien. „us { $unit }“ oder „imp { $unit }“ schreiben.
mixed-units = „{ $text }“ mischt Einheiten. Die größere zuerst schreiben und jede nennen, zum Beispiel 1 lb 2 oz.
two-marks = „{ $text }“ hat mehr als ein Dezimalzeichen. Das Tausenderzeichen weglassen.
thousands-or-decimal = Heißt „{ $text }“ { $whole } oder etwas über { $part }? { $whole } schreiben oder „{ $mark }“ als Dezimalzeichen verwenden.
space-in-number = „{ $text }“ hat ein Leerzeichen in der Zahl. Ohne schreiben.
negative = { $quantity ->
    [weight] Ein Gewicht kann nicht unter null liegen. Das Minuszeichen prüfen oder die Waage neu tarieren.
    [volume] Ein Volumen kann nicht unter null liegen. Das Minuszeichen prüfen.
    [surface] Eine Fläche kann nicht unter null liegen. Das Minuszeichen prüfen.
    [length] Eine Länge kann nicht unter null liegen. Das Minuszeichen prüfen.
    [time] Eine Zeit kann nicht unter null liegen. Das Minuszeichen prüfen.
    [temperature] Die Temperatur kann hier nicht unter null liegen. Das Minuszeichen prüfen.
    [specific_gravity] Eine Dichte kann nicht unter null liegen. Das Minuszeichen prüfen.
   *[number] Die Zahl kann hier nicht unter null liegen. Das Minuszeichen prüfen.
}
too-large = { $quantity ->
    [weight] Dieses Gewicht liegt über der Grenze von 100 kg. Wert und Einheit prüfen.
    [volume] Dieses Volumen liegt über der Grenze von 1000 Litern. Wert und Einheit prüfen.
    [surface] Diese Fläche liegt über der Grenze von 10 m². Wert und Einheit prüfen.
    [length] Diese Länge liegt über der Grenze von 10 m. Wert und Einheit prüfen.
    [time] Diese Zeit liegt über der Grenze von 24 Stunden. Wert und Einheit prüfen.
    [temperature] Diese Temperatur liegt über der Grenze von 1500 °C. Wert und Einheit prüfen.
    [specific_gravity] Diese Dichte liegt über der Grenze von 2,2. Wert und Einheit prüfen.
   *[number] Diese Zahl liegt über der Grenze von 1 000 000 000. Wert und Einheit prüfen.
}
no-temperature = Keine Werkstatt und kein Ofen erreicht { $degrees } °C. Wert und Einheit prüfen.

no-heavier-than-water = Dichte { $number }: nicht schwerer als Wasser, eine Glasur ist es immer. Den Eimer bis zum Boden umrühren und neu wiegen.
too-thin-for-glaze = Dichte { $number }: fast Wasser. Eine Glasur hat 1,02 oder mehr. Den Eimer bis zum Boden umrühren und neu wiegen.
too-heavy-for-glaze = Dichte { $number }: schwerer als jede Glasur, die sich gießen lässt. Den Wert prüfen: 1450 g je Liter sind 1,45.
very-thin-for-glaze = Dichte { $number }: sehr dünn für eine Glasur. Den Eimer bis zum Boden umrühren und neu prüfen.
no-laydown = Eine Auftragsmenge liegt zwischen 0 und { $most } g pro 100 cm², { $number } g nicht. Die meisten beginnen bei etwa 5,5.
no-powder-density = Pulverdichte { $number } liegt nicht zwischen 1,5 und 7. Die meisten Glasuren liegen bei etwa 2,6.

heavier-than-powder = Dichte { $number } ist so schwer wie das trockene Pulver selbst ({ $density }). Die Ablesung prüfen, und die Pulverdichte dieser Glasur.
no-fraction = Der Anteil trockener Glasur muss zwischen 0 und 1 liegen, { $number } tut es nicht. Die Glasur nass und trocken neu wiegen.
nothing-to-mix = Pulver und Wasser müssen beide etwas wiegen. Neu wiegen.
empty-vessel = Das Messgefäß wiegt voll nicht mehr als leer. Leer und trocken wiegen, dann voll bis zur Linie.
too-unsure = Diese Waage ist zu grob für so wenig Glasur. Eine feinere nehmen oder mehr davon wiegen.
no-volume = Angeben, wie viel das Messgefäß bis zur Linie fasst.
water-temperature = Mit Wasser von { $degrees } °C lässt sich kein Gefäß ausmessen. Wasser zwischen 0 und 40 °C nehmen.

unknown-code = { $what ->
    [zone] Der Bereich
    [verdict] Das Urteil
    [sensitivity] Die Empfindlichkeit
    [shape] Die Gestalt
    [stage] Der Messzeitpunkt
    [thickness] Die Dicke
    [fault] Der Fehler
    [cone] Der Kegel
    [cone_kind] Die Kegelart
    [reading] Die Ablesung
    [part] Der Flächenteil
    [side] Die Seite
    [sureness] Die Sicherheit
    [mass_unit] Die Gewichtseinheit
    [volume_unit] Die Volumeneinheit
    [area_unit] Die Flächeneinheit
    [length_unit] Die Längeneinheit
    [decimal_mark] Das Dezimalzeichen
    [rhythm] Der Sicherungsrhythmus
    [firing_state] Der Stand des Brandes
   *[other] Der Code
} „{ $code }“ ist dieser Version von laydown unbekannt. laydown aktualisieren, dann die Werkstatt neu öffnen.

code-length = Der Code eines Stücks hat fünf oder mehr Zeichen. Am Fuß noch einmal nachsehen.
code-character = Kein Code enthält „{ $character }“. Am Fuß noch einmal nachsehen.
code-check = Dieser Code wurde falsch gelesen oder geschrieben: Sein letztes Zeichen passt nicht zu den anderen. Am Fuß noch einmal nachsehen.
above-rim = Das liegt über dem Rand: Der Eimer ist { $depth } tief. Den Füllstand oder die Tiefe des Eimers prüfen.
more-water-than-there-is = In dieser Glasur sind nur { $water } Wasser. Die Zahl prüfen und wie viel Glasur im Eimer ist.
outside-cup = Gebaut für { $from } bis { $to } Sekunden: { $cup }. Besser passt: { $better }; diese Sekunden vergleichen den Eimer trotzdem mit sich selbst.
outside-every-cup = Gebaut für { $from } bis { $to } Sekunden: { $cup }. Diese Sekunden vergleichen den Eimer trotzdem mit sich selbst.
