### Not yet read by a native potter.

no-amount = Ligne { $line } : écrivez la quantité après le nom, par exemple Silice 30.
which-amount = La ligne { $line } a un nombre à chaque bout. Écrivez le nom, un point-virgule, puis la quantité.
no-name = La ligne { $line } n’a pas de nom. Écrivez la matière, puis la quantité.
long-name = Ligne { $line } : le nom est trop long. 80 lettres au plus.
figure = Ligne { $line } : { $why }
nothing = La somme de ces matières est nulle. Donnez les parts d’au moins une qui n’est pas un ajout.
too-many = Un émail a { $most } matières au plus. Retirez les lignes qui n’en sont pas.
hurts-silica = Silice : la poussière abîme les poumons pour toujours. Portez un masque respiratoire, versez la poudre dans l’eau, essuyez à l’humide.
hurts-barium = Baryum : toxique à avaler ou à respirer. Portez des gants et un masque respiratoire, et lavez-vous les mains.
hurts-manganese = Manganèse : la poussière et les fumées du four abîment les nerfs. Portez un masque respiratoire et ventilez le four.
hurts-lithium = Lithium : toxique à avaler. Portez des gants, tenez-le loin des aliments et des enfants.
hurts-cobalt = Cobalt : peut causer des allergies et peut-être le cancer. Portez des gants et un masque respiratoire.
hurts-chromium = Chrome : certaines formes causent le cancer, et la cuisson peut en créer. Portez des gants et un masque respiratoire, et ventilez le four.
hurts-nickel = Nickel : peut causer des allergies, et sa poussière peut-être le cancer. Portez des gants et un masque respiratoire.
hurts-vanadium = Vanadium : toxique, la poussière brûle les poumons. Portez des gants et un masque respiratoire.
hurts-copper = Cuivre : nocif à avaler, et beaucoup d’émaux le relâchent. Seul un essai de laboratoire de la pièce cuite peut le dire.
hurts-soluble = Matière soluble : irrite la peau et les yeux. Portez des gants et ne la versez pas dans l’évier.
hurts-lead = Plomb : un poison qui s’accumule dans le corps. Ne l’utilisez jamais pour la nourriture ou la boisson, et demandez à un spécialiste avant de le manipuler.
hurts-cadmium = Cadmium : toxique, et cause le cancer. Ne l’utilisez jamais pour la nourriture ou la boisson, et demandez à un spécialiste avant de le manipuler.
