pots = { $pots ->
    [one] { $pots } pièce cuite
   *[other] { $pots } pièces cuites
}
controls = { $controls ->
    [one] { $controls } pièce témoin
   *[other] { $controls } pièces témoins
}
from-pots = D’après { $pots }.
from-pots-and-controls = D’après { $pots } et { $controls }.
from-kept = La quantité que vous gardez pour cette forme.
rests-on = Repose sur { $pots }.
rests-on-both = Repose sur { $pots } et { $controls }.

more-than-nine = plus de 9 sur 10
about = environ { $tenths } sur 10
less-than-one = moins de 1 sur 10
comes-out-right = Chances d’être juste : { $odds }.
right-on-aim = Sur la cible, { $odds } sortent justes.
accepted = Accepté : ce qui sort juste au moins 4 fois sur 5.

headline-probably = PROBABLEMENT BON
probably = Sans doute juste. Un échelon de { $step } est trop grossier pour être sûr de { $span }.
not-sure = Trop loin de la cible pour être sûr. Sûr : { $span }.
spoken-probably = Probablement bon. Enregistrez.

moved = Après { $pots } : { $before } devient { $after }.
back-to = Revenir à { $before }
keep = Garder { $now }
use-all = Utiliser les pièces cuites
uses-all = Les cibles suivent vos pièces cuites.
uses-best = Ici, les cibles sont comme avant les pièces cuites.
keeps = Cible gardée à { $now }.
sets-targets = Sur Peser, ces pièces cuites fixent la cible avec tout ce qui est connu.

all-right = Toutes les pièces cuites sont justes. On ne sait pas encore à partir de quand c’est trop.
all-thin = Toutes les pièces cuites sont minces. La cible est peut-être encore trop basse.
all-thick = Toutes les pièces cuites sont épaisses. La cible est peut-être encore trop haute.
ratings-inverted = Les pièces jugées minces portent plus d’émail que les épaisses. Les avis sont-ils inversés ?
mixed = Mince, juste et épais se chevauchent. Aucune quantité n’est sûre d’être juste.
controls-apart = Deux pièces témoins diffèrent de { $ratio } : { $less } et { $more }. Retirez la marque de la mauvaise.
tiles-above = Vos plaquettes d’essai portent { $ratio } de plus que ce qu’il faut à vos pièces.
tiles-below = Vos plaquettes d’essai portent { $ratio } de moins que ce qu’il faut à vos pièces.
start-above = La valeur de départ dépasse de { $ratio } ce qu’il faut à vos pièces.
start-below = La valeur de départ est { $ratio } sous ce qu’il faut à vos pièces.
odd = { $piece } ne va pas avec les autres et compte à peine. Vérifiez son poids et son avis.
groups-apart = { $kind ->
    [body] Les besoins diffèrent : { $more } prend { $ratio } de plus que { $less }. La cible de chaque forme suit sa terre.
    [cone] Les besoins diffèrent : { $more } prend { $ratio } de plus que { $less }. Pour les séparer, ajoutez un émail par cône.
   *[zone] Les besoins diffèrent : { $more } prend { $ratio } de plus que { $less }. Chaque zone a sa propre cible.
}
some-piece = Pièce inconnue
some-body = Terre inconnue
typed-amount = { $form }, quantité saisie
cone = cône { $cone }

why-button = Pourquoi cette cible ?
why = Pourquoi { $aim } ?
weights-add-up = Les pourcentages disent combien chaque élément compte.
pots-say = Vos pièces cuites disent { $wet }.
too-few-pots = { $pots ->
    [one] { $pots } couche cuite et jugée de cet émail compte. À partir de { $enough }, elles fixent la cible.
   *[other] { $pots } couches cuites et jugées de cet émail comptent. À partir de { $enough }, elles fixent la cible.
}
piece-and-zone = { $piece }, { $zone }
control-piece = Pièce témoin : { $piece }
test-tile = Plaquette d’essai : { $tile }
starting-value = Valeur de départ
starts-with = { $laydown }.
usual = Ce qui est habituel
usual-help = Ce que laydown suppose de tout émail et de toute forme.
when-and-weight = { $when } : { $wet }.
when-weight-and-look = { $when } : { $wet }, { $look }.
facts-and-without = { $facts } Sans elle : { $without }.
does-not-count = { $facts } Ne compte pas.
leave-out = Ne pas compter
count-again = Compter de nouveau
is-left-out = Ne compte plus.
counts-again = Compte de nouveau.
and-so = { $done } { $before } devient { $after }.
