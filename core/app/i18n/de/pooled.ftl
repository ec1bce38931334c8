pots = { $pots ->
    [one] 1 gebrannten Stück
   *[other] { $pots } gebrannten Stücken
}
controls = { $controls ->
    [one] 1 Vergleichsstück
   *[other] { $controls } Vergleichsstücken
}
from-pots = Aus { $pots }.
from-pots-and-controls = Aus { $pots } und { $controls }.
from-kept = Die für diese Form festgehaltene Menge.
rests-on = Beruht auf { $pots }.
rests-on-both = Beruht auf { $pots } und { $controls }.

more-than-nine = mehr als 9 von 10
about = etwa { $tenths } von 10
less-than-one = weniger als 1 von 10
comes-out-right = Aussicht, richtig zu werden: { $odds }.
right-on-aim = Beim Ziel werden { $odds } richtig.
accepted = Es passt, was in mindestens 4 von 5 Fällen richtig wird.

headline-probably = PASST WOHL
probably = Wahrscheinlich richtig. Eine Teilung von { $step } ist für { $span } zu grob, um sicher zu sein.
not-sure = Zu weit vom Ziel, um sicher zu sein. Sicher ist { $span }.
spoken-probably = Passt wohl. Speichern.

moved = Nach { $pots }: aus { $before } wird { $after }.
back-to = Zurück zu { $before }
keep = { $now } festhalten
use-all = Gebrannte Stücke nutzen
uses-all = Die Ziele folgen den gebrannten Stücken.
uses-best = Die Ziele sind hier wie vor den gebrannten Stücken.
keeps = Ziel festgehalten: { $now }.
sets-targets = Beim Wiegen bestimmen diese gebrannten Stücke das Ziel, mit allem, was sonst bekannt ist.

all-right = Alle gebrannten Stücke sind richtig geworden. Wie viel zu viel wäre, ist noch nicht bekannt.
all-thin = Alle gebrannten Stücke sind dünn geworden. Das Ziel kann noch zu niedrig sein.
all-thick = Alle gebrannten Stücke sind dick geworden. Das Ziel kann noch zu hoch sein.
ratings-inverted = Als dünn beurteilte Stücke tragen mehr Glasur als dicke. Sind die Urteile vertauscht?
mixed = Dünn, richtig und dick überschneiden sich. Keine Menge wird sicher richtig.
controls-apart = Zwei Vergleichsstücke liegen { $ratio } auseinander: { $less } und { $more }. Beim falschen die Markierung entfernen.
tiles-above = Die Probeplättchen tragen { $ratio } mehr, als die Stücke brauchen.
tiles-below = Die Probeplättchen tragen { $ratio } weniger, als die Stücke brauchen.
start-above = Der Startwert liegt { $ratio } über dem, was die Stücke brauchen.
start-below = Der Startwert liegt { $ratio } unter dem, was die Stücke brauchen.
odd = { $piece } passt nicht zu den anderen und zählt kaum. Gewicht und Urteil prüfen.
groups-apart = { $kind ->
    [body] Der Bedarf ist verschieden: { $more } braucht { $ratio } mehr als { $less }. Das Ziel jeder Form richtet sich nach ihrer Masse.
    [cone] Der Bedarf ist verschieden: { $more } braucht { $ratio } mehr als { $less }. Zum Trennen für jeden Kegel eine eigene Glasur anlegen.
   *[zone] Der Bedarf ist verschieden: { $more } braucht { $ratio } mehr als { $less }. Jeder Bereich hat sein eigenes Ziel.
}
some-piece = Unbekanntes Stück
some-body = Unbekannte Masse
typed-amount = { $form }, eingetippte Menge
cone = Kegel { $cone }

why-button = Warum dieses Ziel?
why = Warum { $aim }?
weights-add-up = Die Prozente sagen, wie viel jeder Beleg zählt.
pots-say = Die gebrannten Stücke sagen { $wet }.
too-few-pots = { $pots ->
    [one] 1 gebrannter und beurteilter Auftrag dieser Glasur zählt. Ab { $enough } bestimmen sie das Ziel.
   *[other] { $pots } gebrannte und beurteilte Aufträge dieser Glasur zählen. Ab { $enough } bestimmen sie das Ziel.
}
piece-and-zone = { $piece }, { $zone }
control-piece = Vergleichsstück: { $piece }
test-tile = Probeplättchen: { $tile }
starting-value = Startwert
starts-with = { $laydown }.
usual = Was üblich ist
usual-help = Was laydown von jeder Glasur und Form annimmt.
when-and-weight = { $when }: { $wet }.
when-weight-and-look = { $when }: { $wet }, { $look }.
facts-and-without = { $facts } Ohne: { $without }.
does-not-count = { $facts } Zählt nicht.
leave-out = Weglassen
count-again = Wieder zählen
is-left-out = Weggelassen.
counts-again = Zählt wieder.
and-so = { $done } Aus { $before } wird { $after }.
