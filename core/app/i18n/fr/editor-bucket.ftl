### Not yet read by a native potter.

new = { $glaze } : nouveau seau
title = { $glaze } : seau
archive = Archiver ce seau
name-hint = Grand seau
volume = Volume à la préparation, s’il est connu
diameter = Largeur intérieure
diameter-help = À mi-hauteur. Avec elle, un niveau dans le seau donne un volume.
depth = Profondeur jusqu’au bord
holds = Contient { $volume } jusqu’au bord.
empty = Poids à vide
empty-help = Avec lui, le poids du seau dit combien d’émail il contient.
