### Not yet read by a native potter.

title = Poids sec
title-of = { $piece } : poids sec
piece = Pièce
bare-was = Pesée nue : { $bare }.
bare-help = Ce que pesait cette pièce avant sa première couche. Sans cela, le poids sec ne dit rien.
bone-dry = Pièce bien sèche
bone-dry-help = Elle est sèche quand deux pesées à une heure d’intervalle sont égales. Tenez-la par le pied nu et lavez la poussière d’émail de vos mains.
weigh-it = Pesez la pièce bien sèche et tapez ce que montre la balance.
dry-and-by-sg = Émail sec : { $dry } pesé ; { $by-sg } d’après la densité du seau.
with-doubt = { $number } ±{ $doubt }
of-all-coats = { $coats ->
    [one] C’est le poids de { $coats } couche.
   *[other] C’est le poids de { $coats } couches ensemble. Il est réparti selon leurs poids humides ; chacun est donc moins sûr.
}
of-one-coat = { $zone } : { $dry }, { $laydown }.
agree = Le poids sec et la densité concordent.
disagree = { $direction ->
    [more] Le poids sec donne { $percent } d’émail de plus que la densité. L’un de ces points est faux :
   *[less] Le poids sec donne { $percent } d’émail de moins que la densité. L’un de ces points est faux :
}
suspect-sg = { $direction ->
    [more] La densité était { $would-be } et non { $checked } : de l’eau s’est évaporée après le contrôle, ou le récipient, son repère ou sa température était faux.
   *[less] La densité était { $would-be } et non { $checked } : l’émail avait décanté, de l’eau a été ajoutée, ou le récipient, son repère ou sa température était faux.
}
suspect-powder = La densité de la poudre est { $would-be } et non { $set } : elle se règle dans l’émail.
suspect-wet-bisque = { $water } d’eau étaient dans le biscuit quand il a été pesé nu, par exemple après rinçage.
suspect-lost = { $lost } d’émail sec sont partis après la pesée, par exemple en essuyant le pied.
suspect-not-dry = { $water } d’eau sont encore dans la pièce : pesez-la de nouveau demain.
saved = Poids sec enregistré. Les cibles en tiennent compte avec la densité.
removed = Poids sec retiré.
was-fired = Cette pièce est cuite : son émail a changé de poids. Seul compte un poids sec pris avant la cuisson.
no-bare = Tapez ce que pesait la pièce nue.
not-over-bare = Ce n’est pas plus que la pièce nue, { $bare }. Vérifiez les deux poids.
not-under-wet = La couche pèserait autant sèche qu’humide, { $wet }. Vérifiez les poids, ou laissez sécher.
over-capacity = La balance pèse { $capacity } au plus. Vérifiez le poids.
weigh-dry = Peser la pièce sèche
weigh-a-dry-piece = Peser une pièce sèche
weighed-dry = { $dry } sec
