### Not yet read by a native potter.

from-control = { $pieces ->
    [one] D’après votre pièce témoin de cette forme.
   *[other] D’après vos pièces témoins de cette forme.
}
from-control-by-area = { $pieces ->
    [one] D’après votre pièce témoin de « { $form } », par la surface émaillée.
   *[other] D’après vos pièces témoins de « { $form } », par la surface émaillée.
}
from-control-by-capacity = { $pieces ->
    [one] D’après votre pièce témoin de « { $form } », par la contenance.
   *[other] D’après vos pièces témoins de « { $form } », par la contenance.
}
from-tiles = D’après vos plaquettes d’essai : { $laydown }.
from-start = Valeur de départ habituelle d’un émail : { $laydown }.
from-sides = Ce que prennent ensemble l’intérieur et l’extérieur.
from-import = Comme noté dans votre feuille de calcul.
based-on-tiles = Repose sur des plaquettes d’essai, pas encore sur des pièces.
based-on-nothing = Ne repose encore sur aucune pièce. Enregistrez-en une qui vous plaît comme pièce témoin.
based-on-pots = { $pots ->
    [one] Repose sur { $pots } pièce.
   *[other] Repose sur { $pots } pièces.
}
first-guess = Première estimation : la bonne quantité peut être n’importe où entre { $low } et { $high }.
most-likely = La bonne quantité est très probablement entre { $low } et { $high }.
no-area = « { $form } » n’a pas de surface émaillée. Donnez sa contenance, ou mesurez sa surface.
unusable-control = La pièce témoin de « { $form } » a un poids ou une surface impossibles. Corrigez-la, ou choisissez une autre pièce témoin.
unusable-tile = Une plaquette d’essai de cet émail a un poids ou une surface impossibles. Corrigez-la, ou archivez-la.
nothing-to-go-by = laydown ne sait pas encore quelle épaisseur il faut à cet émail. Pesez une pièce qui vous plaît et enregistrez-la comme pièce témoin.
no-number = Aucune cible ne peut être calculée avec la taille de cette forme et la densité de ce seau. Vérifiez les deux.
tile-no-area = Donnez la surface de la face émaillée de la plaquette.
tile-no-weight = Donnez le poids de la couche sur la plaquette.
tile-too-much = Une plaquette de cette taille ne peut pas porter autant d’émail. Vérifiez le poids et la surface.
tile-is-thin = Cette plaquette ne porte que { $share } de ce que porteront les pièces : les cibles n’en tiennent pas compte. Émaillez-en une plus épaisse.
