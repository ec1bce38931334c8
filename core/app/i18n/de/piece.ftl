### Not yet read by a native potter.

unfired = Noch nicht gebrannt.
not-looked-at = Noch nicht angesehen
