### Not yet read by a native potter.

missing = { $what ->
    [body] Cette terre n’est plus dans l’atelier. Choisissez-en une autre.
    [bucket] Ce seau n’est plus dans l’atelier. Choisissez-en un autre.
    [coat] Cette couche n’est plus dans l’atelier. Choisissez-en une autre.
    [check] Ce contrôle n’est plus dans l’atelier. Choisissez-en un autre.
    [bucket_entry] Cette note n’est plus dans l’atelier. Choisissez-en une autre.
    [control_piece] Cette pièce témoin n’est plus dans l’atelier. Choisissez-en une autre.
    [fault] Ce défaut n’est pas dans la liste. Choisissez-en un autre.
    [firing] Cette cuisson n’est plus dans l’atelier. Choisissez-en une autre.
    [form] Cette forme n’est plus dans l’atelier. Choisissez-en une autre.
    [glaze] Cet émail n’est plus dans l’atelier. Choisissez-en un autre.
    [glazed] Cette période n’est pas dans la liste. Choisissez-en une autre.
    [kiln] Ce four n’est plus dans l’atelier. Choisissez-en un autre.
    [laydown] Cette plage de grammage n’est pas dans la liste. Choisissez-en une autre.
    [photograph] Cette photo n’est plus dans l’atelier. Choisissez-en une autre.
    [piece] Cette pièce n’est plus dans l’atelier. Choisissez-en une autre.
    [scale] Cette balance n’est plus dans l’atelier. Choisissez-en une autre.
    [shelf] Ce four n’a pas cette plaque. Choisissez-en une autre.
    [target] Cette cible n’est plus dans l’atelier. Choisissez-en une autre.
    [test_tile] Cette plaquette d’essai n’est plus dans l’atelier. Choisissez-en une autre.
    [thing] Cela n’est plus dans l’atelier. Choisissez autre chose.
    [to_weigh_with] Cette forme, ce seau ou cette balance n’est plus dans l’atelier. Choisissez autre chose.
    [vessel] Ce récipient n’est plus dans l’atelier. Choisissez-en un autre.
    [zone] Cette zone n’existe pas ici. Choisissez-en une autre.
   *[record] Cet enregistrement n’est plus dans l’atelier. Choisissez-en un autre.
}
nothing-to-undo = Rien à annuler.
undone = Annulé.
form-and-zone = { $form }, { $zone }
newer = d’une version plus récente
impossible-sg = { $number } (impossible)
sg = densité { $sg }
the-firing = La cuisson
the-scale-test = Le test de balance
the-control-piece = La pièce témoin
the-check = Le contrôle
the-entry = La note
