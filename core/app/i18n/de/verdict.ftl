### Not yet read by a native potter.

headline-within = PASST
headline-short = ZU WENIG
headline-over = ZU VIEL
headline-cannot-tell = UNKLAR
headline-near = { $because ->
    [guess] NAH AN DER ERSTEN SCHÄTZUNG
    [tiles] NAH AN DEN PROBEPLÄTTCHEN
    [bucket] NAH DRAN: DICHTE NICHT GEPRÜFT
    [pots] NAH DRAN: NOCH ZU WENIG STÜCKE
   *[area] NAH DRAN: FLÄCHE NICHT GEMESSEN
}
headline-under = { $because ->
    [guess] UNTER DER ERSTEN SCHÄTZUNG
    [tiles] UNTER DEN PROBEPLÄTTCHEN
    [bucket] DARUNTER: DICHTE NICHT GEPRÜFT
    [pots] DARUNTER: NOCH ZU WENIG STÜCKE
   *[area] DARUNTER: FLÄCHE NICHT GEMESSEN
}
headline-above = { $because ->
    [guess] ÜBER DER ERSTEN SCHÄTZUNG
    [tiles] ÜBER DEN PROBEPLÄTTCHEN
    [bucket] DARÜBER: DICHTE NICHT GEPRÜFT
    [pots] DARÜBER: NOCH ZU WENIG STÜCKE
   *[area] DARÜBER: FLÄCHE NICHT GEMESSEN
}

save-it = Speichern
add = Noch { $amount } auftragen
take-off = { $amount } abnehmen
use-finer-scale = Feinere Waage nehmen
add-and-use-finer-scale = Etwas auftragen, dann feinere Waage nehmen
take-off-and-use-finer-scale = Etwas abnehmen, dann feinere Waage nehmen
add-or-save = Noch { $amount } auftragen oder speichern
take-off-or-save = { $amount } abnehmen oder speichern
add-to-be-sure = Sicherheitshalber { $amount } auftragen
take-off-to-be-sure = Sicherheitshalber { $amount } abnehmen

on-the-aim = Genau auf dem Ziel.
under-the-aim = { $amount } unter dem Ziel, im Rahmen von { $span }.
over-the-aim = { $amount } über dem Ziel, im Rahmen von { $span }.
target-too-coarse = Ziel { $span }. Diese Waage ist zu grob, um sicher zu sein.
target-add = Ziel { $span }. Noch { $amount } auftragen, dann ist es genau.
target-take-off = Ziel { $span }. { $amount } mit dem Schwamm abnehmen, abschaben oder abwaschen, dann ist es genau.
guess-on-the-aim = Auf dem Ziel. Richtig ist vielleicht { $span }.
guess-under-the-aim = { $amount } unter dem Ziel. Richtig ist vielleicht { $span }.
guess-over-the-aim = { $amount } über dem Ziel. Richtig ist vielleicht { $span }.
scale-too-coarse = Zu grob: Diese Waage zeigt in Schritten von { $step } an, und das Ziel ist { $span }.
too-near-the-edge = Zu nah an der Grenze von { $span } für eine Waage, die in Schritten von { $step } anzeigt.

rests-on-fired = { $right ->
    [one] Beruht auf 1 Vergleichsstück, das richtig geworden ist.
   *[other] Beruht auf { $right } Vergleichsstücken, die richtig geworden sind.
}
rests-on-controls = { $pieces ->
    [one] Beruht auf 1 Vergleichsstück, nach dem Brand nicht beurteilt.
   *[other] Beruht auf { $pieces } Vergleichsstücken, keines nach dem Brand beurteilt.
}
rests-on-tiles = Beruht auf Probeplättchen, nicht auf Stücken.
rests-on-start = Noch keine Stücke oder Probeplättchen mit dieser Glasur.
sg-checked = Dichte geprüft: { $when }.
sg-not-checked = Dichte nicht geprüft.
area-not-measured = Fläche geschätzt.

certainty = Auf ±{ $half_width } genau.
carries = { $dry } trocken, { $laydown }
on-control = Auf dem Vergleichsstück würde dieser Auftrag { $amount } wiegen.

