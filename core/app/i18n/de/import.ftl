### Not yet read by a native potter.

intro = Prüfen, wofür laydown jede Spalte hält, und ändern, was nicht stimmt. Bis zum Import wird nichts gespeichert, und ein einziges Rückgängig entfernt alles wieder.
take-in-nothing = Nichts zu importieren
take-in = { $readings ->
    [one] { $readings } Wägung importieren
   *[other] { $readings } Wägungen importieren
}

found-but-open = { $lines ->
    [one] { $lines } Zeile gefunden. Erst die Fragen beantworten.
   *[other] { $lines } Zeilen gefunden. Erst die Fragen beantworten.
}
would-be-imported = { $readings ->
    [one] { $readings } Wägung würde importiert.
   *[other] { $readings } Wägungen würden importiert.
}
nothing-would-be-imported = Es würde nichts importiert.
with-results = { $readings ->
    [one] Bei { $readings } davon steht, wie das Stück aus dem Ofen kam.
   *[other] Bei { $readings } davon steht, wie das Stück aus dem Ofen kam.
}
here-already = { $lines ->
    [one] { $lines } Zeile ist schon hier.
   *[other] { $lines } Zeilen sind schon hier.
}
cannot-be-imported = { $lines ->
    [one] { $lines } Zeile lässt sich nicht importieren.
   *[other] { $lines } Zeilen lassen sich nicht importieren.
}
imported = { $readings ->
    [one] Importiert: { $readings } Wägung.
   *[other] Importiert: { $readings } Wägungen.
}
left-out = { $lines ->
    [one] { $lines } Zeile wurde ausgelassen.
   *[other] { $lines } Zeilen wurden ausgelassen.
}

sg-assumed = { $readings ->
    [one] { $readings } Wägung hat keine Dichte in der Tabelle und keine frühere Prüfung. Dichte { $sg } wird angenommen, und das Urteil ist nur so gut wie sie.
   *[other] { $readings } Wägungen haben keine Dichte in der Tabelle und keine frühere Prüfung. Dichte { $sg } wird angenommen, und das Urteil ist nur so gut wie sie.
}
sg-very-thin = { $readings ->
    [one] { $readings } Wägung hat eine Dichte unter { $least }, sehr dünn für eine Glasur. Prüfen, ob es die richtige Spalte ist.
   *[other] { $readings } Wägungen haben eine Dichte unter { $least }, sehr dünn für eine Glasur. Prüfen, ob es die richtige Spalte ist.
}
new-buckets = Neue Eimer: { $buckets }.
new-buckets-and-more = { $more ->
    [one] Neue Eimer: { $buckets } und { $more } weiterer.
   *[other] Neue Eimer: { $buckets } und { $more } weitere.
}
read-as-windows = Die Datei ist nicht in UTF-8 und wurde als ältere Windows-Datei gelesen. Prüfen, ob Umlaute und Akzente stimmen.

role = { $role ->
    [date] Datum
    [time] Uhrzeit
    [form] Form
    [glaze] Glasur
    [bucket] Eimer
    [zone] Bereich
    [wet] Nassgewicht
    [bare] unglasiertes Stück
    [glazed] glasiertes Stück
    [specific_gravity] Dichte
    [piece] Stück
    [code] Code auf dem Fuß
    [control] Vergleichsstück, ja oder nein
    [note] Notiz
    [aim] Ziel
    [low] mindestens akzeptiert
    [high] höchstens akzeptiert
    [verdict] Urteil
    [fired] Tag des Brands
    [cone] Kegel
    [result] dünn, richtig oder dick
    [faults] Fehler
    [liking] Bewertung, 1 bis 5
   *[nothing] auslassen
}
column-number = Spalte { $number }
column-empty = Leer

