### Not yet read by a native potter.

title = Unités, son et vibration
mass = Poids
volume = Volumes
area = Surfaces
length = Longueurs
decimal = Signe décimal
speak = Dire le verdict à voix haute
tick = Vibrer à chaque touche
code-pieces = Un code par pièce
code-pieces-help = À marquer sur le pied, pour reconnaître la pièce après la cuisson. Sans code, les pièces égales sont comptées ensemble, en série.
phone = Nom du téléphone
phone-hint = Tablette près de l’évier
hand = Qui émaille
hand-hint = Laissez vide si cela n'a pas d'importance
hand-help = Ce nom est noté sur chaque nouvelle couche jusqu'à ce que vous le changiez. Les constats disent alors si chaque main est régulière.
ask-dip = Demander les durées de trempage
ask-dip-help = À la pesée : combien de temps chaque couche a été trempée ou versée. Après quatre couches d’un seau, laydown donne une idée de la durée.
