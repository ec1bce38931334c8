### Not yet read by a native potter.

how-to-begin = Die Aufträge wiegen und die Stücke brennen. Dann den Brand öffnen, jedes Stück ansehen und dünn, richtig oder dick antippen. Acht Stücke einer Glasur ergeben eine erste Erkenntnis.
amount-only = Hier geht es nur um die Menge. Nur eine Laborprüfung kann zeigen, ob eine Oberfläche für Essen oder Trinken geeignet ist.
only-the-newest = { $coats ->
    [one] Beruht auf dem neuesten Auftrag in der Werkstatt und je Glasur auf höchstens { $pots } zuletzt gebrannten Stücken. Ältere bleiben außen vor.
   *[other] Beruht auf den neuesten { $coats } Aufträgen in der Werkstatt und je Glasur auf höchstens { $pots } zuletzt gebrannten Stücken. Ältere bleiben außen vor.
}
no-coat = Noch keine Aufträge gewogen.
none-looked-at = { $coats ->
    [one] { $coats } Auftrag gewogen, nach dem Brand noch nicht angesehen.
   *[other] { $coats } Aufträge gewogen, nach dem Brand noch keiner angesehen.
}
scope-and-finding = { $scope }: { $finding }

no-best = Es gibt noch keine beste Menge zum Starten.
now-starts-from = { $glaze } startet jetzt bei { $best }.
start-from = Bei { $best } starten
start-from-help = Für jede Form und jeden Bereich dieser Glasur ohne Vergleichsstück und ohne Probeplättchen. Jetzt startet sie bei { $now }.

controls-outside-window = { $zone ->
    [inside] Innen: Die Vergleichsstücke liegen im Schnitt bei { $average }, außerhalb des Fensters. Ein Stück nahe { $best } als Vergleichsstück nehmen.
    [outside] Außen: Die Vergleichsstücke liegen im Schnitt bei { $average }, außerhalb des Fensters. Ein Stück nahe { $best } als Vergleichsstück nehmen.
   *[whole] Innen und außen: Die Vergleichsstücke liegen im Schnitt bei { $average }, außerhalb des Fensters. Ein Stück nahe { $best } als Vergleichsstück nehmen.
}
tiles-outside-window = { $zone ->
    [inside] Innen: Die Probeplättchen liegen im Schnitt bei { $average }, außerhalb des Fensters. Ein Stück nahe { $best } als Vergleichsstück nehmen.
    [outside] Außen: Die Probeplättchen liegen im Schnitt bei { $average }, außerhalb des Fensters. Ein Stück nahe { $best } als Vergleichsstück nehmen.
   *[whole] Innen und außen: Die Probeplättchen liegen im Schnitt bei { $average }, außerhalb des Fensters. Ein Stück nahe { $best } als Vergleichsstück nehmen.
}

one-cone = Kegel { $cone }
cones-together = Kegel { $cones }
zones-together = { $zones ->
    [inside_outside] nur innen und nur außen
    [inside_whole] nur innen und rundum
    [outside_whole] nur außen und rundum
   *[inside_outside_whole] nur innen, nur außen und rundum
}
no-body = ohne Angabe der Masse
bodies-together = { $bodies ->
    [one] { $bodies } Masse
   *[other] { $bodies } Massen
}