ask-order = Reihenfolge im Datum
ask-order-help = Manche Daten lassen sich zweifach lesen: 3/11 ist im März oder im November.
date-order = { $order ->
    [month_first] Monat, Tag, Jahr
   *[day_first] Tag, Monat, Jahr
}
ask-decimal = Dezimalzeichen
ask-decimal-help = 1,234 kann etwas über eins heißen oder mehr als tausend.
ask-unit = Gewichtseinheit
ask-unit-help = Gilt, wo weder die Spalte noch die Zelle eine nennt.
unit = { $unit ->
    [kg] Kilogramm
    [oz] Unzen
    [lb] Pfund (lb)
   *[g] Gramm
}
ask-form = Form, alle Zeilen
ask-glaze = Glasur, alle Zeilen
ask-zone = Bereich, alle Zeilen
ask-cone = Kegel, alle Brände
ask-kiln = Ofen
ask-scale = Waage
ask-scale-help = Die, auf der gewogen wurde. Das Urteil hängt von ihrer Teilung ab.
ask-form-name = Form „{ $cell }“
ask-glaze-name = Glasur „{ $cell }“
ask-name-help = { $lines ->
    [one] In { $lines } Zeile. In der Werkstatt gibt es nichts mit diesem Namen.
   *[other] In { $lines } Zeilen. In der Werkstatt gibt es nichts mit diesem Namen.
}
leave-lines-out = Diese Zeilen auslassen
make-glaze = Diese Glasur hinzufügen
make-glaze-help = Mit den üblichen Werten; danach unter Werkstatt berichtigen.

two-columns = Zwei Spalten stehen auf „{ $role }“. Eine auslassen.
no-date-column = Keine Spalte steht auf „Datum“. Eine wählen.
no-weight-column = Keine Spalte steht auf „Nassgewicht“. Eine wählen, oder je eine für das unglasierte und das glasierte Stück.
no-form-column = Keine Spalte steht auf „Form“. Eine wählen, oder eine Form für alle Zeilen.
no-glaze-column = Keine Spalte steht auf „Glasur“. Eine wählen, oder eine Glasur für alle Zeilen.
no-zone-column = Keine Spalte steht auf „Bereich“. Eine wählen, oder einen Bereich für alle Zeilen.
no-fired-column = Keine Spalte ist als Tag des Brands gewählt. Eine wählen, oder die Ergebnisse weglassen.
no-cone-column = Keine Spalte ist als Kegel gewählt. Eine wählen, oder einen Kegel für alle Brände.
no-kiln-yet = Hier gibt es noch keinen Ofen. Erst den hinzufügen, in dem gebrannt wurde: Werkstatt, Öfen.
no-scale-yet = Hier gibt es noch keine Waage. Erst die hinzufügen, auf der gewogen wurde: Werkstatt, Waagen.
say-order = Wählen, was in den Daten zuerst kommt: der Tag oder der Monat.
say-decimal = Das Dezimalzeichen der Gewichte wählen: 1,234 lässt sich zweifach lesen.

