### Not yet read by a native potter.

unfired = Sin cocer todavía.
not-looked-at = Sin revisar todavía
