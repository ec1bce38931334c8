### Not yet read by a native potter.

intro = Tout tient dans un seul fichier : poids, cuissons et photos. Gardez-en une copie hors de ce téléphone ; elle se restaure sur n’importe quel téléphone. Quiconque a ce fichier peut le lire.
last-backup = Dernière sauvegarde : { $moment }.
none-yet = Aucune sauvegarde faite sur ce téléphone.
saved-and-verified = Sauvegarde enregistrée et vérifiée : { $contents }.
restored = Restauré : { $new }. Contenu du fichier : { $held }.
all-here-already = Rien à restaurer. Déjà sur ce téléphone : { $contents }.
nothing-new = Il n’y avait rien de nouveau à restaurer.
photos-left-out = { $photos ->
    [one] { $photos } photo illisible a été laissée de côté : { $names }.
   *[other] { $photos } photos illisibles ont été laissées de côté : { $names }.
}
photo-name = « { $letters }… »
entries = { $entries ->
    [one] { $entries } entrée
   *[other] { $entries } entrées
}
entries-and-photos = { $entries ->
    [one] { $entries } entrée
   *[other] { $entries } entrées
} et { $photos ->
    [one] { $photos } photo
   *[other] { $photos } photos
}
with-missing-photos = { $missing ->
    [one] { $contents } ({ $missing } autre photo est introuvable)
   *[other] { $contents } ({ $missing } autres photos sont introuvables)
}
last-backup-line = Dernière sauvegarde : { $moment }
none-yet-line = Tout dans un fichier, à garder hors de ce téléphone
too-long-ago = { $days ->
    [one] La dernière sauvegarde date de { $days } jour. Si vous perdez ce téléphone, vous perdez tout ce qui a suivi.
   *[other] La dernière sauvegarde date de { $days } jours. Si vous perdez ce téléphone, vous perdez tout ce qui a suivi.
}
never = Il n’y a pas encore de sauvegarde. Si vous perdez ce téléphone, vous perdez tout : faites-en une dans Atelier, Sauvegarde.
rhythm = { $rhythm ->
    [week] Chaque semaine
    [month] Chaque mois
   *[never] Jamais
}
rhythm-not-listed = Choisissez le rythme dans la liste.
no-folder = Aucun dossier n’a été choisi.
folder-first = Choisissez d’abord un dossier pour les sauvegardes.
off = La sauvegarde automatique est désactivée.
choose-folder = Choisissez un dossier pour les sauvegardes automatiques, sur une carte mémoire ou dans un endroit qu’une autre application copie sur votre ordinateur.
automatic = { $rhythm ->
    [month] Sauvegarde chaque mois s’il y a du nouveau. Garde les { $backups } plus récentes et n’efface que d’anciennes sauvegardes faites par laydown.
   *[week] Sauvegarde chaque semaine s’il y a du nouveau. Garde les { $backups } plus récentes et n’efface que d’anciennes sauvegardes faites par laydown.
}
automatic-and-last = { $automatic } Dernière sauvegarde : { $moment }.
not-made = { $trouble ->
    [place_gone] Pas de sauvegarde ({ $moment }) : le dossier est introuvable. Vos données sont en sécurité sur ce téléphone. Remettez la carte, ou choisissez un autre dossier.
    [not_allowed] Pas de sauvegarde ({ $moment }) : laydown n’a plus le droit d’écrire dans le dossier. Choisissez de nouveau le dossier.
    [place_full] Pas de sauvegarde ({ $moment }) : le dossier est plein. Faites-y de la place, ou choisissez un autre dossier.
    [phone_full] Pas de sauvegarde ({ $moment }) : ce téléphone est plein. Faites de la place, puis réessayez.
    [not_made] Pas de sauvegarde ({ $moment }) : quelque chose a échoué sur ce téléphone. Touchez « Faire une sauvegarde » pour voir pourquoi.
    [not_whole] Pas de sauvegarde ({ $moment }) : le fichier dans le dossier ne correspond pas à ce que laydown a écrit. Réessayez, ou choisissez un autre dossier.
   *[no_answer] Pas de sauvegarde ({ $moment }) : le dossier n’a pas répondu. Réessayez, ou choisissez un autre dossier.
}
journal = Journal en lignes JSON
journal-detail = Chaque entrée telle qu’elle a été faite, pour d’autres programmes. Sans photos. laydown peut le restaurer.
all-tables = Tous les tableaux
all-tables-detail = Un zip avec un fichier par tableau
table = { $table ->
    [readings] Pesées
    [pieces] Pièces cuites
    [firings] Cuissons
    [buckets] Seaux
    [checks] Contrôles de densité
    [glazes] Émaux
   *[forms] Formes
}
table-detail = { $table ->
    [readings] Une ligne par couche : forme, émail, poids, verdict
    [pieces] Une ligne par pièce dans une cuisson
    [firings] Une ligne par cuisson
    [buckets] Une ligne par seau, avec sa dernière densité
    [checks] Une ligne par contrôle
    [glazes] Une ligne par émail
   *[forms] Une ligne par forme, avec ses surfaces
}
table-not-listed = Choisissez un tableau dans la liste.
journal-written = { $entries ->
    [one] Enregistré : { $entries } entrée. laydown peut la restaurer comme une sauvegarde.
   *[other] Enregistré : { $entries } entrées. laydown peut les restaurer comme une sauvegarde.
}
tables-written = { $tables ->
    [one] Enregistré : { $tables } tableau dans un zip.
   *[other] Enregistré : { $tables } tableaux dans un zip.
}
table-written = Enregistré : { $table }. Ouvrez le fichier dans un tableur.
