### Not yet read by a native potter.

position = { $pieces ->
    [one] { $number } sur { $pieces }
   *[other] { $number } sur { $pieces }
}
fault-and-place = { $fault }, { $place }
fault-and-hint = { $fault }. { $about } { $hint }
inside = Intérieur
outside = Extérieur
overlap = Chevauchement
saved = Enregistré.
saved-found = Enregistré : { $found }.
no-outline = Cette forme n’a pas de contour à toucher.
fault-first = Touchez d’abord un défaut, puis l’endroit où il se trouve.
liking-range = Donnez une note de 1 à 5.
note-too-long = { $letters ->
    [one] Cette remarque est trop longue. Au plus { $letters } caractère.
   *[other] Cette remarque est trop longue. Au plus { $letters } caractères.
}
photo-unreadable = Cette image est illisible. Reprenez la photo, ou choisissez-en une autre.
photo-saved = Photo enregistrée.
photo-removed = Photo retirée.
sharp = Les bords et les éclats coupent. Mettez des gants et des lunettes de protection, et ne vous servez pas de cette pièce à table.
crazed = Une pièce tressaillée peut fuir, et se casser sous l’eau bouillante. Seule une analyse en laboratoire dit si quelque chose passe dans les aliments.
thick-and-over = C’était trop à la pesée : cela concorde. Tenez-vous à la cible la prochaine fois.
thick-but-short = Ce n’était pas assez à la pesée ; cherchez une autre cause : cuisson, densité du seau ou goutte.
thick-but-within = C’était bon à la pesée. Si d’autres pièces sortent trop épaisses, la cible est peut-être trop haute.
thin-and-short = Ce n’était pas assez à la pesée : cela concorde. Tenez-vous à la cible la prochaine fois.
thin-but-over = C’était trop à la pesée ; cherchez une autre cause : cuisson, densité du seau ou biscuit humide.
thin-but-within = C’était bon à la pesée. Si d’autres pièces sortent trop minces, la cible est peut-être trop basse.