spoken-grams = { $form ->
    [single] { $number } Gramm
   *[several] { $number } Gramm
}
spoken-ounces = { $form ->
    [single] { $number } Unze
   *[several] { $number } Unzen
}
spoken-within = Passt. Speichern.
spoken-short = Zu wenig. Noch { $amount } auftragen.
spoken-over = Zu viel. { $amount } abnehmen.
spoken-near = { $because ->
    [guess] Nah an der ersten Schätzung. Speichern.
    [tiles] Nah an den Probeplättchen. Speichern.
    [bucket] Nah dran, aber die Dichte ist nicht geprüft. Speichern.
    [pots] Nah dran, aber noch aus zu wenigen Stücken. Speichern.
   *[area] Nah dran, aber die Fläche ist nicht gemessen. Speichern.
}
spoken-under = { $because ->
    [guess] Unter der ersten Schätzung. Noch { $amount } auftragen oder speichern.
    [tiles] Unter den Probeplättchen. Noch { $amount } auftragen oder speichern.
    [bucket] Darunter, aber die Dichte ist nicht geprüft. Noch { $amount } auftragen oder speichern.
    [pots] Darunter, aber noch aus zu wenigen Stücken. Noch { $amount } auftragen oder speichern.
   *[area] Darunter, aber die Fläche ist nicht gemessen. Noch { $amount } auftragen oder speichern.
}
spoken-above = { $because ->
    [guess] Über der ersten Schätzung. { $amount } abnehmen oder speichern.
    [tiles] Über den Probeplättchen. { $amount } abnehmen oder speichern.
    [bucket] Darüber, aber die Dichte ist nicht geprüft. { $amount } abnehmen oder speichern.
    [pots] Darüber, aber noch aus zu wenigen Stücken. { $amount } abnehmen oder speichern.
   *[area] Darüber, aber die Fläche ist nicht gemessen. { $amount } abnehmen oder speichern.
}
spoken-short-too-coarse = Zu wenig. Etwas auftragen, dann eine feinere Waage nehmen.
spoken-over-too-coarse = Zu viel. Etwas abnehmen, dann eine feinere Waage nehmen.
spoken-too-coarse = Unklar. Diese Waage ist zu grob.
spoken-add-to-be-sure = Unklar. Sicherheitshalber { $amount } auftragen.
spoken-take-off-to-be-sure = Unklar. Sicherheitshalber { $amount } abnehmen.

no-number = Das ist kein Gewicht. Eingeben, was die Waage zeigt.
no-bare = Das unglasierte Stück muss etwas wiegen. Vor dem Glasieren wiegen.
glazed-under-bare = Glasiert ({ $glazed }) wiegt es weniger als unglasiert ({ $bare }). Prüfen, ob beides zu diesem Stück gehört und nicht vertauscht ist.
negative = Das Gewicht liegt unter null. Mit dem unglasierten Stück auf der Waage tarieren, dann neu wiegen.
nothing = Die Waage zeigt keine Glasur. Das Stück nach dem Auftragen wiegen.
over-capacity = { $weight } ist mehr, als diese Waage wiegt ({ $capacity }). Eine größere nehmen oder die benutzte Waage wählen.
under-minimum = { $weight } ist weniger, als diese Waage wiegen sollte ({ $minimum }). Eine feinere nehmen.
finer-than-step = Diese Waage zeigt in Schritten von { $step } an und kann { $weight } nicht zeigen. Eingeben, was sie zeigt, oder die benutzte Waage wählen.
more-than-piece-holds = { $weight } ist mehr Glasur, als dieses Stück tragen kann (höchstens etwa { $most }). Prüfen, ob mit dem unglasierten Stück tariert wurde.

read-at-once = Ablesen, sobald nichts mehr tropft. Der Auftrag verliert von der ersten Minute an Wasser.
weigh-again-first = Das Stück unmittelbar vor diesem Auftrag noch einmal wiegen und dieses Gewicht als Tara nehmen: Die Wand hält noch Wasser vom vorigen Auftrag. Dann ablesen, sobald nichts mehr tropft.

no-step = Die Teilung der Waage angeben, zum Beispiel 0,1 g.
no-capacity = Die Höchstlast der Waage angeben. Sie muss weit größer sein als die Teilung.
minimum = Die Mindestlast der Waage muss kleiner sein als ihre Höchstlast. Leer lassen, wenn unbekannt.
repeatability = Die Wiederholbarkeit der Waage kann nicht stimmen. Eine Sache zehnmal wiegen oder leer lassen.

scale-decides = Diese Waage zeigt in Schritten von { $step } an, fein genug für diesen Auftrag.
scale-decides-only-just = Diese Waage zeigt in Schritten von { $step } an, gerade noch fein genug für diesen Auftrag. Eine feinere würde mehr sagen.
scale-is-too-coarse = Diese Waage zeigt in Schritten von { $step } an: Kein Gewicht, das sie zeigt, kann passen.
weigh-together = { $together } Stücke zusammen wiegen (Ziel { $total }).
weigh-finer = Eine Waage nehmen, die in Schritten von { $fine } oder feiner anzeigt.
weigh-together-or-finer = { $together } Stücke zusammen wiegen (Ziel { $total }) oder eine Waage nehmen, die in Schritten von { $fine } anzeigt.
scale-is-too-small = Das Stück mit seinem Auftrag ist mehr, als diese Waage wiegt ({ $capacity }).
laboratory-balance = Nur eine Laborwaage wiegt { $capacity } in Schritten von { $step }. Noch einmal auf dem Schild nachsehen.
very-few-steps = Eine Waage für { $capacity } mit Schritten von { $step } hat sehr wenige Schritte. Noch einmal auf dem Schild nachsehen.
