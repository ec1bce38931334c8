### Not yet read by a native potter.

new = { $glaze }: neuer Eimer
title = { $glaze }: Eimer
archive = Diesen Eimer archivieren
name-hint = Großer Eimer
volume = Menge, falls bekannt
