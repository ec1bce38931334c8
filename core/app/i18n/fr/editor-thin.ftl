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
done = Fait : contrôler maintenant
goal = Amener à
to-working = La densité de travail
to-control = Comme pour la pièce témoin
to-check = Comme au contrôle du { $when }
to-typed = Une autre densité
by = Comment
by-water = Retirer de l’eau
by-powder = Ajouter de l’émail sec
done-water = Eau, telle que vous l’avez fait
done-powder = Émail sec, tel que vous l’avez fait
done-help = Changez-le si vous vous êtes arrêté avant.
