### Not yet read by a native potter.

new = Nouvelle tuile d’essai
title = Tuile d’essai
archive = Archiver cette tuile d’essai
name-hint = Tuile 12
area = Surface émaillée
area-help = Longueur fois largeur de ce qui a été émaillé ; les deux faces si les deux l’ont été.
net = Poids humide de la couche
dry = Poids sec de la couche
dry-help = Une fois bien sèche. Mieux que le poids humide, si vous avez attendu.
no-weight = Donnez le poids sec, ou le poids humide et la densité.
