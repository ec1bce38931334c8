### Not yet read by a native potter.

unfired = Pas encore cuite.
not-looked-at = Pas encore regardée
