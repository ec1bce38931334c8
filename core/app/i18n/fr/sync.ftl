### Not yet read by a native potter.

none-chosen = Ils peuvent aussi se synchroniser par un lieu à vous : un dossier, un serveur WebDAV ou un compartiment S3. laydown n’y va que quand vous le demandez.
choose-first = Aucun lieu de synchronisation n’est encore choisi. Choisissez-en un.
at-folder = Les téléphones se synchronisent dans le dossier « { $folder } ».
at-webdav = Les téléphones se synchronisent à { $address }, en tant que { $user }.
at-bucket = Les téléphones se synchronisent dans le compartiment « { $bucket } » à { $address }.
at-bucket-folder = Les téléphones se synchronisent dans « { $folder } » du compartiment « { $bucket } » à { $address }.
encrypted = Chiffré par une phrase de passe.
not-encrypted = Non chiffré.
not-synced-yet = Pas encore synchronisé.
last-sync = Dernière synchronisation : { $moment }. { $report }
tried = Essayé : { $moment }. { $why }
nothing-new = Rien de nouveau d’un côté ni de l’autre.
came = Reçu : { $what }.
went = Envoyé : { $what }.
came-and-went = Reçu : { $came }. Envoyé : { $went }.
entries = { $entries ->
    [one] { $entries } entrée
   *[other] { $entries } entrées
}
photos = { $photos ->
    [one] { $photos } photo
   *[other] { $photos } photos
}
both = { $entries } et { $photos }
repaired = { $files ->
    [one] { $files } fichier abîmé a été réparé.
   *[other] { $files } fichiers abîmés ont été réparés.
}
more-problems = { $count ->
    [one] Et { $count } autre du même genre.
   *[other] Et { $count } autres du même genre.
}
photos-missing = { $photos ->
    [one] { $photos } photo n’est ni ici ni là-bas. Sur le téléphone qui l’a prise, choisissez « Synchroniser » sur un réseau gratuit.
   *[other] { $photos } photos ne sont ni ici ni là-bas. Sur le téléphone qui les a prises, choisissez « Synchroniser » sur un réseau gratuit.
}
new-here = Nouveau sur ce téléphone : { $entries }.
photos-wait = { $photos ->
    [one] { $photos } photo attend un réseau gratuit.
   *[other] { $photos } photos attendent un réseau gratuit.
}
progress = { $done } fichiers sur { $all }
no-network = Ce téléphone n’a pas de réseau. Rien n’est perdu : synchronisez de nouveau une fois connecté.
unknown-host = Aucun serveur ne porte ce nom. Rien n’est perdu : vérifiez l’adresse, et que le téléphone est connecté.
no-answer = Pas de réponse. Rien n’est perdu : vérifiez que le serveur est allumé, puis synchronisez de nouveau.
timed-out = Le serveur n’a pas répondu à temps. Rien n’est perdu : synchronisez de nouveau sur un meilleur réseau.
certificate-date = Le certificat du serveur est périmé, ou l’horloge de ce téléphone est fausse. Rien n’a été envoyé : vérifiez ici la date et l’heure, puis demandez à qui gère le serveur.
certificate-host = Le certificat est celui d’un autre serveur : rien n’a été envoyé. Vérifiez l’adresse ; sur un réseau avec page de connexion, connectez-vous d’abord.
certificate = Ce téléphone ne se fie pas au certificat du serveur : rien n’a été envoyé. Vérifiez l’adresse, ou installez sur ce téléphone le certificat de votre serveur.
broken = La connexion s’est rompue. Ce qui est arrivé est enregistré : synchronisez de nouveau.
stopped = Arrêté. Les fichiers terminés restent ; le reste suivra la prochaine fois.
plain-http = Par http://, n’importe qui sur internet pourrait lire votre mot de passe et vos fichiers. Utilisez https:// pour ce serveur.
wrong-password = Le serveur n’accepte pas le nom et le mot de passe, ou la clé et son secret. Saisissez-les de nouveau.
wrong-address = Rien à cette adresse. Vérifiez-la lettre par lettre.
no-folder = Dossier introuvable, ou son application ne répond pas. Vos données sont en sécurité sur ce téléphone : choisissez de nouveau le dossier.
full = Le lieu de synchronisation est plein. Faites-y de la place, ou choisissez un autre lieu.
not-allowed = laydown n’a pas le droit d’écrire dans ce dossier. Autorisez-le, ou choisissez-en un autre.
wrong-passphrase = { $keys ->
    [one] Ce n’est pas la phrase de passe des fichiers là-bas : elle n’ouvre pas la clé de { $keys } téléphone. Saisissez-la de nouveau, ou choisissez d’y repartir de zéro.
   *[other] Ce n’est pas la phrase de passe des fichiers là-bas : elle n’ouvre pas les clés de { $keys } téléphones. Saisissez-la de nouveau, ou choisissez d’y repartir de zéro.
}
no-passphrase = Les fichiers là-bas sont chiffrés. Saisissez leur phrase de passe.
strange-files = { $files ->
    [one] { $files } fichier là-bas n’est pas chiffré par votre phrase de passe et a été laissé de côté. Si un autre de vos téléphones l’y a mis, saisissez-y la même phrase de passe.
   *[other] { $files } fichiers là-bas ne sont pas chiffrés par votre phrase de passe et ont été laissés de côté. Si un autre de vos téléphones les y a mis, saisissez-y la même phrase de passe.
}
encrypted-files = { $files ->
    [one] { $files } fichier là-bas est chiffré et a été laissé de côté. Si vos téléphones utilisent une phrase de passe, saisissez-la ici aussi.
   *[other] { $files } fichiers là-bas sont chiffrés et ont été laissés de côté. Si vos téléphones utilisent une phrase de passe, saisissez-la ici aussi.
}
older-than-last-time = Le lieu de synchronisation montre des données plus anciennes que la dernière fois. Vos données sont en sécurité sur ce téléphone, et y ont été remises.
left-open = { $files ->
    [one] { $files } fichier de ce téléphone s’y trouve encore d’avant, non chiffré. Supprimez celui dont le nom ne finit pas par « .age ».
   *[other] { $files } fichiers de ce téléphone s’y trouvent encore d’avant, non chiffrés. Supprimez ceux dont le nom ne finit pas par « .age ».
}
damaged-file = { $why } Il a été laissé de côté. Sur le téléphone qui l’a écrit, choisissez « Vérifier les fichiers du lieu ».
newer = Un autre téléphone a une version plus récente. Mettez laydown à jour ici, puis choisissez de nouveau « Synchroniser ».
damaged-photo = La photo « { $file } » est abîmée là-bas et a été laissée de côté. Sur le téléphone qui l’a prise, choisissez « Vérifier les fichiers du lieu ».
entry-missing = L’entrée { $entry } manque là-bas ({ $phone }). Choisissez « Synchroniser » sur ce téléphone-là, puis de nouveau ici.
entries-missing = Les entrées { $first } à { $last } manquent là-bas ({ $phone }). Choisissez « Synchroniser » sur ce téléphone-là, puis de nouveau ici.
file-too-long = Un fichier là-bas est trop long et a été laissé de côté. Rien n’est perdu.
redirected = Le serveur renvoie laydown vers un autre serveur : rien n’a été envoyé. Saisissez l’adresse actuelle des fichiers.
too-many-files = Il y a là-bas plus de fichiers que laydown n’en lit. Vos données sont en sécurité sur ce téléphone : choisissez un autre lieu.
too-slow = Le serveur répond trop lentement. Ce qui est arrivé est enregistré : réessayez sur un meilleur réseau.
failed = Le lieu de synchronisation n’a pas répondu comme prévu. Rien n’est perdu : réessayez plus tard.
