### Not yet read by a native potter.

no-amount = Zeile { $line }: hinter den Namen schreiben, wie viel, zum Beispiel Quarz 30.
which-amount = Zeile { $line } hat an beiden Enden eine Zahl. Erst den Namen, einen Strichpunkt, dann die Menge schreiben.
no-name = Zeile { $line } hat keinen Namen. Erst den Rohstoff, dann die Menge schreiben.
long-name = Zeile { $line }: Der Name ist zu lang. Höchstens 80 Buchstaben.
figure = Zeile { $line }: { $why }
nothing = Diese Rohstoffe ergeben zusammen nichts. Mindestens einem, der kein Zusatz ist, seine Teile geben.
too-many = Eine Glasur hat höchstens { $most } Rohstoffe. Zeilen entfernen, die keine Rohstoffe sind.
hurts-silica = Quarz: Der Staub schädigt die Lunge für immer. Atemschutz tragen, Pulver ins Wasser geben, nass aufwischen.
hurts-barium = Barium: giftig beim Verschlucken und Einatmen. Handschuhe und Atemschutz tragen und die Hände waschen.
hurts-manganese = Mangan: Staub und Ofenabgase schädigen die Nerven. Atemschutz tragen und den Ofen entlüften.
hurts-lithium = Lithium: giftig beim Verschlucken. Handschuhe tragen, von Essen und Kindern fernhalten.
hurts-cobalt = Kobalt: kann Allergien und vielleicht Krebs auslösen. Handschuhe und Atemschutz tragen.
hurts-chromium = Chrom: Manche Arten erzeugen Krebs, und der Brand kann sie bilden. Handschuhe und Atemschutz tragen und den Ofen entlüften.
hurts-nickel = Nickel: kann Allergien auslösen, der Staub vielleicht Krebs. Handschuhe und Atemschutz tragen.
hurts-vanadium = Vanadium: giftig, der Staub verätzt die Lunge. Handschuhe und Atemschutz tragen.
hurts-copper = Kupfer: schädlich beim Verschlucken, und viele Glasuren geben es ab. Nur eine Laborprüfung des gebrannten Stücks sagt es sicher.
hurts-soluble = Löslicher Rohstoff: greift Haut und Augen an. Handschuhe tragen und nicht in den Abfluss gießen.
hurts-lead = Blei: ein Gift, das sich im Körper anreichert. Nie für Essgeschirr verwenden und vor dem Umgang Fachleute fragen.
hurts-cadmium = Cadmium: giftig und krebserzeugend. Nie für Essgeschirr verwenden und vor dem Umgang Fachleute fragen.
