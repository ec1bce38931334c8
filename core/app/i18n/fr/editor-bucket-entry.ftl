### Not yet read by a native potter.

title = Note : { $glaze }, { $bucket }
remove = Retirer cette note
what = Quoi
volume = Quantité d’eau
amount = Quantité d’émail sec
amount-if-known = Quantité, si vous l’avez pesée
never-dosed = laydown le note seulement. La dose, ce sont vos essais et la fiche du fabricant qui la disent.
weight = Poids du seau avec l’émail
tare-bucket = Donnez le poids à vide de ce seau, et son poids devient un volume.
level = Niveau au-dessus du fond
level-help = Mesurez du fond jusqu’à l’émail.
level-is = Cela fait { $volume }.
measure-bucket = Donnez la largeur de ce seau, et un niveau devient un volume.
date = Jour
note = Note
dust = L’émail sec fait de la poussière : portez un masque respiratoire, versez-le dans l’eau, essuyez à l’humide.
saved = Noté pour { $bucket }.
