### Not yet read by a native potter.

no-bucket = Pas encore de seau. Ajoutez un émail : son premier seau vient avec.
stir-and-check = Remuez jusqu’au fond et contrôlez la densité avant les pièces suivantes.
sg-not-checked = Densité non contrôlée
checked-and-coats = { $coats ->
    [one] Contrôlé { $when }, { $coats } couche depuis
   *[other] Contrôlé { $when }, { $coats } couches depuis
}
coats-so-far = { $coats ->
    [one] { $coats } couche jusqu’ici
   *[other] { $coats } couches jusqu’ici
}
powder-by-weight = Poudre, en poids
dry-in-litre = Émail sec par litre
dry-in-bucket = Émail sec dans le seau
flow = { $seconds } s à la coupe d’écoulement
flow-in = { $seconds } s, { $cup }
volume = Dans le seau
expected-sg = Densité attendue aujourd’hui
check-due = Prochain contrôle
now = Maintenant
in-days = { $days ->
    [one] Dans { $days } jour
   *[other] Dans { $days } jours
}
evaporation = Évaporation
each-open-day = { $volume } par jour d’ouverture
pieces = { $pieces ->
    [one] Encore { $pieces } pièce
   *[other] Encore { $pieces } pièces environ
}
changed-since = De l’eau ou de l’émail sec a été ajouté ou retiré depuis le dernier contrôle. Contrôlez la densité avant les pièces suivantes.
entry = { $what } : { $amount }
