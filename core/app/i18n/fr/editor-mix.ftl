### Not yet read by a native potter.

title = Préparer { $glaze }
save = Enregistrer comme nouveau seau
by = Combien
by-powder = Par l’émail sec
by-powder-detail = Sans les ajouts : ils viennent en plus
by-volume = Par le volume
powder = Émail sec
volume = Émail voulu
sg = Densité voulue
scale = Balance
lot-of = Préparation du { $day }
water = Eau
weigh = { $name } : { $weight }
weighed = { $done } pesées sur { $all }.
rounded = { $name } : cette balance affiche { $weight } pour { $exact }, { $off } d’écart. Prenez une balance plus fine, ou préparez-en plus.
over-capacity = { $name } : { $weight }, c’est plus que cette balance ne peut peser. Pesez en plusieurs fois.
makes = Donne { $volume } à la densité { $sg }, avec { $powder } d’émail sec.
by-weight = Pesez chaque poudre : une tasse de poudre légère peut contenir un cinquième de ce qu’elle contient de poudre dense.
