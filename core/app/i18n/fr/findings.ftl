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
faults-by-side = { $above } au-dessus de la fenêtre, { $within } dedans, { $below } au-dessous.
faults-of-all = { $pots ->
    [one] { $share } pièce.
   *[other] { $share } pièces.
}
share = { $with } sur { $of } ({ $low } à { $high } %)
no-pot-there = aucune pièce
above-window = Au-dessus
within-window = Fenêtre
below-window = Au-dessous
share-of-pots = Pièces avec ce défaut
so-far = Pièces jusqu'ici
may-be-share = Part possible avec si peu de pièces
fault-chart-words = { $fault } : { $counts }
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

drift-over = { $coats ->
    [one] Début { $since } : { $coats } couche est { $percent } au-dessus de la cible.
   *[other] Début { $since } : { $coats } couches sont en moyenne { $percent } au-dessus de la cible.
}
drift-short = { $coats ->
    [one] Début { $since } : { $coats } couche est { $percent } au-dessous de la cible.
   *[other] Début { $since } : { $coats } couches sont en moyenne { $percent } au-dessous de la cible.
}
drift-is-over = Depuis, elles tiennent de nouveau la cible.
near = Nouveau à ce moment : { $changes }.
nothing-near = Rien de nouveau à ce moment : ni seau, ni mesure de densité, ni balance, ni terre.
near-bucket = seau { $name }
near-scale = balance { $name }
near-body = terre { $name }
near-check = densité mesurée, { $sg }
check-when-over = Vérifiez la densité du seau et le temps de trempage.
check-when-short = Vérifiez la densité du seau et si le biscuit est humide.
drift-began = Début de la dérive
drift-noted = Vu : recommencer
drift-is-noted = Vu. Les couches sont de nouveau comparées à leur cible.

sizes-title = { $zone ->
    [inside] Tailles : { $shape }, intérieur
    [outside] Tailles : { $shape }, extérieur
   *[whole] Tailles : { $shape }, intérieur et extérieur
}
sizes-rest-on = { $pots ->
    [one] D'après { $pots } pièce cuite de cette forme, pour le seau d'aujourd'hui.
   *[other] D'après { $pots } pièces cuites de cette forme, pour le seau d'aujourd'hui.
}
form-and-capacity = { $form }, { $volume }
next-size = Taille suivante, { $volume }
size-amount = { $aim } ({ $low } à { $high })
holds = Contenance, { $unit }
aim-may-be = Où peut se trouver la cible
sizes-words = { $title }; { $sizes }.
size-at = à { $volume } { $wet }

sets-title = Séries assorties
waiting-shelf = { $zone ->
    [inside] En attente : { $form }, intérieur
    [outside] En attente : { $form }, extérieur
   *[whole] En attente : { $form }, intérieur et extérieur
}
fired-shelf = { $zone ->
    [inside] Réussies : { $form }, intérieur
    [outside] Réussies : { $form }, extérieur
   *[whole] Réussies : { $form }, intérieur et extérieur
}
best-set = Les { $size } meilleures, à { $percent } près : { $pieces }.
next-to-match = Prochaine pièce assortie : { $wet }.

use-title = Consommation
each-week = Par semaine
weekly = { $coats ->
    [one] { $wet } humide, d'après { $coats } couche des { $weeks } dernières semaines.
   *[other] { $wet } humide, d'après { $coats } couches des { $weeks } dernières semaines.
}
bucket-left = { $coats ->
    [0] Reste { $wet } : moins d'un tiers de la préparation. Refaites-en.
    [one] Reste { $wet } : encore { $coats } couche avant le dernier tiers, pour tremper.
   *[other] Reste { $wet } : encore { $coats } couches environ avant le dernier tiers, pour tremper.
}
to-fill-up = Pour le remplir : { $powder } de poudre et { $water } d'eau. Portez un masque respiratoire.

near-hand = premières couches de { $name }
hands-title = Mains
hand-on = { $coats ->
    [one] { $coats } couche, juste sur la cible
   *[other] { $coats } couches, en moyenne juste sur la cible
}
hand-over = { $coats ->
    [one] { $coats } couche, { $percent } au-dessus de la cible
   *[other] { $coats } couches, en moyenne { $percent } au-dessus de la cible
}
hand-short = { $coats ->
    [one] { $coats } couche, { $percent } au-dessous de la cible
   *[other] { $coats } couches, en moyenne { $percent } au-dessous de la cible
}
hand-spread = { $mean }. Écart type { $spread }.
bisque-title = Biscuit : { $body }
newest-lot = Le dernier lot absorbe { $percent }.
lots-axis = Lots, du plus ancien au plus récent
a-lot = Un lot
in-their-order = Dans leur ordre
usual-bisque = Usuel pour le cône 06 à 04
repeats-title = Balance : { $scale }
repeats-worse-now = Elle se répète à { $now }, moins bien que { $before } au test précédent. Mettez-la de niveau, nettoyez sous le plateau, changez la pile et testez de nouveau.
repeats-better-now = Elle se répète à { $now }, mieux que { $before } au test précédent.
repeats-as-before = Elle se répète à { $now }, comme au test précédent.
tests-axis = Tests, du plus ancien au plus récent
a-test = Écart type d’un test
test-reaches = Sa certitude
the-step = Un échelon de l’affichage
sg-title = Densité : { $bucket }
sg-steady = { $checks } contrôles, la densité est restée à { $last }.
sg-rose = Il a épaissi : densité { $first } le { $day }, { $last } maintenant.
sg-fell = Il s’est fluidifié : densité { $first } le { $day }, { $last } maintenant.
working-sg = Densité de travail { $sg }
flow-title = Écoulement : { $bucket }
flow-went = { $first } s le { $day }, { $last } s maintenant, coupe : { $cup }.
any-cup = la même
volume-title = Volume : { $bucket }
volume-went = { $first } l le { $day }, { $last } l maintenant, d’après le niveau.
one-check = Une lecture
over-time = Au fil du temps
