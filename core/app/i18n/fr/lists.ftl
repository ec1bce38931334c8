### Not yet read by a native potter.

and = { $before } et { $last }
size-impossible = taille impossible
inside-area = intérieur { $area }
bucket-checked = { $bucket }, densité { $sg }, contrôlée { $when }
bucket-not-checked = { $bucket }, densité non contrôlée
scale = jusqu’à { $capacity }, échelon { $step }