line-error = Zeile { $line }: { $why }
more-line-errors = { $lines ->
    [one] Und { $lines } weitere Zeile.
   *[other] Und { $lines } weitere Zeilen.
}
more-cells = Sie hat mehr Zellen, als es Spalten gibt. Auf ein Komma in einer Zahl oder einem Namen ohne Anführungszeichen prüfen.
no-zone = Der Bereich fehlt. Innen, außen oder beide schreiben.
not-a-zone = „{ $cell }“ ist kein Bereich. Innen, außen oder beide schreiben.
no-firing-date = Es steht da, wie es herauskam, aber nicht, wann gebrannt wurde. Den Tag des Brands angeben.
fired-before-glazed = Es wurde gebrannt, bevor es glasiert war. Beide Daten prüfen.
no-cone = Ohne Kegel. Den Kegel angeben, auf den gebrannt wurde, etwa 6 oder 06.
not-a-cone = „{ $cell }“ ist kein Kegel. Seine Nummer schreiben, etwa 6 oder 06.
not-a-result = „{ $cell }“ ist kein Ergebnis. Dünn, richtig oder dick schreiben.
not-a-fault = „{ $cell }“ ist kein Fehler, den laydown kennt. Ihn so schreiben wie auf der Seite nach einem Brand, oder in die Notizen nehmen.
not-a-rating = „{ $cell }“ ist keine Bewertung. Eine Zahl von 1 bis 5 schreiben.
places-not-known = Aus einer Tabelle importiert. Wo die Stücke auf den Platten standen, ist nicht bekannt.
not-a-code = „{ $cell }“ ist kein Code von laydown. Diese Spalte stattdessen auf „Stück“ stellen.
not-yes-or-no = „{ $cell }“ ist weder ja noch nein, in der Spalte „Vergleichsstück“.
note-too-long = Die Notiz hat mehr als { $most } Zeichen. Kürzen.
name-too-long = Der Name „{ $cell }“ hat mehr als { $most } Zeichen. Kürzen.
no-date = Das Datum fehlt.
a-formula = „{ $cell }“ ist eine Formel. Die Tabelle mit dem Ergebnis speichern.
not-a-date = „{ $cell }“ ist kein Datum. Zum Beispiel 2026-11-25 schreiben.
not-a-time = „{ $cell }“ ist keine Uhrzeit. Zum Beispiel 14:30 schreiben.
still-to-come = { $cell } liegt in der Zukunft. Das Datum prüfen.
too-long-ago = { $cell } ist zu lange her. Wägungen lassen sich ab 1970 importieren.
no-form = Die Form fehlt.
form-not-here = Eine Form „{ $cell }“ gibt es hier nicht. Erst hinzufügen oder oben eine wählen.
no-glaze = Die Glasur fehlt.
glaze-not-here = Eine Glasur „{ $cell }“ gibt es hier nicht. Erst hinzufügen oder oben eine wählen.
no-weight = Das Gewicht fehlt.
weights-differ = Das Nassgewicht ist { $wet }, aber glasiert minus unglasiert ergibt { $difference }. Eines davon berichtigen.
aim-outside = Das Ziel { $aim } liegt nicht zwischen { $low } und { $high }. Berichtigen oder diese Spalten auslassen.
not-a-verdict = „{ $cell }“ ist kein Urteil. Passt, zu wenig, zu viel oder unklar schreiben, oder diese Spalte auslassen.
code-taken = Der Code { $code } steht schon auf einem anderen Stück, oder dieser Bereich hat schon einen Auftrag. Am Fuß nachsehen.
no-area = { $zone ->
    [inside] „{ $form }“ hat innen keine glasierte Fläche. Unter Werkstatt öffnen und eine angeben.
    [outside] „{ $form }“ hat außen keine glasierte Fläche. Unter Werkstatt öffnen und eine angeben.
   *[whole] „{ $form }“ hat innen und außen keine glasierte Fläche. Unter Werkstatt öffnen und eine angeben.
}
no-scale = Hier gibt es noch keine Waage.

piece-in-note = Stück { $piece }
piece-and-note = Stück { $piece }. { $note }
bucket-name = Aus der Tabelle

unreadable = Diese Datei ist nicht lesbar: { $details }. Neu wählen.
gone = Datei nicht gefunden. Neu wählen.
no-file = Das ist keine Datei. Die als CSV gespeicherte Tabelle wählen.
too-large = Diese Datei ist größer als 20 MB, zu groß für eine Tabelle mit Wägungen. Eine andere wählen oder sie aufteilen.
empty = Diese Datei ist leer. Die als CSV gespeicherte Tabelle wählen.
workbook = Diese Tabelle ist im eigenen Format ihres Programms gespeichert. Dort „Speichern unter“, CSV wählen und diese Datei importieren.
no-text = Das ist keine Textdatei. Die Tabelle als CSV speichern und dann wählen.
too-many-columns = { $columns ->
    [one] Diese Tabelle hat { $columns } Spalte; höchstens { $most } sind möglich. Nur die mit Wägungen speichern.
   *[other] Diese Tabelle hat { $columns } Spalten; höchstens { $most } sind möglich. Nur die mit Wägungen speichern.
}
too-many-lines = Diese Tabelle hat mehr als { $most } Zeilen. In mehrere Dateien aufteilen und einzeln importieren.
open-quote = Zeile { $line }: Ein Anführungszeichen wird geöffnet und nie geschlossen. Schließen oder entfernen und neu speichern.
no-lines = Unter der ersten Zeile stehen keine Wägungen. Eine andere Datei wählen.
