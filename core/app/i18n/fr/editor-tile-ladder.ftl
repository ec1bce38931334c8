### Not yet read by a native potter.

title = Échelle de plaquettes d’essai
save = Enregistrer ces plaquettes
count = Combien de plaquettes
count-help = À pas égaux, de 60 % à 140 % de la cible de l’émail. Un nombre impair en met une sur la cible.
count-impossible = Une échelle a { $fewest } à { $most } plaquettes.
sg = Densité du seau
firing = Les ajouter à une cuisson
no-firing = Pas encore
aim = Cible de cet émail : { $laydown }.
rung = { $label } : { $wet } humide, { $share } de la cible.
scratch = Gravez le repère dans chaque plaquette avant le biscuit, ou écrivez-le à l’engobe : le crayon brûle.
thin-ones = Les plaquettes sous { $share } de la cible ne montrent que le bout mince ; les cibles n’en tiennent pas compte.
planned = { $tiles ->
    [one] { $tiles } plaquette prévue. Pesez sa couche et notez-la dans sa fiche.
   *[other] { $tiles } plaquettes prévues. Pesez chaque couche et notez-la dans sa fiche.
}
piece = Plaquette d’essai { $label }
section = Échelles de plaquettes
add = Prévoir une échelle
none = Un émail du mince à l’épais sur une rangée de plaquettes montre l’épaisseur qu’il veut.
