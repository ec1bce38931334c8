### Not yet read by a native potter.

dust = Staub
dust-text = Trockene Glasur und trockener Ton enthalten Quarz, der die Lunge auf Dauer schädigt. Nass putzen, nie trocken fegen. Pulver ins Wasser geben, nicht Wasser ins Pulver. Lässt sich Staub nicht vermeiden, für Quarzstaub zugelassenen Atemschutz tragen. Vorrang haben die Regeln am Arbeitsplatz und die Sicherheitsdatenblätter.
materials = Giftige und lösliche Rohstoffe
materials-text = Manche Glasurrohstoffe sind giftig, manche lösen sich und gehen durch die Haut. Jedes Sicherheitsdatenblatt lesen, Handschuhe tragen, Essen und Trinken aus dem Raum fernhalten, Hände waschen. Abfälle nach den örtlichen Vorschriften entsorgen.
spraying = Spritzen
spraying-text = Spritznebel dringt tief in die Lunge. Nur in einer Kabine mit funktionierender Absaugung spritzen und dafür zugelassenen Atemschutz tragen. Zur Absaugung eine zugelassene Fachkraft fragen.
food = Essen und Trinken
food-text = Die richtige Menge macht eine Glasur nicht für Lebensmittel geeignet. Nur eine Laborprüfung am gebrannten Stück kann zeigen, was sich daraus löst, und was erlaubt ist, sagt das örtliche Recht.
crazing = Haarrisse und kochendes Wasser
crazing-text = Ein Stück mit Haarrissen oder ein dickes Stück kann brechen, wenn kochendes Wasser hineinkommt. Unerprobte Ware auf Armeslänge über dem Becken testen und nie auf gut Glück für heiße Getränke verkaufen.
edges = Scharfe Kanten
edges-text = Gebrannte Glasurtropfen und abgeschlagene Ränder schneiden wie Klingen. Vor dem Brand glätten, beim Schleifen Augenschutz und Handschuhe tragen, frische Scherben nicht anfassen.
kiln = Der Ofen
kiln-text = An Öfen verbrennt man sich, sie geben Dämpfe ab und führen gefährliche Spannung. Den Raum lüften, alles Brennbare weit weg halten und die Anleitung des Herstellers befolgen. Elektrik und Gas zugelassenen Fachleuten überlassen.
