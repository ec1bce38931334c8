### Not yet read by a native potter.

how-to-begin = Pesez les couches et cuisez les pièces. Ouvrez ensuite la cuisson, regardez chaque pièce et touchez mince, juste ou épais. Huit pièces d’un même émail donnent un premier constat.
amount-only = Il s’agit seulement de la quantité. Seule une analyse en laboratoire dit si une surface convient aux aliments et aux boissons.
only-the-newest = { $coats ->
    [one] D’après la couche la plus récente de l’atelier et, pour chaque émail, ses { $pots } pièces cuites les plus récentes au plus. Les plus anciennes sont laissées de côté.
   *[other] D’après les { $coats } couches les plus récentes de l’atelier et, pour chaque émail, ses { $pots } pièces cuites les plus récentes au plus. Les plus anciennes sont laissées de côté.
}
no-coat = Pas encore de couche pesée.
none-looked-at = { $coats ->
    [one] { $coats } couche pesée, pas encore regardée après cuisson.
   *[other] { $coats } couches pesées, aucune encore regardée après cuisson.
}
scope-and-finding = { $scope } : { $finding }
no-best = Il n’y a pas encore de meilleur grammage d’où partir.
now-starts-from = « { $glaze } » part maintenant de { $best }.
start-from = Partir de { $best }
start-from-help = Pour chaque forme et zone de cet émail sans pièce témoin ni plaquette d’essai. Il part aujourd’hui de { $now }.
controls-outside-window = { $zone ->
    [inside] Intérieur : vos pièces témoins sont en moyenne à { $average }, hors de la bonne plage. Prenez comme pièce témoin une pièce proche de { $best }.
    [outside] Extérieur : vos pièces témoins sont en moyenne à { $average }, hors de la bonne plage. Prenez comme pièce témoin une pièce proche de { $best }.
   *[whole] Intérieur et extérieur : vos pièces témoins sont en moyenne à { $average }, hors de la bonne plage. Prenez comme pièce témoin une pièce proche de { $best }.
}
tiles-outside-window = { $zone ->
    [inside] Intérieur : vos plaquettes d’essai sont en moyenne à { $average }, hors de la bonne plage. Prenez comme pièce témoin une pièce proche de { $best }.
    [outside] Extérieur : vos plaquettes d’essai sont en moyenne à { $average }, hors de la bonne plage. Prenez comme pièce témoin une pièce proche de { $best }.
   *[whole] Intérieur et extérieur : vos plaquettes d’essai sont en moyenne à { $average }, hors de la bonne plage. Prenez comme pièce témoin une pièce proche de { $best }.
}
one-cone = cône { $cone }
cones-together = cônes { $cones }
zones-together = { $zones ->
    [inside_outside] couches à l’intérieur et couches à l’extérieur
    [inside_whole] couches à l’intérieur et couches sur toute la pièce
    [outside_whole] couches à l’extérieur et couches sur toute la pièce
   *[inside_outside_whole] couches à l’intérieur, à l’extérieur et sur toute la pièce
}
no-body = terre non indiquée
bodies-together = { $bodies ->
    [one] { $bodies } terre
   *[other] { $bodies } terres
}
too-few = { $place ->
    [after_colon] { $pots ->
        [one] pas encore assez de pièces : { $pots } jusqu’ici ({ $looks }). Il en faut { $enough } pour un premier constat.
       *[other] pas encore assez de pièces : { $pots } jusqu’ici ({ $looks }). Il en faut { $enough } pour un premier constat.
    }
   *[alone] { $pots ->
        [one] Pas encore assez de pièces : { $pots } jusqu’ici ({ $looks }). Il en faut { $enough } pour un premier constat.
       *[other] Pas encore assez de pièces : { $pots } jusqu’ici ({ $looks }). Il en faut { $enough } pour un premier constat.
    }
}
none-right = { $place ->
    [after_colon] { $pots ->
        [one] la seule pièce n’est pas à la bonne épaisseur, avec { $range } : { $looks }.
       *[other] aucune des { $pots } pièces n’est à la bonne épaisseur, avec { $range } : { $looks }.
    }
   *[alone] { $pots ->
        [one] La seule pièce n’est pas à la bonne épaisseur, avec { $range } : { $looks }.
       *[other] Aucune des { $pots } pièces n’est à la bonne épaisseur, avec { $range } : { $looks }.
    }
}
try-more = Essayez plus.
try-less = Essayez moins.
mixed = { $place ->
    [after_colon] résultats mêlés avec { $range } ({ $pots ->
        [one] { $pots } pièce). La quantité seule ne décide pas : vérifiez la densité du seau, la cuisson et la place dans le four.
       *[other] { $pots } pièces). La quantité seule ne décide pas : vérifiez la densité du seau, la cuisson et la place dans le four.
    }
   *[alone] Résultats mêlés avec { $range } ({ $pots ->
        [one] { $pots } pièce). La quantité seule ne décide pas : vérifiez la densité du seau, la cuisson et la place dans le four.
       *[other] { $pots } pièces). La quantité seule ne décide pas : vérifiez la densité du seau, la cuisson et la place dans le four.
    }
}
window = { $place ->
    [after_colon] la bonne plage va de { $from } à { $to } ({ $pots ->
        [one] { $pots } pièce). En dessous, c’est sorti mince ; au-dessus, épais.
       *[other] { $pots } pièces). En dessous, c’est sorti mince ; au-dessus, épais.
    }
   *[alone] La bonne plage va de { $from } à { $to } ({ $pots ->
        [one] { $pots } pièce). En dessous, c’est sorti mince ; au-dessus, épais.
       *[other] { $pots } pièces). En dessous, c’est sorti mince ; au-dessus, épais.
    }
}
window-upwards = { $place ->
    [after_colon] la bonne plage commence à { $from } ({ $pots ->
        [one] { $pots } pièce). En dessous, c’est sorti mince ; on ne sait pas encore à partir d’où c’est trop.
       *[other] { $pots } pièces). En dessous, c’est sorti mince ; on ne sait pas encore à partir d’où c’est trop.
    }
   *[alone] La bonne plage commence à { $from } ({ $pots ->
        [one] { $pots } pièce). En dessous, c’est sorti mince ; on ne sait pas encore à partir d’où c’est trop.
       *[other] { $pots } pièces). En dessous, c’est sorti mince ; on ne sait pas encore à partir d’où c’est trop.
    }
}
window-downwards = { $place ->
    [after_colon] la bonne plage va jusqu’à { $to } ({ $pots ->
        [one] { $pots } pièce). Au-dessus, c’est sorti épais ; on ne sait pas encore à partir d’où ce n’est plus assez.
       *[other] { $pots } pièces). Au-dessus, c’est sorti épais ; on ne sait pas encore à partir d’où ce n’est plus assez.
    }
   *[alone] La bonne plage va jusqu’à { $to } ({ $pots ->
        [one] { $pots } pièce). Au-dessus, c’est sorti épais ; on ne sait pas encore à partir d’où ce n’est plus assez.
       *[other] { $pots } pièces). Au-dessus, c’est sorti épais ; on ne sait pas encore à partir d’où ce n’est plus assez.
    }
}
all-right = { $place ->
    [after_colon] { $pots ->
        [one] la seule pièce est à la bonne épaisseur, avec { $range }. On ne sait pas encore jusqu’où, en moins ou en plus, cela marche.
       *[other] les { $pots } pièces sont toutes à la bonne épaisseur, avec { $range }. On ne sait pas encore jusqu’où, en moins ou en plus, cela marche.
    }
   *[alone] { $pots ->
        [one] La seule pièce est à la bonne épaisseur, avec { $range }. On ne sait pas encore jusqu’où, en moins ou en plus, cela marche.
       *[other] Les { $pots } pièces sont toutes à la bonne épaisseur, avec { $range }. On ne sait pas encore jusqu’où, en moins ou en plus, cela marche.
    }
}
most-right = { $pots ->
    [one] { $right } sur { $pots } pièce à la bonne épaisseur, avec { $range }. On ne sait pas encore jusqu’où, en moins ou en plus, cela marche.
   *[other] { $right } sur { $pots } pièces à la bonne épaisseur, avec { $range }. On ne sait pas encore jusqu’où, en moins ou en plus, cela marche.
}
looks = { $thickness ->
    [thin] { $pots ->
        [one] { $pots } mince
       *[other] { $pots } minces
    }
    [thick] { $pots ->
        [one] { $pots } épaisse
       *[other] { $pots } épaisses
    }
   *[right] { $pots ->
        [one] { $pots } juste
       *[other] { $pots } justes
    }
}
range = { $from } à { $to }
best-near = Le mieux : environ { $best }, très probablement entre { $low } et { $high }. Dans la bonne plage, au moins { $sure } pièces sur 100 devraient avoir la bonne épaisseur.
came-out = { $thickness ->
    [thin] Sortie mince
    [thick] Sortie épaisse
   *[right] Sortie juste
}
the-window = Bonne plage
best-amount = Le mieux, { $amount }
aimed-at-today = Cible du jour, { $amount }
laydown-axis = Grammage, { $unit }
looks-at = { $thickness ->
    [thin] { $pots ->
        [one] { $pots } mince avec { $range }
       *[other] { $pots } minces avec { $range }
    }
    [thick] { $pots ->
        [one] { $pots } épaisse avec { $range }
       *[other] { $pots } épaisses avec { $range }
    }
   *[right] { $pots ->
        [one] { $pots } juste avec { $range }
       *[other] { $pots } justes avec { $range }
    }
}
chart-words = { $scope }. { $finding } { $looks }. Cible du jour : { $aim }.
faults-by-side = { $below } sur { $all-below } sous la bonne plage, { $within } sur { $all-within } dedans, { $above } sur { $all-above } au-dessus.
faults-of-all = { $pots ->
    [one] { $pots-with } sur { $pots } pièce.
   *[other] { $pots-with } sur { $pots } pièces.
}
more-with-less = Plus souvent avec moins d’émail.
more-within = Plus souvent dans la bonne plage.
more-with-more = Plus souvent avec plus d’émail.
rests-on-controls = { $pieces ->
    [one] { $pieces } pièce témoin, { $laydown }
   *[other] { $pieces } pièces témoins, moyenne { $laydown }
}
rests-on-tiles = { $tiles ->
    [one] { $tiles } plaquette d’essai, { $laydown }
   *[other] { $tiles } plaquettes d’essai, moyenne { $laydown }
}
rests-on-start = Ni pièce témoin ni plaquette d’essai : valeur de départ, { $laydown }
aims-title = Les couches et leurs cibles
aims-axis = { $coats ->
    [one] La dernière couche
   *[other] Les { $coats } dernières couches
}
aim = Cible
a-coat = Couche
far-off = Loin des autres
moving-average = Moyenne mobile
the-aim = Cible
within-limits = Bande où les couches tiennent la cible
aims-on = { $coats ->
    [one] La dernière couche est exactement sur la cible.
   *[other] Les { $coats } dernières couches sont en moyenne exactement sur la cible.
}
aims-over = { $coats ->
    [one] La dernière couche dépasse la cible de { $percent }.
   *[other] Les { $coats } dernières couches dépassent en moyenne la cible de { $percent }.
}
aims-short = { $coats ->
    [one] La dernière couche est à { $percent } sous la cible.
   *[other] Les { $coats } dernières couches sont en moyenne à { $percent } sous la cible.
}
aims-steady = Elles tiennent la cible.
aims-rising = Elles dérivent vers le trop : contrôlez la densité du seau, et le temps de trempage.
aims-falling = Elles dérivent vers le trop peu : contrôlez la densité du seau, et voyez si le biscuit est humide.
aims-outside = { $coats ->
    [one] Une est loin des autres.
   *[other] { $coats } sont loin des autres.
}
last-set = { $zone ->
    [inside] Dernière série : { $form }, intérieur
    [outside] Dernière série : { $form }, extérieur
   *[whole] Dernière série : { $form }, intérieur et extérieur
}
last-set-weights = { $pieces ->
    [one] { $pieces } pièce, { $when } : moyenne { $mean } humide, de { $least } à { $most }, écart type { $spread }.
   *[other] { $pieces } pièces, { $when } : moyenne { $mean } humide, de { $least } à { $most }, écart type { $spread }.
}
