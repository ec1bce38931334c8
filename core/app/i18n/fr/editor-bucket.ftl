### Not yet read by a native potter.

new = { $glaze } : nouveau seau
title = { $glaze } : seau
archive = Archiver ce seau
name-hint = Grand seau
volume = Volume, s’il est connu
