### Not yet read by a native potter.

nothing = Rien n’est archivé.
section = { $kind ->
    [form] Formes
    [glaze] Émaux
    [bucket] Seaux
    [bisque_lot] Lots de biscuit
    [body] Terres
    [control] Pièces témoins
    [tile] Tuiles d’essai
    [firing] Cuissons
    [piece] Pièces non pesées
    [scale_test] Tests de balance
    [scale] Balances
    [kiln] Fours
    [check] Contrôles
    [bucket_entry] Notes des seaux
   *[vessel] Récipients
}
archived-when = Archivé { $moment }, { $phone }
bucket-of = { $glaze }, { $bucket }
control-of = { $form }, { $glaze }
is-back = { $name } est de retour.
never-archived = Ceci ne s’archive pas.
is-archived = « { $name } » : archivé.
firing-removed = La cuisson est supprimée.
piece-removed = La pièce est supprimée.
piece-was-fired = Vous avez noté comment cette pièce est sortie du four : elle reste.
control-archived = La pièce témoin est archivée.
cannot-be-removed = Impossible de supprimer cela.
entry-removed = Retiré du carnet.
