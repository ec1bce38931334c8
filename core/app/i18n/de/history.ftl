### Not yet read by a native potter.

recent-changes = Letzte Änderungen
nothing-done = Noch keine Änderungen.
how-to-read = Das Neueste zuerst. Änderungen von diesem Handy lassen sich rückgängig machen und wiederholen.
how-to-read-one = Das Neueste zuerst. Haben zwei Handys Verschiedenes gespeichert, gilt das Spätere. Das andere bleibt hier stehen.
nothing-to-redo = Nichts zu wiederholen.
redone = Wiederholt.

kind = { $kind ->
    [glaze] Glasur
    [bucket] Eimer
    [vessel] Messgefäß
    [form] Form
    [body] Masse
    [scale] Waage
    [kiln] Ofen
    [tile] Probeplättchen
    [check] Prüfung
    [bucket_entry] Eintrag zum Eimer
    [control] Vergleichsstück
    [coat] Auftrag
    [firing] Brand
    [piece] Stück
    [placement] Im Ofen
    [finding] Ergebnis
    [photo] Foto
    [scale_test] Waagenprüfung
    [bisque_lot] Schrühware
    [preference] Einheiten, Ton und Vibration
   *[other] Etwas aus einer neueren Version
}
kind-and-name = { $kind }: { $name }
title-and-more = { $more ->
    [one] { $title }, und { $more } weiteres
   *[other] { $title }, und { $more } weitere
}
not-here = nicht auf diesem Handy

when-and-where = { $moment }, { $phone }
changed = geändert: { $fields }
undone = rückgängig gemacht
came-back = rückgängig gemacht auf { $undone ->
    [this] diesem Handy
    [this-named] diesem Handy ({ $undone-name })
    [another] einem anderen Handy
   *[named] „{ $undone-name }“
}, aber { $edited ->
    [this] dieses Handy
    [this-named] dieses Handy ({ $edited-name })
    [another] ein anderes Handy
   *[named] „{ $edited-name }“
} hatte es geändert, darum ist es wieder da. Zum Entfernen noch einmal rückgängig machen
set-anew = { $phone ->
    [this] später auf diesem Handy geändert
    [this-named] später auf diesem Handy ({ $name }) geändert
    [another] später auf einem anderen Handy geändert
   *[named] später auf „{ $name }“ geändert
}
not-shown = verborgen, weil das, wozu es gehört, rückgängig gemacht wurde oder noch nicht angekommen ist
left-out = als unmöglich ausgelassen: { $fields }
its-was-undone = { $thing ->
    [glaze] die Glasur dazu wurde rückgängig gemacht: dort „Wiederholen“ antippen, um dies zurückzuholen
    [bucket] der Eimer dazu wurde rückgängig gemacht: dort „Wiederholen“ antippen, um dies zurückzuholen
    [vessel] das Messgefäß dazu wurde rückgängig gemacht: dort „Wiederholen“ antippen, um dies zurückzuholen
    [form] die Form dazu wurde rückgängig gemacht: dort „Wiederholen“ antippen, um dies zurückzuholen
    [body] die Masse dazu wurde rückgängig gemacht: dort „Wiederholen“ antippen, um dies zurückzuholen
    [scale] die Waage dazu wurde rückgängig gemacht: dort „Wiederholen“ antippen, um dies zurückzuholen
    [kiln] der Ofen dazu wurde rückgängig gemacht: dort „Wiederholen“ antippen, um dies zurückzuholen
    [firing] der Brand dazu wurde rückgängig gemacht: dort „Wiederholen“ antippen, um dies zurückzuholen
   *[other] das Zugehörige ({ $thing }) wurde rückgängig gemacht: dort „Wiederholen“ antippen, um dies zurückzuholen
}

