### Not yet read by a native potter.

new = Nouvel émail
title = Émail
archive = Archiver cet émail et ses seaux
name-hint = Blanc de cendre
sensitivity = Sensibilité à l’épaisseur
accepted = ±{ $percent } acceptés
sg = Densité du seau, si elle est contrôlée
sg-help = Un litre qui pèse 1450 g a une densité de { $sg }. Vous pourrez la contrôler plus tard.
powder-density = Densité de la poudre
powder-density-help = { $density } convient à la plupart des émaux. Mettez plus s’il y a beaucoup de zircon, de baryum ou d’autres oxydes lourds.
starting-laydown = Grammage de départ, g pour 100 cm²
starting-laydown-help = Émail sec. Sert tant que vous n’avez ni plaquette d’essai ni pièce témoin.
powder-in-bucket = Le seau contient { $powder } de poudre en poids.
first-bucket = Premier seau
