### Not yet read by a native potter.

new = Pasta nueva
title = Pasta
archive = Archivar esta pasta
name-hint = Gres blanco
to-bisque = Contracción hasta el bizcocho, %
to-bisque-help = Desde la medida torneada. Rayar dos marcas a 100 mm en la arcilla húmeda: cada milímetro que pierden es un 1 %.
to-fired = Contracción hasta la cocción de esmalte, %
to-fired-help = También desde la medida torneada: las mismas marcas tras la cocción de esmalte.
density = Densidad del bizcocho, g/ml
density-help = Si se ha medido: peso seco dividido por volumen exterior. Con ella, el peso de una pieza bizcochada delata una medida mal tecleada.
density-impossible = El bizcocho pesa de 1 a 3 g por ml. Revisar la cifra o dejarla vacía.
grew = Una pieza cocida era { $size } mayor en bizcocho, con { $area } más que esmaltar.
