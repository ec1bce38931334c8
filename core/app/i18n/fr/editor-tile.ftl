### Not yet read by a native potter.

new = Nouvelle plaquette d’essai
title = Plaquette d’essai
archive = Archiver cette plaquette d’essai
name-hint = Plaquette 12
area = Surface émaillée
area-help = Longueur fois largeur de ce qui a été émaillé ; les deux faces si les deux l’ont été.
net = Poids humide de la couche
dry = Poids sec de la couche
dry-help = Une fois bien sèche. Mieux que le poids humide, si vous avez attendu.
no-weight = Donnez le poids sec, ou le poids humide et la densité.
size = Mesurée par
by-sides = Ses côtés
by-area = Sa surface émaillée
long = Longueur
wide = Largeur
sides-help = De la face émaillée.
came-out = Résultat
came-out-help = Une plaquette ne compte pour les cibles qu’une fois cuite et sortie juste.
takes = À la densité { $sg }, cette plaquette prend { $wet } pour la cible de cet émail, { $laydown }.
counts = { $result ->
    [right] Les cibles tiennent compte de cette plaquette.
    [thin] Elle est sortie trop mince : les cibles n’en tiennent pas compte.
    [thick] Elle est sortie trop épaisse : les cibles n’en tiennent pas compte.
   *[not_fired] Les cibles n’en tiendront compte qu’une fois cuite et sortie juste.
}
coats = Couches
coats-help = De combien de couches est ce poids.
so-many-coats = { $coats ->
    [one] { $coats } couche
   *[other] { $coats } couches
}
compare-with = Comparer avec une forme
no-form = Aucune
as-thick-as = Aussi épais que { $wet } sur { $form }, { $zone }.
planned = Prévu : { $wet } humide.
