### Not yet read by a native potter.

newer-profile = Ein Profil in dieser Werkstatt wurde von einer neueren Version gespeichert. laydown aktualisieren, dann neu öffnen.
weight-off-at-point = { $weight ->
    [heavier] Das gewogene Stück ist { $percent } % schwerer als diese Zeichnung davon. Punkt { $point } prüfen: Ohne ihn stimmt es.
   *[lighter] Das gewogene Stück ist { $percent } % leichter als diese Zeichnung davon. Punkt { $point } prüfen: Ohne ihn stimmt es.
}
weight-off = { $weight ->
    [heavier] Das gewogene Stück ist { $percent } % schwerer als diese Zeichnung davon. Wand, Boden und Einheit prüfen, und wann gemessen wurde.
   *[lighter] Das gewogene Stück ist { $percent } % leichter als diese Zeichnung davon. Wand, Boden und Einheit prüfen, und wann gemessen wurde.
}
overlap = Beide Glasuren überlappen sich vom Rand an auf { $band }. Wird es dort zu dick, rollt die Glasur ab oder läuft. Den zweiten Auftrag auf diesem Band dünn halten.
wide-floor = Der Boden ist weit, dort sammelt sich Glasur. Sofort ausgießen und kopfüber abtropfen lassen.