too-few = { $place ->
    [after_colon] { $pots ->
        [one] noch zu wenige Stücke: bisher { $pots } ({ $looks }). Eine erste Erkenntnis braucht { $enough }.
       *[other] noch zu wenige Stücke: bisher { $pots } ({ $looks }). Eine erste Erkenntnis braucht { $enough }.
    }
   *[alone] { $pots ->
        [one] Noch zu wenige Stücke: bisher { $pots } ({ $looks }). Eine erste Erkenntnis braucht { $enough }.
       *[other] Noch zu wenige Stücke: bisher { $pots } ({ $looks }). Eine erste Erkenntnis braucht { $enough }.
    }
}
none-right = { $place ->
    [after_colon] { $pots ->
        [one] das einzige Stück ist nicht richtig geworden ({ $range }): { $looks }.
       *[other] keines der { $pots } Stücke ist richtig geworden ({ $range }): { $looks }.
    }
   *[alone] { $pots ->
        [one] Das einzige Stück ist nicht richtig geworden ({ $range }): { $looks }.
       *[other] Keines der { $pots } Stücke ist richtig geworden ({ $range }): { $looks }.
    }
}
try-more = Mehr versuchen.
try-less = Weniger versuchen.
mixed = { $place ->
    [after_colon] die Ergebnisse überschneiden sich bei { $range } ({ $pots ->
        [one] { $pots } Stück). Die Menge allein entscheidet nicht: Dichte im Eimer, Brand und Platz im Ofen prüfen.
       *[other] { $pots } Stücke). Die Menge allein entscheidet nicht: Dichte im Eimer, Brand und Platz im Ofen prüfen.
    }
   *[alone] Die Ergebnisse überschneiden sich bei { $range } ({ $pots ->
        [one] { $pots } Stück). Die Menge allein entscheidet nicht: Dichte im Eimer, Brand und Platz im Ofen prüfen.
       *[other] { $pots } Stücke). Die Menge allein entscheidet nicht: Dichte im Eimer, Brand und Platz im Ofen prüfen.
    }
}
window = { $place ->
    [after_colon] richtig zwischen { $from } und { $to } ({ $pots ->
        [one] { $pots } Stück). Darunter wurde es dünn, darüber dick.
       *[other] { $pots } Stücke). Darunter wurde es dünn, darüber dick.
    }
   *[alone] Richtig zwischen { $from } und { $to } ({ $pots ->
        [one] { $pots } Stück). Darunter wurde es dünn, darüber dick.
       *[other] { $pots } Stücke). Darunter wurde es dünn, darüber dick.
    }
}
window-upwards = { $place ->
    [after_colon] richtig ab { $from } ({ $pots ->
        [one] { $pots } Stück). Darunter wurde es dünn; ab wann es zu viel ist, ist noch nicht bekannt.
       *[other] { $pots } Stücke). Darunter wurde es dünn; ab wann es zu viel ist, ist noch nicht bekannt.
    }
   *[alone] Richtig ab { $from } ({ $pots ->
        [one] { $pots } Stück). Darunter wurde es dünn; ab wann es zu viel ist, ist noch nicht bekannt.
       *[other] { $pots } Stücke). Darunter wurde es dünn; ab wann es zu viel ist, ist noch nicht bekannt.
    }
}
window-downwards = { $place ->
    [after_colon] richtig bis { $to } ({ $pots ->
        [one] { $pots } Stück). Darüber wurde es dick; ab wann es zu wenig ist, ist noch nicht bekannt.
       *[other] { $pots } Stücke). Darüber wurde es dick; ab wann es zu wenig ist, ist noch nicht bekannt.
    }
   *[alone] Richtig bis { $to } ({ $pots ->
        [one] { $pots } Stück). Darüber wurde es dick; ab wann es zu wenig ist, ist noch nicht bekannt.
       *[other] { $pots } Stücke). Darüber wurde es dick; ab wann es zu wenig ist, ist noch nicht bekannt.
    }
}
all-right = { $place ->
    [after_colon] { $pots ->
        [one] das einzige Stück ist richtig geworden ({ $range }). Wie viel weniger oder mehr noch geht, ist noch nicht bekannt.
       *[other] alle { $pots } Stücke sind richtig geworden ({ $range }). Wie viel weniger oder mehr noch geht, ist noch nicht bekannt.
    }
   *[alone] { $pots ->
        [one] Das einzige Stück ist richtig geworden ({ $range }). Wie viel weniger oder mehr noch geht, ist noch nicht bekannt.
       *[other] Alle { $pots } Stücke sind richtig geworden ({ $range }). Wie viel weniger oder mehr noch geht, ist noch nicht bekannt.
    }
}
most-right = { $pots ->
    [one] { $right } von { $pots } Stück ist richtig geworden ({ $range }). Wie viel weniger oder mehr noch geht, ist noch nicht bekannt.
   *[other] { $right } von { $pots } Stücken sind richtig geworden ({ $range }). Wie viel weniger oder mehr noch geht, ist noch nicht bekannt.
}
looks = { $thickness ->
    [thin] { $pots ->
        [one] { $pots } dünn
       *[other] { $pots } dünn
    }
    [thick] { $pots ->
        [one] { $pots } dick
       *[other] { $pots } dick
    }
   *[right] { $pots ->
        [one] { $pots } richtig
       *[other] { $pots } richtig
    }
}
range = { $from } bis { $to }
best-near = Am besten um { $best }, höchstwahrscheinlich zwischen { $low } und { $high }. Innerhalb des Fensters sollten mindestens { $sure } von 100 Stücken richtig werden.

