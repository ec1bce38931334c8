### Not yet read by a native potter.

new = Nouveau récipient
title = Récipient
archive = Archiver ce récipient
name-hint = Pot à confiture
empty = Poids à vide
empty-help = Sec dedans et dehors.
with-water = Poids avec l’eau
with-water-help = Rempli à ras bord ou jusqu’à un trait gravé. Remplissez-le d’émail jusqu’au même trait.
temperature = Température de l’eau, °C
holds = Contient { $volume }.
