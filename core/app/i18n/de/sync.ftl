### Not yet read by a native potter.

none-chosen = Sie können sich auch über einen eigenen Ort abgleichen: einen Ordner, einen WebDAV-Server oder einen S3-Bucket. laydown geht nur dorthin, wenn man es verlangt.
choose-first = Noch ist kein Abgleichsort gewählt. Bitte einen wählen.
at-folder = Die Handys gleichen sich im Ordner „{ $folder }“ ab.
at-webdav = Die Handys gleichen sich unter { $address } ab, als { $user }.
at-bucket = Die Handys gleichen sich im Bucket „{ $bucket }“ unter { $address } ab.
at-bucket-folder = Die Handys gleichen sich in „{ $folder }“ des Buckets „{ $bucket }“ unter { $address } ab.
encrypted = Mit einer Passphrase verschlüsselt.
not-encrypted = Nicht verschlüsselt.
not-synced-yet = Noch nicht abgeglichen.
last-sync = Letzter Abgleich: { $moment }. { $report }
tried = Versucht: { $moment }. { $why }
nothing-new = Auf keiner Seite gab es Neues.
came = Empfangen: { $what }.
went = Gesendet: { $what }.
came-and-went = Empfangen: { $came }. Gesendet: { $went }.
entries = { $entries ->
    [one] { $entries } Eintrag
   *[other] { $entries } Einträge
}
photos = { $photos ->
    [one] { $photos } Foto
   *[other] { $photos } Fotos
}
both = { $entries } und { $photos }
repaired = { $files ->
    [one] { $files } beschädigte Datei wurde repariert.
   *[other] { $files } beschädigte Dateien wurden repariert.
}
more-problems = { $count ->
    [one] Und { $count } weiterer Hinweis dieser Art.
   *[other] Und { $count } weitere Hinweise dieser Art.
}
photos-missing = { $photos ->
    [one] { $photos } Foto ist weder hier noch dort. Auf dem Handy, das es aufgenommen hat, in einem kostenlosen Netz „Jetzt abgleichen“ wählen.
   *[other] { $photos } Fotos sind weder hier noch dort. Auf dem Handy, das sie aufgenommen hat, in einem kostenlosen Netz „Jetzt abgleichen“ wählen.
}
new-here = Neu auf diesem Handy: { $entries }.
photos-wait = { $photos ->
    [one] { $photos } Foto wartet auf ein kostenloses Netz.
   *[other] { $photos } Fotos warten auf ein kostenloses Netz.
}
progress = { $done } von { $all } Dateien
no-network = Dieses Handy hat kein Netz. Nichts ist verloren: abgleichen, sobald es verbunden ist.
unknown-host = Kein Server hat diesen Namen. Nichts ist verloren: die Adresse prüfen, und ob das Handy verbunden ist.
no-answer = Keine Antwort. Nichts ist verloren: prüfen, ob der Server läuft, dann noch einmal abgleichen.
timed-out = Der Server hat nicht rechtzeitig geantwortet. Nichts ist verloren: in einem besseren Netz noch einmal abgleichen.
certificate-date = Das Zertifikat des Servers ist abgelaufen, oder die Uhr dieses Handys geht falsch. Nichts wurde gesendet: hier Datum und Uhrzeit prüfen, dann beim Betreiber des Servers nachfragen.
certificate-host = Das Zertifikat gehört zu einem anderen Server, darum wurde nichts gesendet. Die Adresse prüfen; in einem Netz mit Anmeldeseite zuerst anmelden.
certificate = Dieses Handy vertraut dem Zertifikat des Servers nicht, darum wurde nichts gesendet. Die Adresse prüfen, oder das Zertifikat des eigenen Servers auf diesem Handy installieren.
broken = Die Verbindung ist abgebrochen. Was ankam, ist gespeichert: noch einmal abgleichen.
stopped = Angehalten. Fertige Dateien bleiben; der Rest folgt beim nächsten Mal.
plain-http = Über http:// könnte jeder im Internet Passwort und Dateien lesen. Für diesen Server https:// verwenden.
wrong-password = Der Server nimmt Name und Passwort, oder Schlüssel und Geheimnis, nicht an. Bitte neu eingeben.
wrong-address = Unter dieser Adresse ist nichts. Bitte Buchstabe für Buchstabe prüfen.
no-folder = Ordner nicht gefunden, oder seine App antwortet nicht. Die Daten auf diesem Handy sind sicher: den Ordner neu wählen.
full = Der Abgleichsort ist voll. Dort Platz schaffen oder einen anderen wählen.
not-allowed = laydown darf in diesen Ordner nicht schreiben. Das erlauben oder einen anderen wählen.
wrong-passphrase = { $keys ->
    [one] Das ist nicht die Passphrase der Dateien dort: der Schlüssel von { $keys } Handy lässt sich damit nicht öffnen. Neu eingeben oder dort neu anfangen.
   *[other] Das ist nicht die Passphrase der Dateien dort: die Schlüssel von { $keys } Handys lassen sich damit nicht öffnen. Neu eingeben oder dort neu anfangen.
}
no-passphrase = Die Dateien dort sind verschlüsselt. Ihre Passphrase eingeben.
strange-files = { $files ->
    [one] { $files } Datei dort ist nicht mit dieser Passphrase verschlüsselt und wurde ausgelassen. Hat ein eigenes Handy sie dort abgelegt, dort dieselbe Passphrase eingeben.
   *[other] { $files } Dateien dort sind nicht mit dieser Passphrase verschlüsselt und wurden ausgelassen. Hat ein eigenes Handy sie dort abgelegt, dort dieselbe Passphrase eingeben.
}
encrypted-files = { $files ->
    [one] { $files } Datei dort ist verschlüsselt und wurde ausgelassen. Verwenden die Handys eine Passphrase, sie auch hier eingeben.
   *[other] { $files } Dateien dort sind verschlüsselt und wurden ausgelassen. Verwenden die Handys eine Passphrase, sie auch hier eingeben.
}
older-than-last-time = Am Abgleichsort liegen ältere Daten als beim letzten Mal. Die Daten auf diesem Handy sind sicher und wurden dort wieder abgelegt.
left-open = { $files ->
    [one] { $files } Datei dieses Handys liegt dort noch von früher, unverschlüsselt. Die Datei löschen, deren Name nicht auf „.age“ endet.
   *[other] { $files } Dateien dieses Handys liegen dort noch von früher, unverschlüsselt. Die Dateien löschen, deren Namen nicht auf „.age“ enden.
}
damaged-file = { $why } Sie wurde ausgelassen. Auf dem Handy, das sie geschrieben hat, „Dateien dort prüfen“ wählen.
newer = Ein anderes Handy hat eine neuere Version. laydown hier aktualisieren, dann wieder „Jetzt abgleichen“ wählen.
damaged-photo = Das Foto „{ $file }“ ist dort beschädigt und wurde ausgelassen. Auf dem Handy, das es aufgenommen hat, „Dateien dort prüfen“ wählen.
entry-missing = Dort fehlt Eintrag { $entry } ({ $phone }). Auf jenem Handy „Jetzt abgleichen“ wählen, dann hier noch einmal.
entries-missing = Dort fehlen die Einträge { $first } bis { $last } ({ $phone }). Auf jenem Handy „Jetzt abgleichen“ wählen, dann hier noch einmal.
file-too-long = Eine Datei dort ist zu lang und wurde ausgelassen. Nichts ist verloren.
redirected = Der Server schickt laydown zu einem anderen Server, darum wurde nichts gesendet. Die Adresse eingeben, unter der die Dateien jetzt liegen.
too-many-files = Dort liegen mehr Dateien, als laydown liest. Die Daten auf diesem Handy sind sicher: einen anderen Ort wählen.
too-slow = Der Server antwortet zu langsam. Was ankam, ist gespeichert: in einem besseren Netz noch einmal versuchen.
failed = Der Abgleichsort hat nicht wie erwartet geantwortet. Nichts ist verloren: später noch einmal versuchen.