came-out = { $thickness ->
    [thin] Dünn geworden
    [thick] Dick geworden
   *[right] Richtig geworden
}
the-window = Fenster
best-amount = Am besten, { $amount }
aimed-at-today = Heutiges Ziel, { $amount }
laydown-axis = Auftragsmenge, { $unit }
looks-at = { $thickness ->
    [thin] { $pots ->
        [one] { $pots } dünn bei { $range }
       *[other] { $pots } dünn bei { $range }
    }
    [thick] { $pots ->
        [one] { $pots } dick bei { $range }
       *[other] { $pots } dick bei { $range }
    }
   *[right] { $pots ->
        [one] { $pots } richtig bei { $range }
       *[other] { $pots } richtig bei { $range }
    }
}
chart-words = { $scope }. { $finding } { $looks }. Heutiges Ziel: { $aim }.

faults-by-side = { $above } über dem Fenster, { $within } darin, { $below } darunter.
faults-of-all = { $pots ->
    [one] { $share } Stück.
   *[other] { $share } Stücken.
}
share = { $with } von { $of } ({ $low } bis { $high } %)
no-pot-there = kein Stück
above-window = Darüber
within-window = Fenster
below-window = Darunter
share-of-pots = Stücke mit dem Fehler
so-far = Stücke bisher
may-be-share = So viele können es bei so wenigen Stücken sein
fault-chart-words = { $fault }: { $counts }
more-with-less = Häufiger mit weniger Glasur.
more-within = Häufiger innerhalb des Fensters.
more-with-more = Häufiger mit mehr Glasur.

rests-on-controls = { $pieces ->
    [one] { $pieces } Vergleichsstück, { $laydown }
   *[other] { $pieces } Vergleichsstücke, im Schnitt { $laydown }
}
rests-on-tiles = { $tiles ->
    [one] { $tiles } Probeplättchen, { $laydown }
   *[other] { $tiles } Probeplättchen, im Schnitt { $laydown }
}
rests-on-start = Noch kein Vergleichsstück oder Probeplättchen: Startwert, { $laydown }

aims-title = Aufträge gegen ihr Ziel
aims-axis = { $coats ->
    [one] Der letzte Auftrag
   *[other] Die letzten { $coats } Aufträge
}
aim = Ziel
a-coat = Auftrag
far-off = Weit weg von den anderen
moving-average = Gleitender Mittelwert
the-aim = Ziel
within-limits = Band, in dem die Aufträge das Ziel halten
aims-on = { $coats ->
    [one] Der letzte Auftrag liegt genau auf dem Ziel.
   *[other] Die letzten { $coats } Aufträge liegen im Schnitt genau auf dem Ziel.
}
aims-over = { $coats ->
    [one] Der letzte Auftrag liegt { $percent } über dem Ziel.
   *[other] Die letzten { $coats } Aufträge liegen im Schnitt { $percent } über dem Ziel.
}
aims-short = { $coats ->
    [one] Der letzte Auftrag liegt { $percent } unter dem Ziel.
   *[other] Die letzten { $coats } Aufträge liegen im Schnitt { $percent } unter dem Ziel.
}
aims-steady = Sie halten das Ziel.
aims-outside = { $coats ->
    [one] Einer liegt weit weg von den anderen.
   *[other] { $coats } liegen weit weg von den anderen.
}

last-set = { $zone ->
    [inside] Letzte Serie: { $form }, innen
    [outside] Letzte Serie: { $form }, außen
   *[whole] Letzte Serie: { $form }, innen und außen
}
last-set-weights = { $pieces ->
    [one] { $pieces } Stück, { $when }: im Schnitt { $mean } nass, { $least } bis { $most }, Standardabweichung { $spread }.
   *[other] { $pieces } Stücke, { $when }: im Schnitt { $mean } nass, { $least } bis { $most }, Standardabweichung { $spread }.
}

drift-over = { $coats ->
    [one] Beginn { $since }: { $coats } Auftrag liegt { $percent } über dem Ziel.
   *[other] Beginn { $since }: { $coats } Aufträge liegen im Schnitt { $percent } über dem Ziel.
}
drift-short = { $coats ->
    [one] Beginn { $since }: { $coats } Auftrag liegt { $percent } unter dem Ziel.
   *[other] Beginn { $since }: { $coats } Aufträge liegen im Schnitt { $percent } unter dem Ziel.
}
drift-is-over = Danach halten sie das Ziel wieder.
near = Neu um diese Zeit: { $changes }.
nothing-near = Um diese Zeit nichts Neues: kein Eimer, keine Dichtemessung, keine Waage, keine Masse.
near-bucket = Eimer { $name }
near-scale = Waage { $name }
near-body = Masse { $name }
near-check = Dichte gemessen, { $sg }
check-when-over = Die Dichte im Eimer prüfen, und wie lange getaucht wird.
check-when-short = Die Dichte im Eimer prüfen, und ob die Schrühware feucht ist.
drift-began = Beginn der Abweichung
drift-noted = Gesehen: neu beginnen
drift-is-noted = Gesehen. Aufträge werden von neuem mit ihrem Ziel verglichen.

