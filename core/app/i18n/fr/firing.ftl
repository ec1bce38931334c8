### Not yet read by a native potter.

checklist = { $item ->
    [dust] Poussière retirée à l’éponge humide. Soufflée ou balayée, elle passe dans les poumons.
    [foot] Émail nettoyé du pied, et un peu plus haut sur la paroi.
    [rim] Bords et arêtes passés au doigt : ce qui accroche maintenant coupera plus tard.
    [knocks] Coups et éclats retouchés, et notés.
    [cracks] Pas de fissures dans la couche sèche. Refermez-les du doigt, sinon l’émail s’y retire.
    [bone_dry] Chaque pièce bien sèche, pas fraîche contre la joue. Une pièce humide éclate.
    [closed] Aucun creux fermé sans petit trou d’air.
    [stacked] Empilées pied sur pied ou bord sur bord, rien de lourd sur un bord mince.
    [clay_cracks] Pas de fissures aux bords, aux fonds et à l’attache des anses.
   *[overlap] Là où deux émaux se chevauchent : pas trop épais, et de la place en dessous pour couler.
}
waiting-label = En attente : toucher pour mettre sur une plaque
left-out-label = Ajouter une pièce oubliée
add-unweighed = Ajouter des pièces non pesées
all-of-form = { $pieces ->
    [one] { $form } : { $pieces } pièce
   *[other] { $form } : les { $pieces }
}
place-cones = Cônes témoins
no-cones-yet = Aucun pour l’instant. À côté des pièces, ils montrent combien de chaleur elles ont reçu.
read-cones = Lire les cônes
read-without-cones = Température, durée et cônes placés
look-again = Regarder de nouveau les pièces
look = Regarder les pièces
look-left = { $left ->
    [one] Regarder les pièces : reste { $left }
   *[other] Regarder les pièces : reste { $left }
}
no-room = Cette plaque est pleine. Prenez-en une autre, ou retirez-en une pièce.
loaded = { $pieces ->
    [one] { $pieces } pièce sur la plaque { $shelf }.
   *[other] { $pieces } pièces sur la plaque { $shelf }.
}
loaded-and-overlapping = { $pieces ->
    [one] { $pieces } pièce sur la plaque { $shelf }.
   *[other] { $pieces } pièces sur la plaque { $shelf }.
} { $overlapping ->
    [one] { $overlapping } paire se chevauche : déplacez-en une.
   *[other] { $overlapping } paires se chevauchent : déplacez-en.
}
all-loaded = { $pieces ->
    [one] { $pieces } pièce enfournée.
   *[other] { $pieces } pièces enfournées.
}
some-loaded = { $pieces ->
    [one] { $pieces } pièce enfournée. Pas de place pour { $left }.
   *[other] { $pieces } pièces enfournées. Pas de place pour { $left }.
}
moved = Déplacée.
taken-out = Retirée de l’enfournement.
was-in-firing = Vous avez regardé cette pièce après la cuisson : elle y était donc. Elle ne peut pas être retirée.
not-on-checklist = Ce point n’est pas sur la liste d’avant cuisson.
looked-at = Vérifié.
not-looked-at = Encore à vérifier.
fired-answer = Notée comme cuite. Laissez refroidir avant d’ouvrir, puis regardez les pièces une par une.
done-answer = Notée comme terminée.
opened-answer = Rouverte.
in-another-load = Cette pièce est encore dans une autre cuisson : { $firing }. Défournez-la ou retirez-la d’abord de là.
is-done = Cette cuisson est terminée. Rouvrez-la d’abord.
is-fired = Cette cuisson est passée : son plan reste tel quel.
to-fired = Noter comme cuite
to-done = Noter comme terminée
to-open = Rouvrir
ask-fired-empty = Il n’y a rien sur ses plaques. Vous pourrez encore ajouter les pièces après.
ask-fired = À faire après la cuisson. Vous pourrez alors regarder les pièces une par une.
ask-done = { $left ->
    [one] { $left } pièce n’a pas été regardée. Vous pourrez rouvrir la cuisson.
   *[other] { $left } pièces n’ont pas été regardées. Vous pourrez rouvrir la cuisson.
}
begun = Commencée
number = Numéro
name = Nom
pieces = Pièces
cone = Cône
cone-and-kind = { $kind ->
    [large] { $cone }, grand
    [self_supporting] { $cone }, autoporteur
   *[newer] { $cone }, d’une version plus récente
}
bends-at = Tombe à
bends-at-rates = { $slow } à 60 °C par heure, { $fast } à 150 °C par heure
program = Programme
witness-cones = Cônes témoins
fired = Cuite
top-temperature = Température maximale
it-took = Durée de cuisson
note = Remarque
place-and-found = { $place } : { $found }
kiln-caution = Laissez l’électricité, le gaz et l’évacuation du four à des professionnels agréés. Aérez la pièce, éloignez tout ce qui peut brûler, et suivez la notice du fabricant.
hot-ware = Les pièces chaudes brûlent, et se fendent dans un courant d’air. Défournez quand vous pouvez les tenir à main nue.
crowded = { $pairs ->
    [one] Plaque { $shelf } : d’après les dessins, { $pairs } paire de pièces est à moins de { $air } mm au plus large. Des émaux qui se touchent se soudent.
   *[other] Plaque { $shelf } : d’après les dessins, { $pairs } paires de pièces sont à moins de { $air } mm au plus large. Des émaux qui se touchent se soudent.
}
overlapping = { $pairs ->
    [one] Plaque { $shelf } : { $pairs } paire se chevauche, d’après les dessins. L’une serait posée sur l’autre : déplacez-la.
   *[other] Plaque { $shelf } : { $pairs } paires se chevauchent, d’après les dessins. L’une serait posée sur l’autre : déplacez-les.
}
shelf-title = { $pieces ->
    [one] Plaque { $shelf } : { $pieces } pièce, { $free } % libre
   *[other] Plaque { $shelf } : { $pieces } pièces, { $free } % libre
}
shelf-title-fired = { $pieces ->
    [one] Plaque { $shelf } : { $pieces } pièce
   *[other] Plaque { $shelf } : { $pieces } pièces
}
shelf-help = Vue de dessus, l’avant en bas. Maintenez une pièce et faites-la glisser pour la déplacer ; touchez-la pour la retirer.
shelf-as-fired = Telle que cuite, vue de dessus, l’avant en bas. Touchez une pièce pour voir laquelle c’est.
witness = { $reading ->
    [standing] cône { $cone } debout
    [soft] cône { $cone } amolli
    [at] cône { $cone } tombé
    [hard] cône { $cone } très tombé
   *[flat] cône { $cone } à plat
}
against-the-last = Par rapport à la dernière cuisson au cône { $cone } dans ce four : { $difference }.
against-the-last-both = Par rapport à la dernière cuisson au cône { $cone } dans ce four : { $heat } et { $time }.
hotter = { $degrees } de plus
cooler = { $degrees } de moins
as-hot = même température
longer = { $time } de plus
shorter = { $time } de moins
as-long = même durée
