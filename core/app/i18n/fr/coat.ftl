### Not yet read by a native potter.

saved = Enregistré
wet-weight = Poids humide
bare-glazed = Nue, émaillée
added = Ajouté en retouche
rubbed-off = Gratté
verdict = Verdict
reading = Lecture
confirmed = Loin de la cible, confirmé
target-then = Cible à la pesée
aim-and-span = { $aim } ({ $span })
aim-and-guess = { $aim }, estimation : peut-être { $span }
laydown = Grammage
weighed-dry = Pesé sec
dipped = Trempé ou versé
seconds = { $time } s
glaze-bucket = Émail, seau
sg = Densité
area = Surface
make-control = Prendre comme pièce témoin
no-longer-control = Ne plus prendre comme pièce témoin
control-marked = C’est maintenant une pièce témoin. Les cibles en tiennent compte.
control-unmarked = Ce n’est plus une pièce témoin.
removed = Couche retirée.
control-came-out = { $thickness ->
    [thin] Cette pièce est sortie trop mince. Prenez comme pièce témoin une pièce sortie juste.
   *[thick] Cette pièce est sortie trop épaisse. Prenez comme pièce témoin une pièce sortie juste.
}
control-was-off = { $verdict ->
    [short] À la pesée, il n’y avait pas assez d’émail, et vous n’avez pas dit comment la pièce est sortie du four. L’utiliser quand même pour les cibles ?
   *[over] À la pesée, il y avait trop d’émail, et vous n’avez pas dit comment la pièce est sortie du four. L’utiliser quand même pour les cibles ?
}
control-not-judged = Vous n’avez pas encore dit si cette pièce est sortie juste. L’utiliser quand même pour les cibles ?
control-not-fired = Cette pièce n’est pas encore cuite : vous ne pouvez pas savoir si elle est juste. L’utiliser quand même pour les cibles ?
note = Remarque