field-and-value = { $field }: { $value }
field = { $field ->
    [name] Name
    [sensitivity] Empfindlichkeit gegen die Dicke
    [powder_density] Pulverdichte
    [starting_laydown] Auftragsmenge zum Start
    [drift_answered_at] Abweichung beantwortet
    [gone] entfernt oder archiviert
    [glaze] Glasur
    [volume] Volumen
    [mixed_at] angesetzt
    [bucket] Eimer
    [at] Datum
    [specific_gravity] Dichte
    [standard_uncertainty] Unsicherheit der Dichte
    [how] Verfahren
    [vessel] Messgefäß
    [full] Gewicht mit Glasur
    [temperature] Temperatur der Glasur
    [flow] Zeit im Auslaufbecher
    [note] Notiz
    [empty] Leergewicht
    [with_water] Gewicht mit Wasser
    [water_temperature] Wassertemperatur
    [class] Gestalt
    [capacity] Fassungsvermögen
    [inside_area] glasierte Fläche innen
    [outside_area] glasierte Fläche außen
    [profile] Außenprofil
    [traced] Unsicherheit des Umrisses vom Foto
    [stage] wann gemessen
    [body] Masse
    [wall] Wandstärke
    [floor] Bodenstärke
    [foot_width] Breite des Fußrings
    [foot_height] Höhe des Fußrings
    [bare_foot] glasurfreier Fuß
    [overlap] Überlappung
    [fill] Füllhöhe
    [handle_length] Länge des Henkels
    [handle_girth] Umfang des Henkels
    [extra_area] weitere glasierte Fläche
    [bisque] Schrühgewicht
    [to_bisque] Schwindung bis zum Schrühbrand
    [to_fired] Schwindung bis zum Glasurbrand
    [bisque_density] Dichte der Schrühware
    [step] Teilung
    [minimum] Mindestlast
    [repeatability] Wiederholbarkeit
    [piece] Stück
    [form] Form
    [zone] Bereich
    [scale] Waage
    [bare] Gewicht unglasiert
    [glazed] Gewicht glasiert
    [net] Nassgewicht
    [added] nachgebessert: dazu
    [rubbed_off] abgerieben
    [hand] wer glasiert hat
    [sg_uncertainty] Unsicherheit der Dichte
    [area] glasierte Fläche
    [aim] Ziel
    [low] mindestens akzeptiert
    [high] höchstens akzeptiert
    [source] Grundlage des Ziels
    [verdict] Urteil
    [laydown] Auftragsmenge
    [control] Vergleichsstück
    [code] Code auf dem Fuß
    [round] runde Platten
    [across] Breite der Platten
    [deep] Tiefe der Platten
    [shelves] Anzahl der Platten
    [kiln] Ofen
    [cone] Zielkegel
    [cone_kind] Kegelart
    [state] Stand des Brandes
    [number] Nummer des Brandes
    [fires] was gebrannt wird
    [program] Programm
    [fired_at] gebrannt
    [top] höchste Temperatur
    [minutes] Brenndauer in Minuten
    [witnesses] Brennkegel
    [checked] Prüfliste
    [firing] Brand
    [shelf] Platte
    [x] Abstand von links
    [y] Abstand von vorn
    [inside] innen
    [outside] außen
    [faults] Fehler
    [liking] Bewertung
    [again] noch einmal zu brennen
    [sha256] Bilddatei
    [width] Bildbreite
    [height] Bildhöhe
    [dry] Trockengewicht des Auftrags
    [dry_uncertainty] Unsicherheit des Trockengewichts
    [dip] Tauch- oder Gießzeit
    [ask_dip] nach Tauchzeiten fragen
    [accuracy_class] Genauigkeitsklasse
    [readings] Prüfwägungen
    [known] bekanntes Gewicht
    [shown] bekanntes Gewicht laut Anzeige
    [soaking] Art des Wässerns
    [bone_dry] Gewicht ganz trocken
    [soaked] Gewicht getränkt
    [suspended] Gewicht in Wasser
    [coats] Zahl der Aufträge
    [mass] Gewichte
    [length] Längen
    [decimal] Dezimalzeichen
    [speak] Urteil ansagen
    [tick] bei jeder Taste ticken
    [code_pieces] jedes Stück mit Code
    [phone] Name des Handys
    [materials] Rohstoffe
    [density_from] Herkunft der Pulverdichte
    [hazards] berichtigte Gefahren
    [working_sg] Arbeitsdichte
    [diameter] Durchmesser des Eimers
    [depth] Tiefe des Eimers
    [cup] Auslaufbecher
    [what] was gemacht wurde
    [amount] Menge
    [level] Füllstand
   *[other] { $words }
}
value-none = nichts
value-yes = ja
value-no = nein
value-list = { $entries ->
    [one] { $entries } Eintrag
   *[other] { $entries } Einträge
}
value-kept = gespeichert
value-code = { $code ->
    [class-cylinder_mug] gerader Becher
    [class-rounded_mug] bauchiger Becher
    [class-open_bowl] offene Schale
    [class-deep_bowl] tiefe Schüssel
    [class-plate] Teller
    [class-bottle] Flasche
    [class-jar] Dose
    [class-vase] Vase
    [class-teapot] Teekanne
    [class-planter] Übertopf
    [class-tile] Fliese
    [stage-bisque] geschrüht
    [stage-thrown] frisch gedreht
    [stage-fired] glasurgebrannt
    [sensitivity-low] gutmütig
    [sensitivity-medium] normal
    [sensitivity-high] empfindlich
    [how-vessel] Messgefäß
    [how-volume] abgemessenes Volumen
    [how-hydrometer] Aräometer
    [how-typed] eingegeben
    [source-control] Vergleichsstück
    [source-control_by_area] Vergleichsstück, über die Fläche
    [source-control_by_capacity] Vergleichsstück, über das Fassungsvermögen
    [source-tile] Probeplättchen
    [source-starting] Startwert
    [source-told] Tabelle
    [verdict-within] passt
    [verdict-short] zu wenig
    [verdict-over] zu viel
    [verdict-cannot_tell] unklar
    [cone_kind-self_supporting] selbststehend
    [cone_kind-large] groß
    [state-loading] wird eingesetzt
    [state-fired] gebrannt, auszuräumen
    [state-done] ausgeräumt
    [fires-glazed] glasierte Ware
    [fires-bisque] Schrühbrand
    [soaking-boil] gekocht
    [soaking-cold] kalt gewässert
    [soaking-vacuum] unter Vakuum
    [zone-inside] innen
    [zone-outside] außen
    [zone-whole] innen und außen
    [inside-thin] dünn
    [inside-right] richtig
    [inside-thick] dick
    [outside-thin] dünn
    [outside-right] richtig
    [outside-thick] dick
    [overlap-thin] dünn
    [overlap-right] richtig
    [overlap-thick] dick
    [density_from-materials] aus den Rohstoffen
    [density_from-own] eigener Wert
    [what-water] Wasser zugegeben
    [what-water_off] Wasser abgenommen
    [what-powder] trockene Glasur zugegeben
    [what-flocculant] Stellmittel
    [what-deflocculant] Verflüssiger
    [what-sieved] gesiebt
    [what-level] Füllstand
    [what-weighed] mit der Glasur gewogen
    [what-note] Notiz
   *[other] { $words }
}
