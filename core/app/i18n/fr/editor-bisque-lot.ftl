### Not yet read by a native potter.

new = Nouveau lot de biscuit
title = Lot de biscuit
archive = Archiver ce lot
name-hint = Biscuit 14
body = Terre
cone = Cône
not-known = Non noté
fired-on = Cuit le
soaking = Imbibé par
soaking-help = Gardez une seule méthode : seuls des lots imbibés de même se comparent.
way = { $way ->
    [boil] Faire bouillir 5 heures, puis laisser un jour dans l’eau. Attention à la vapeur et à la casserole.
    [cold] Un jour dans l’eau froide. Remplit moins de pores.
   *[vacuum] Sous vide. En remplit le plus.
}
dry = Bien sec
dry-help = Un tesson nu suffit, 50 g ou plus. Séchez-le deux heures au four à 110 °C et laissez-le refroidir.
soaked = Imbibé
soaked-help = Épongez le film d’eau avec un linge humide et pesez aussitôt.
suspended = Suspendu dans l’eau, si pesé
suspended-help = La pièce imbibée à un fil, sous l’eau et sans toucher le fond. Donne la densité et les pores.
temperature = Température de l’eau, °C
drinks = Absorbe { $percent } (±{ $doubt }) de son poids sec, { $way }.
usual = Un biscuit de cône 06 à 04 absorbe d’ordinaire { $from } à { $to }.
pores = Masse volumique { $density } g/ml ; les pores ouverts font { $porosity } du volume.
as-before = Comme les lots précédents, { $mean } en moyenne.
drinks-more = Plus que les lots précédents, { $mean } en moyenne : le même trempage prend plus d’émail. Cuit moins chaud ou moins longtemps ?
drinks-less = Moins que les lots précédents, { $mean } en moyenne : le même trempage prend moins d’émail. Cuit plus chaud ou plus longtemps ?
no-weight = Une pièce sèche pèse quelque chose. Vérifiez le poids.
soaked-under-dry = Imbibée, elle pèse moins que sèche. Échangez les poids ou pesez de nouveau.
too-much = Aucun biscuit n’absorbe autant. Vérifiez les deux poids.
suspended-over-dry = Suspendue dans l’eau, une pièce pèse moins que sèche. Vérifiez quel poids est lequel.
no-water = Vérifiez la température de l’eau.
row = absorbe { $percent } ({ $way }), { $day }
wet = { $bare }, c’est { $over } de plus que vos pièces sèches de cette forme, environ { $usual }. Si elle a été rincée, cette eau est encore dedans : laissez-la sécher, sinon elle prend trop peu d’émail.