sizes-title = { $zone ->
    [inside] Größen: { $shape }, innen
    [outside] Größen: { $shape }, außen
   *[whole] Größen: { $shape }, innen und außen
}
sizes-rest-on = { $pots ->
    [one] Aus { $pots } gebrannten Stück dieser Form, für den Eimer von heute.
   *[other] Aus { $pots } gebrannten Stücken dieser Form, für den Eimer von heute.
}
form-and-capacity = { $form }, { $volume }
next-size = Nächste Größe, { $volume }
size-amount = { $aim } ({ $low } bis { $high })
holds = Inhalt, { $unit }
aim-may-be = Hier kann das Ziel liegen
sizes-words = { $title }; { $sizes }.
size-at = bei { $volume } { $wet }

sets-title = Passende Serien
waiting-shelf = { $zone ->
    [inside] Wartet: { $form }, innen
    [outside] Wartet: { $form }, außen
   *[whole] Wartet: { $form }, innen und außen
}
fired-shelf = { $zone ->
    [inside] Richtig geworden: { $form }, innen
    [outside] Richtig geworden: { $form }, außen
   *[whole] Richtig geworden: { $form }, innen und außen
}
best-set = Die besten { $size }, höchstens { $percent } auseinander: { $pieces }.
next-to-match = Das nächste passende Stück: { $wet }.

use-title = Verbrauch
each-week = In der Woche
weekly = { $coats ->
    [one] { $wet } nass, aus { $coats } Auftrag der letzten { $weeks } Wochen.
   *[other] { $wet } nass, aus { $coats } Aufträgen der letzten { $weeks } Wochen.
}
bucket-left = { $coats ->
    [0] { $wet } übrig: weniger als ein Drittel des Ansatzes. Nachmischen.
    [one] { $wet } übrig: noch { $coats } Auftrag, bis ein Drittel zum Tauchen bleibt.
   *[other] { $wet } übrig: noch etwa { $coats } Aufträge, bis ein Drittel zum Tauchen bleibt.
}
to-fill-up = Zum Auffüllen: { $powder } Pulver und { $water } Wasser. Atemschutzmaske tragen.

near-hand = erste Aufträge von { $name }
hands-title = Hände
hand-on = { $coats ->
    [one] { $coats } Auftrag, genau auf dem Ziel
   *[other] { $coats } Aufträge, im Schnitt genau auf dem Ziel
}
hand-over = { $coats ->
    [one] { $coats } Auftrag, { $percent } über dem Ziel
   *[other] { $coats } Aufträge, im Schnitt { $percent } über dem Ziel
}
hand-short = { $coats ->
    [one] { $coats } Auftrag, { $percent } unter dem Ziel
   *[other] { $coats } Aufträge, im Schnitt { $percent } unter dem Ziel
}
hand-spread = { $mean }. Standardabweichung { $spread }.
bisque-title = Schrühware: { $body }
newest-lot = Die neueste Charge nimmt { $percent } auf.
lots-axis = Chargen, die älteste zuerst
a-lot = Eine Charge
in-their-order = In ihrer Folge
usual-bisque = Üblich für Kegel 06 bis 04
repeats-title = Waage: { $scale }
repeats-worse-now = Sie wiederholt auf { $now }, schlechter als { $before } in der Prüfung davor. Waagerecht stellen, unter der Platte reinigen, Batterie wechseln und neu prüfen.
repeats-better-now = Sie wiederholt auf { $now }, besser als { $before } in der Prüfung davor.
repeats-as-before = Sie wiederholt auf { $now }, wie in der Prüfung davor.
tests-axis = Prüfungen, die älteste zuerst
a-test = Standardabweichung einer Prüfung
test-reaches = Wie sicher sie ist
the-step = Ein Teilungsschritt der Anzeige
sg-title = Dichte: { $bucket }
sg-steady = { $checks } Prüfungen, die Dichte blieb bei { $last }.
sg-rose = Sie ist dicker geworden: Dichte { $first } am { $day }, jetzt { $last }.
sg-fell = Sie ist dünner geworden: Dichte { $first } am { $day }, jetzt { $last }.
working-sg = Arbeitsdichte { $sg }
flow-title = Auslaufzeit: { $bucket }
flow-went = { $first } s am { $day }, jetzt { $last } s, Becher: { $cup }.
any-cup = derselbe
volume-title = Menge: { $bucket }
volume-went = { $first } l am { $day }, jetzt { $last } l, nach dem Füllstand.
one-check = Eine Ablesung
over-time = Im Lauf der Zeit
