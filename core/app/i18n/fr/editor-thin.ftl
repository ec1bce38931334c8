### Not yet read by a native potter.

title = Diluer { $glaze }, { $bucket }
from = Densité actuelle
to = Densité voulue
volume = Émail dans le seau
there-already = Il a déjà cette densité.
add-water = Ajoutez { $water } d’eau.
add-in-parts = Ajoutez-en les deux tiers, remuez, contrôlez, puis ajoutez le reste : l’eau ne se retire pas le même jour.
take-off-water = Laissez décanter et retirez { $water } d’eau claire.
or-add-powder = Ou incorporez { $powder } de l’émail sec.
dust = L’émail sec fait de la poussière : portez un masque respiratoire, versez-le dans l’eau, essuyez à l’humide.
