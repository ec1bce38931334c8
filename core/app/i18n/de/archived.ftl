### Not yet read by a native potter.

nothing = Nichts ist archiviert.
section = { $kind ->
    [form] Formen
    [glaze] Glasuren
    [bucket] Eimer
    [bisque_lot] Schrühchargen
    [body] Massen
    [control] Vergleichsstücke
    [tile] Probeplättchen
    [firing] Brände
    [piece] Ungewogene Stücke
    [scale_test] Waagenprüfungen
    [scale] Waagen
    [kiln] Öfen
    [check] Prüfungen
    [bucket_entry] Einträge zu Eimern
   *[vessel] Messgefäße
}
archived-when = Archiviert { $moment }, { $phone }
bucket-of = { $glaze }, { $bucket }
control-of = { $form }, { $glaze }
is-back = { $name } ist wieder da.
never-archived = Dies wird nie archiviert.
is-archived = { $name } ist archiviert.
firing-removed = Der Brand ist entfernt.
piece-removed = Das Stück ist entfernt.
piece-was-fired = Wie dieses Stück aus dem Brand kam, ist notiert, also bleibt es.
control-archived = Das Vergleichsstück ist archiviert.
cannot-be-removed = Das lässt sich nicht entfernen.
entry-removed = Aus dem Notizbuch entfernt.
