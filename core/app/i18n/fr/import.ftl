### Not yet read by a native potter.

intro = Vérifiez pour quoi laydown prend chaque colonne, et corrigez ce qui est faux. Rien n’est enregistré avant l’import, et un seul Annuler retire tout.
take-in-nothing = Rien à importer
take-in = { $readings ->
    [one] Importer { $readings } pesée
   *[other] Importer { $readings } pesées
}
found-but-open = { $lines ->
    [one] { $lines } ligne trouvée. Répondez d’abord aux questions.
   *[other] { $lines } lignes trouvées. Répondez d’abord aux questions.
}
would-be-imported = { $readings ->
    [one] { $readings } pesée serait importée.
   *[other] { $readings } pesées seraient importées.
}
nothing-would-be-imported = Rien ne serait importé.
with-results = { $readings ->
    [one] { $readings } d’entre elles dit comment la pièce est sortie du four.
   *[other] { $readings } d’entre elles disent comment la pièce est sortie du four.
}
here-already = { $lines ->
    [one] { $lines } ligne est déjà là.
   *[other] { $lines } lignes sont déjà là.
}
cannot-be-imported = { $lines ->
    [one] { $lines } ligne ne peut pas être importée.
   *[other] { $lines } lignes ne peuvent pas être importées.
}
imported = { $readings ->
    [one] Importé : { $readings } pesée.
   *[other] Importé : { $readings } pesées.
}
left-out = { $lines ->
    [one] { $lines } ligne a été laissée de côté.
   *[other] { $lines } lignes ont été laissées de côté.
}
sg-assumed = { $readings ->
    [one] { $readings } pesée n’a ni densité dans la feuille ni contrôle antérieur. laydown suppose une densité de { $sg }, et le verdict ne vaut pas mieux que cela.
   *[other] { $readings } pesées n’ont ni densité dans la feuille ni contrôle antérieur. laydown suppose une densité de { $sg }, et le verdict ne vaut pas mieux que cela.
}
sg-very-thin = { $readings ->
    [one] { $readings } pesée a une densité inférieure à { $least }, très liquide pour un émail. Vérifiez que c’est la bonne colonne.
   *[other] { $readings } pesées ont une densité inférieure à { $least }, très liquide pour un émail. Vérifiez que c’est la bonne colonne.
}
new-buckets = Nouveaux seaux : { $buckets }.
new-buckets-and-more = { $more ->
    [one] Nouveaux seaux : { $buckets }, et { $more } autre.
   *[other] Nouveaux seaux : { $buckets }, et { $more } autres.
}
read-as-windows = Le fichier n’est pas en UTF-8 : il a été lu comme un ancien fichier Windows. Vérifiez que les lettres accentuées sont justes.
role = { $role ->
    [date] date
    [time] heure
    [form] forme
    [glaze] émail
    [bucket] seau
    [zone] zone
    [wet] poids humide
    [bare] pièce nue
    [glazed] pièce émaillée
    [specific_gravity] densité
    [piece] pièce
    [code] code sur le pied
    [control] pièce témoin, oui ou non
    [note] remarque
    [aim] cible
    [low] minimum accepté
    [high] maximum accepté
    [verdict] verdict
    [fired] jour de la cuisson
    [cone] cône
    [result] mince, juste ou épais
    [faults] défauts
    [liking] appréciation, de 1 à 5
   *[nothing] laisser de côté
}
column-number = Colonne { $number }
column-empty = Vide
ask-order = Ordre des dates
ask-order-help = Certaines dates se lisent de deux façons : 3/11 est en mars ou en novembre.
date-order = { $order ->
    [month_first] Mois, jour, année
   *[day_first] Jour, mois, année
}
ask-decimal = Signe décimal
ask-decimal-help = 1,234 peut vouloir dire un peu plus de un, ou plus de mille.
ask-unit = Unité de poids
ask-unit-help = Sert là où ni la colonne ni la cellule n’en donne.
unit = { $unit ->
    [kg] Kilogrammes
    [oz] Onces
    [lb] Livres
   *[g] Grammes
}
ask-form = Forme, toutes les lignes
ask-glaze = Émail, toutes les lignes
ask-zone = Zone, toutes les lignes
ask-cone = Cône, toutes les cuissons
ask-kiln = Four
ask-scale = Balance
ask-scale-help = Celle qui a servi à peser. Le verdict dépend de son échelon.
ask-form-name = Forme « { $cell } »
ask-glaze-name = Émail « { $cell } »
ask-name-help = { $lines ->
    [one] Dans { $lines } ligne. Rien ne porte ce nom dans l’atelier.
   *[other] Dans { $lines } lignes. Rien ne porte ce nom dans l’atelier.
}
leave-lines-out = Laisser ces lignes de côté
make-glaze = Ajouter cet émail
make-glaze-help = Avec les valeurs habituelles ; corrigez-les ensuite dans Atelier.
two-columns = Deux colonnes sont réglées sur « { $role } ». Laissez-en une de côté.
no-date-column = Aucune colonne n’est réglée sur « date ». Choisissez-en une.
no-weight-column = Aucune colonne n’est réglée sur « poids humide ». Choisissez-en une, ou une pour la pièce nue et une pour la pièce émaillée.
no-form-column = Aucune colonne n’est réglée sur « forme ». Choisissez-en une, ou une même forme pour toutes les lignes.
no-glaze-column = Aucune colonne n’est réglée sur « émail ». Choisissez-en une, ou un même émail pour toutes les lignes.
no-zone-column = Aucune colonne n’est réglée sur « zone ». Choisissez-en une, ou une même zone pour toutes les lignes.
no-fired-column = Aucune colonne n’est réglée sur le jour de la cuisson. Choisissez-en une, ou laissez les résultats.
no-cone-column = Aucune colonne n’est réglée sur Cône. Choisissez-en une, ou un cône pour toutes les cuissons.
no-kiln-yet = Il n’y a pas encore de four ici. Ajoutez d’abord celui de vos cuissons : Atelier, Fours.
no-scale-yet = Il n’y a pas encore de balance ici. Ajoutez d’abord celle qui a servi à peser : Atelier, Balances.
say-order = Choisissez ce qui vient en premier dans les dates : le jour ou le mois.
say-decimal = Choisissez le signe décimal des poids : 1,234 se lit de deux façons.
line-error = Ligne { $line } : { $why }
more-line-errors = { $lines ->
    [one] Et { $lines } autre ligne.
   *[other] Et { $lines } autres lignes.
}
more-cells = Elle a plus de cellules qu’il n’y a de colonnes. Cherchez une virgule dans un nombre ou dans un nom sans guillemets.
no-zone = Elle n’a pas de zone. Écrivez intérieur, extérieur ou les deux.
not-a-zone = « { $cell } » n’est pas une zone. Écrivez intérieur, extérieur ou les deux.
no-firing-date = Le résultat est donné, mais pas le jour de la cuisson. Donnez-le.
fired-before-glazed = Elle a été cuite avant d’être émaillée. Vérifiez les deux dates.
no-cone = Sans cône. Écrivez le cône de la cuisson, par exemple 6 ou 06.
not-a-cone = « { $cell } » n’est pas un cône. Écrivez son numéro, par exemple 6 ou 06.
not-a-result = « { $cell } » n’est pas un résultat. Écrivez mince, juste ou épais.
not-a-fault = « { $cell } » n’est pas un défaut que laydown connaît. Écrivez-le comme l’écran après une cuisson, ou mettez-le dans les notes.
not-a-rating = « { $cell } » n’est pas une appréciation. Écrivez un chiffre de 1 à 5.
places-not-known = Importé d’un tableur. La place des pièces sur les plaques n’est pas connue.
not-a-code = « { $cell } » n’est pas un code de laydown. Réglez plutôt cette colonne sur « pièce ».
not-yes-or-no = « { $cell } » n’est ni oui ni non, dans la colonne « pièce témoin ».
note-too-long = Sa remarque dépasse { $most } caractères. Raccourcissez-la.
name-too-long = Le nom « { $cell } » dépasse { $most } caractères. Raccourcissez-le.
no-date = Elle n’a pas de date.
a-formula = « { $cell } » est une formule. Enregistrez la feuille avec le résultat à la place.
not-a-date = « { $cell } » n’est pas une date. Écrivez-la comme 2026-11-25, par exemple.
not-a-time = « { $cell } » n’est pas une heure. Écrivez-la comme 14:30, par exemple.
still-to-come = « { $cell } » est dans le futur. Vérifiez la date.
too-long-ago = « { $cell } » est trop ancien. Vous pouvez importer des pesées à partir de 1970.
no-form = Elle n’a pas de forme.
form-not-here = Il n’y a pas de forme « { $cell } » ici. Ajoutez-la d’abord, ou choisissez-en une ci-dessus.
no-glaze = Elle n’a pas d’émail.
glaze-not-here = Il n’y a pas d’émail « { $cell } » ici. Ajoutez-le d’abord, ou choisissez-en un ci-dessus.
no-weight = Elle n’a pas de poids.
weights-differ = Son poids humide est { $wet }, mais émaillée moins nue donne { $difference }. Corrigez l’un des deux.
aim-outside = Sa cible de { $aim } n’est pas entre { $low } et { $high }. Corrigez-les, ou laissez ces colonnes de côté.
not-a-verdict = « { $cell } » n’est pas un verdict. Écrivez bon, pas assez, trop ou incertain, ou laissez cette colonne de côté.
code-taken = Le code { $code } est déjà sur une autre pièce, ou cette zone de la pièce est déjà émaillée. Vérifiez le pied.
no-area = { $zone ->
    [inside] « { $form } » n’a pas de surface émaillée à l’intérieur. Ouvrez-la dans Atelier et donnez-en une.
    [outside] « { $form } » n’a pas de surface émaillée à l’extérieur. Ouvrez-la dans Atelier et donnez-en une.
   *[whole] « { $form } » n’a pas de surface émaillée à l’intérieur et à l’extérieur. Ouvrez-la dans Atelier et donnez-en une.
}
no-scale = Il n’y a pas encore de balance ici.
piece-in-note = Pièce { $piece }
piece-and-note = Pièce { $piece }. { $note }
bucket-name = Du tableur
unreadable = Ce fichier est illisible : { $details }. Choisissez-le de nouveau.
gone = Fichier introuvable. Choisissez-le de nouveau.
no-file = Ce n’est pas un fichier. Choisissez la feuille de calcul, enregistrée en CSV.
too-large = Ce fichier dépasse 20 Mo, trop pour une feuille de pesées. Choisissez-en un autre, ou partagez-le en plusieurs.
empty = Ce fichier est vide. Choisissez la feuille de calcul, enregistrée en CSV.
workbook = Cette feuille est dans le format propre à son tableur. Dans ce tableur, choisissez Enregistrer sous, CSV, et importez ce fichier-là.
no-text = Ce n’est pas un fichier texte. Enregistrez la feuille en CSV, puis choisissez-la.
too-many-columns = { $columns ->
    [one] Cette feuille a { $columns } colonne ; la limite est { $most }. N’enregistrez que celles des pesées.
   *[other] Cette feuille a { $columns } colonnes ; la limite est { $most }. N’enregistrez que celles des pesées.
}
too-many-lines = Cette feuille a plus de { $most } lignes. Partagez-la en plusieurs fichiers et importez-les un par un.
open-quote = Ligne { $line } : un guillemet est ouvert et jamais fermé. Fermez-le ou retirez-le, et enregistrez de nouveau.
no-lines = Il n’y a pas de pesées sous la première ligne. Choisissez un autre fichier.
