### Not yet read by a native potter.

not-a-studio = laydown n’a pas créé le fichier de l’atelier, et l’a laissé intact. Déplacez-le ailleurs, puis réessayez.
newer = Une version plus récente a enregistré cet atelier, qui a été laissé intact. Mettez laydown à jour, puis rouvrez-le.
damaged = Le fichier de l’atelier est abîmé et a été laissé intact. Enregistrez ce qui est lisible : cela crée un nouveau fichier et conserve celui qui est abîmé.
busy = Une autre copie de laydown utilise cet atelier. Rien n’a été perdu : fermez l’autre copie, puis réessayez.
full = Le téléphone est plein : ceci n’a pas été enregistré ; rien d’autre n’a été perdu. Faites de la place, puis enregistrez de nouveau.
not-allowed = Le téléphone ne laisse pas laydown écrire son fichier. Autorisez-le dans les réglages du téléphone, puis réessayez.
no-folder = Le dossier de cet atelier manque. Créez-le, puis réessayez.
removed = Le fichier de l’atelier a été déplacé ou effacé pendant que laydown était ouvert, et ceci n’a pas été enregistré. Remettez le fichier en place, puis rouvrez laydown.
io = La mémoire du téléphone n’a pas répondu : rien n’a été fait, rien n’a été perdu. Réessayez.
forked = Deux téléphones ont écrit sous un même nom, comme quand un atelier est copié de l’un à l’autre. Rien n’a été modifié ici : configurez l’un des deux comme nouveau téléphone.
bad-event = Cet enregistrement est inutilisable. Rien n’a été modifié.
fault = Quelque chose a mal tourné dans laydown, mais rien n’a été perdu. Merci de le signaler.
photo-empty = L’appareil a donné une image vide. Reprenez la photo.
photo-heic = C’est une image HEIC, que laydown ne sait pas lire. Réglez l’appareil pour enregistrer en JPEG, puis reprenez la photo.
photo-no-picture = Cette image n’est ni JPEG ni PNG, ou il en manque une partie. Reprenez la photo, ou réglez l’appareil pour enregistrer en JPEG.
photo-too-large = Cette image est trop grande : la limite est de 60 mégapixels et 64 Mo. Réglez l’appareil sur un format plus petit.
not-a-backup = Ce fichier n’est pas une sauvegarde de laydown. Choisissez-en un autre.
backup-gone = Fichier introuvable. Choisissez-le de nouveau.
backup-unreadable = Ce fichier est illisible. Copiez-le sur le téléphone, puis choisissez-le là.
backup-newer = Une version plus récente a fait cette sauvegarde. Mettez laydown à jour, puis restaurez-la.
backup-damaged = Cette sauvegarde est abîmée (« { $file } » a changé) : rien n’a été restauré. Prenez une autre sauvegarde.
backup-behind = Il manque à cette copie une partie de cet atelier ; vos données sont en sécurité sur ce téléphone. Refaites la sauvegarde.
journal-damaged = Ce journal est abîmé : rien n’a été restauré. Prenez un autre fichier.
backup-partly = { $events ->
    [one] { $events } entrée de ce fichier a été ajoutée, puis cela s’est arrêté. { $why } Ce qui a été ajouté est en sécurité : restaurez de nouveau le fichier pour le reste.
   *[other] { $events } entrées de ce fichier ont été ajoutées, puis cela s’est arrêté. { $why } Ce qui a été ajouté est en sécurité : restaurez de nouveau le fichier pour le reste.
}
refused = { $entries ->
    [one] Non ajoutée : { $entries } entrée que laydown ne peut pas avoir écrite ({ $why ->
        [too_large] trop grande
        [too_many] trop d’entrées sur une même chose
        [too_many_devices] trop de téléphones
       *[no_such_number] nombres impossibles
    }). Tout le reste a été ajouté.
   *[other] Non ajoutées : { $entries } entrées que laydown ne peut pas avoir écrites ({ $why ->
        [too_large] trop grandes
        [too_many] trop d’entrées sur une même chose
        [too_many_devices] trop de téléphones
       *[no_such_number] nombres impossibles
    }). Tout le reste a été ajouté.
}
refused-forked = { $entries ->
    [one] Non ajoutée : { $entries } entrée d’un téléphone dont le nom sert deux fois. Vos données sont en sécurité : configurez l’un des deux comme nouveau téléphone dans Atelier, Téléphones.
   *[other] Non ajoutées : { $entries } entrées d’un téléphone dont le nom sert deux fois. Vos données sont en sécurité : configurez l’un des deux comme nouveau téléphone dans Atelier, Téléphones.
}
refused-of-others = { $entries ->
    [one] Non ajoutée : { $entries } entrée d’autres téléphones.
   *[other] Non ajoutées : { $entries } entrées d’autres téléphones.
}
recovered-nothing = Aucune entrée n’a pu être lue. Le fichier abîmé a été gardé à côté d’un nouveau, vide : si vous avez une sauvegarde, restaurez-la maintenant.
recovered-all = { $saved ->
    [one] La seule entrée connue a été sauvée. Le fichier abîmé a été gardé à côté du nouveau.
   *[other] Les { $saved } entrées connues ont toutes été sauvées. Le fichier abîmé a été gardé à côté du nouveau.
}
recovered-some = { $saved ->
    [one] { $saved } entrée sur { $all } a été sauvée, et le fichier abîmé a été gardé à côté du nouveau. Si vous avez une sauvegarde, restaurez-la maintenant : elle rendra peut-être le reste.
   *[other] { $saved } entrées sur { $all } ont été sauvées, et le fichier abîmé a été gardé à côté du nouveau. Si vous avez une sauvegarde, restaurez-la maintenant : elle rendra peut-être le reste.
}
segment-name = Le fichier de journal « { $name } » est inutilisable : laydown ne donne pas ce genre de nom.
segment-cut = Le fichier de journal « { $name } » est inutilisable : il en manque une partie.
segment-packing = Le fichier de journal « { $name } » est inutilisable : il est abîmé.
segment-sum = Le fichier de journal « { $name } » est inutilisable : il est abîmé (sa somme de contrôle est fausse).
segment-foreign = Le fichier de journal « { $name } » est inutilisable : ce n’est pas un fichier de laydown.
segment-newer = Le fichier de journal « { $name } » est inutilisable : une version plus récente l’a écrit. Mettez laydown à jour.
segment-device = Le fichier de journal « { $name } » est inutilisable : il contient les entrées d’un autre téléphone.
segment-gap = Le fichier de journal « { $name } » est inutilisable : il ne contient pas les entrées que dit son nom.
segment-line = Le fichier de journal « { $name } » est inutilisable : la ligne { $line } est illisible.
segment-too-large = Le fichier de journal « { $name } » est inutilisable : il est trop grand.
