### Not yet read by a native potter.

checklist = { $item ->
    [dust] Staub mit feuchtem Schwamm abgewischt. Gepustet oder gefegt gelangt er in die Lunge.
    [foot] Fuß von Glasur befreit, und ein Stück die Wand hinauf.
    [rim] Ränder und Kanten abgetastet: Was jetzt scharf ist, schneidet später.
    [knocks] Stöße und Abplatzer ausgebessert und notiert.
    [cracks] Keine Risse im trockenen Auftrag. Verreiben, sonst rollt die Glasur dort ab.
    [bone_dry] Jedes Stück ganz trocken, an der Wange nicht kühl. Feuchte Ware platzt.
    [closed] Kein geschlossener Hohlraum ohne kleines Luftloch.
    [stacked] Gestapelt steht Fuß auf Fuß oder Rand auf Rand, nichts Schweres auf einem dünnen Rand.
    [clay_cracks] Keine Risse an Rändern, Böden und Henkelansätzen.
   *[overlap] Wo zwei Glasuren sich überlappen: nicht zu dick, und darunter Platz zum Laufen.
}
waiting-label = Wartet: antippen, um auf eine Platte zu stellen
left-out-label = Vergessenes Stück hinzufügen
add-unweighed = Ungewogene Stücke hinzufügen
all-of-form = { $pieces ->
    [one] { $form }: { $pieces } Stück
   *[other] { $form }: alle { $pieces }
}
place-cones = Brennkegel
no-cones-yet = Noch keine. Neben der Ware zeigen sie, wie viel Wärme sie bekommen hat.
read-cones = Kegel ablesen
read-without-cones = Temperatur, Dauer und gestellte Kegel
look-again = Die Stücke noch einmal ansehen
look = Die Stücke ansehen
look-left = { $left ->
    [one] Die Stücke ansehen: noch { $left }
   *[other] Die Stücke ansehen: noch { $left }
}

no-room = Diese Platte ist voll. Eine andere nehmen oder etwas herunternehmen.
loaded = { $pieces ->
    [one] { $pieces } Stück auf Platte { $shelf }.
   *[other] { $pieces } Stücke auf Platte { $shelf }.
}
loaded-and-overlapping = { $pieces ->
    [one] { $pieces } Stück auf Platte { $shelf }.
   *[other] { $pieces } Stücke auf Platte { $shelf }.
} { $overlapping ->
    [one] { $overlapping } Paar überlappt: eines davon verschieben.
   *[other] { $overlapping } Paare überlappen: einige verschieben.
}
all-loaded = { $pieces ->
    [one] { $pieces } Stück eingesetzt.
   *[other] { $pieces } Stücke eingesetzt.
}
some-loaded = { $pieces ->
    [one] { $pieces } Stück eingesetzt. Kein Platz für { $left }.
   *[other] { $pieces } Stücke eingesetzt. Kein Platz für { $left }.
}
moved = Verschoben.
taken-out = Aus dem Besatz genommen.
was-in-firing = Dieses Stück wurde nach dem Brand angesehen, war also darin. Es lässt sich nicht entfernen.
not-on-checklist = Das steht nicht auf der Liste vor dem Brand.
looked-at = Geprüft.
not-looked-at = Noch zu prüfen.
fired-answer = Als gebrannt vermerkt. Vor dem Öffnen abkühlen lassen, dann die Stücke einzeln ansehen.
done-answer = Als fertig vermerkt.
opened-answer = Wieder offen.
in-another-load = Dieses Stück steht noch in einem anderen Brand: { $firing }. Erst dort ausräumen oder herausnehmen.
is-done = Dieser Brand ist fertig. Erst wieder öffnen.
is-fired = Dieser Brand ist vorbei: Sein Plan bleibt, wie er war.

to-fired = Als gebrannt vermerken
to-done = Als fertig vermerken
to-open = Wieder öffnen
ask-fired-empty = Auf den Platten steht nichts. Die Stücke lassen sich auch nachher hinzufügen.
ask-fired = Erst nach dem Brand. Danach lassen sich die Stücke einzeln ansehen.
ask-done = { $left ->
    [one] { $left } Stück ist noch nicht angesehen. Der Brand lässt sich wieder öffnen.
   *[other] { $left } Stücke sind noch nicht angesehen. Der Brand lässt sich wieder öffnen.
}

begun = Begonnen
number = Nummer
name = Name
pieces = Stücke
cone = Kegel
cone-and-kind = { $kind ->
    [large] { $cone }, groß
    [self_supporting] { $cone }, selbststehend
   *[newer] { $cone }, aus einer neueren Version
}
bends-at = Fällt bei
bends-at-rates = { $slow } bei 60 °C je Stunde, { $fast } bei 150 °C je Stunde
program = Programm
witness-cones = Brennkegel
fired = Gebrannt
top-temperature = Höchste Temperatur
it-took = Brenndauer
note = Notiz
place-and-found = { $place }: { $found }

kiln-caution = Elektrik, Gas und Abluft des Ofens zugelassenen Fachleuten überlassen. Den Raum lüften, alles Brennbare weit weg halten und die Anleitung des Herstellers befolgen.
hot-ware = Heiße Ware verbrennt die Haut und reißt im Luftzug. Erst ausräumen, wenn sie sich mit bloßer Hand halten lässt.
crowded = { $pairs ->
    [one] Platte { $shelf }: { $pairs } Paar steht laut Zeichnung an der weitesten Stelle enger als { $air } mm. Glasuren, die sich berühren, schmelzen zusammen.
   *[other] Platte { $shelf }: { $pairs } Paare stehen laut Zeichnung an der weitesten Stelle enger als { $air } mm. Glasuren, die sich berühren, schmelzen zusammen.
}
overlapping = { $pairs ->
    [one] Platte { $shelf }: { $pairs } Paar überlappt laut Zeichnung. Eines stünde auf dem anderen: verschieben.
   *[other] Platte { $shelf }: { $pairs } Paare überlappen laut Zeichnung. Eines stünde auf dem anderen: verschieben.
}

shelf-title = { $pieces ->
    [one] Platte { $shelf }: { $pieces } Stück, { $free } % frei
   *[other] Platte { $shelf }: { $pieces } Stücke, { $free } % frei
}
shelf-title-fired = { $pieces ->
    [one] Platte { $shelf }: { $pieces } Stück
   *[other] Platte { $shelf }: { $pieces } Stücke
}
shelf-help = Von oben gesehen, vorn ist unten. Ein Stück halten und ziehen, um es zu verschieben; antippen, um es zu entfernen.
shelf-as-fired = So wurde gebrannt, von oben gesehen, vorn ist unten. Ein Stück antippen, um zu sehen, welches es ist.

witness = { $reading ->
    [standing] Kegel { $cone } steht
    [soft] Kegel { $cone } angeneigt
    [at] Kegel { $cone } gefallen
    [hard] Kegel { $cone } stark gefallen
   *[flat] Kegel { $cone } liegt flach
}
against-the-last = Verglichen mit dem letzten Brand auf Kegel { $cone } in diesem Ofen: { $difference }.
against-the-last-both = Verglichen mit dem letzten Brand auf Kegel { $cone } in diesem Ofen: { $heat } und { $time }.
hotter = { $degrees } heißer
cooler = { $degrees } kühler
as-hot = genauso heiß
longer = { $time } länger
shorter = { $time } kürzer
as-long = genauso lang
