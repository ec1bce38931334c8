### Not yet read by a native potter.

new = Nouvelle forme
title = Forme
archive = Archiver cette forme
name-hint = Mug du matin
shape = Silhouette
shape-help = Choisissez le contour le plus proche du vôtre.
way = Mesurée par
way-capacity = Contenance
way-capacity-detail = Remplissez d’eau une pièce biscuitée à ras bord, et pesez ou mesurez l’eau. Rapide, et un peu approximatif.
way-points = Points mesurés
way-points-detail = Quelques largeurs prises au compas d’épaisseur, plus la paroi et le pied. Le plus précis.
way-photograph = Photo de profil
way-photograph-detail = De côté, à mi-hauteur de la pièce, devant un fond uni, avec une dimension connue.
way-one-measure = Une seule mesure
way-one-measure-detail = Sa largeur, sa hauteur ou son poids de terre. Le plus approximatif, mais pour une assiette la largeur suffit.
clay = Poids de terre
clay-detail = La terre humide dont elle est tournée, avant le tournasage et sans l’anse.
way-areas = Surfaces
way-areas-detail = Si vous connaissez les surfaces émaillées. Les surfaces que vous mesurez passent avant le calcul.
capacity = Contenance à ras bord
capacity-help = D’une pièce biscuitée, pas d’une pièce cuite émaillée.
capacity-if-measured = Contenance à ras bord, si elle est mesurée
area-inside = Surface émaillée à l’intérieur
area-outside = Surface émaillée à l’extérieur
tile-has-no-profile = Un carreau n’a pas de profil. Choisissez « { way-areas } » et donnez la surface de sa face émaillée.
points = Profil extérieur
points-help = De bas en haut : la hauteur et la largeur partout où le contour change de direction, comme le pied, la panse, le col et le bord.
height-in = Hauteur, { $unit }
across-in = Largeur, { $unit }
wall-in = Paroi, { $unit }
point-half-given = Point { $number } : donnez la hauteur et la largeur.
point-error = Point { $number } : { $error }
photograph = Photo
photograph-help = Posez la pièce devant un mur ou un tissu uni, l’anse sur le côté. Tenez le téléphone droit, à mi-hauteur de la pièce et à une longueur de bras.
take-photograph = Prendre une photo
choose-picture = Choisir une image
photograph-missing = Photo : prenez-en une, ou choisissez une image.
photograph-unreadable = Cette image est illisible. Reprenez la photo, ou choisissez-en une autre.
photograph-too-large = Cette image dépasse 64 Mo. Reprenez la photo après avoir réglé l’appareil sur un format plus petit.
known = Dimension connue
known-height = Hauteur
known-width = Plus grande largeur
known-width-detail = Sans l’anse.
known-length = Pièce de monnaie ou règle
known-length-detail = Dans l’image, debout ou à côté de la pièce, à la même distance du téléphone que le milieu de la pièce.
size = Dimension
camera-distance = Du téléphone à la pièce
camera-distance-help = Un chiffre approximatif suffit.
sureness-and-handle = { $side ->
    [left] { $sureness } L’anse à gauche n’est pas comptée : donnez ses dimensions ci-dessous.
   *[right] { $sureness } L’anse à droite n’est pas comptée : donnez ses dimensions ci-dessous.
}
stage = Mesurée à quel stade
stage-help = On émaille le biscuit : les autres tailles y sont ramenées.
body = Terre
body-not-said = Non indiquée
add-body-first = Ajoutez d’abord sa terre dans Atelier : son retrait donne la taille au biscuit.
choose-body = Choisissez sa terre : son retrait donne la taille au biscuit.
wall = Épaisseur de la paroi
wall-help = L’épaisseur habituelle ; un point peut avoir la sienne.
more = Pied, limites d’émail, anse, poids
floor = Épaisseur du fond
floor-help = Au milieu.
foot-width = Largeur du talon
foot-width-help = La terre seule, d’un côté. Vide pour un fond plat.
foot-height = Hauteur du talon
bare-foot = Pied sans émail
bare-foot-help = À quelle hauteur, à partir du bas, commence l’émail.
overlap = Chevauchement
overlap-help = Jusqu’où, sous le bord, à l’extérieur, les deux émaux se chevauchent. Vide s’il n’y en a pas.
fill = Niveau de remplissage
fill-help = À combien sous le bord vous la remplissez, pour savoir ce qu’elle contient à l’usage.
handle-length = Longueur de l’anse
handle-girth = Tour de l’anse
handle-girth-help = Entourez-la d’une bande de papier.
extra-area = Surface émaillée en plus
extra-area-help = Bouton, bec et autres.
bisque-weight = Poids du biscuit
bisque-weight-help = Avec son anse. Il révèle une cote mal saisie.
holds = Contient { $volume } à ras bord
holds-in-use = Contient { $volume } à ras bord, { $in-use } remplie à { $depth } sous le bord
zone-area = { $zone ->
    [inside] Intérieur : { $area }, à { $percent } près
    [outside] Extérieur : { $area }, à { $percent } près
   *[whole] Intérieur et extérieur : { $area }, à { $percent } près
}
targets-change = Les cibles de cette forme tirées d’autres formes changent de { $change }.
targets-of-zone-change = { $zone ->
    [inside] Intérieur : les cibles de cette forme tirées d’autres formes changent de { $change }.
    [outside] Extérieur : les cibles de cette forme tirées d’autres formes changent de { $change }.
   *[whole] Intérieur et extérieur ensemble : les cibles de cette forme tirées d’autres formes changent de { $change }.
}
targets-change-by-capacity = Les cibles fondées sur la contenance changent de { $change }.
own-targets-stay = Ses propres pièces témoins gardent leurs grammes. Si vous la faites désormais dans une autre taille, ajoutez une nouvelle forme.
part-area = { $part ->
    [foot] pied sans émail { $area }
    [outside_wall] paroi extérieure { $area }
    [overlap_band] bande de chevauchement { $area }
    [rim] bord { $area }
    [inside_wall] parois intérieures { $area }
   *[inside_floor] fond intérieur { $area }
}
parts = { $parts }.
capacities-differ = { $difference ->
    [more] La contenance mesurée dépasse de { $percent } celle que donnent les points. Cherchez une largeur ou une hauteur mal saisie.
   *[less] La contenance mesurée est inférieure de { $percent } à celle que donnent les points. Cherchez une largeur ou une hauteur mal saisie.
}
drawing = En coupe à gauche, entière à droite : hauteur { $height }, largeur { $width }. Faites glisser un point ou une ligne ; touchez la paroi pour ajouter un point.
drawing-of-photograph = Votre photo avec le contour qui y a été trouvé.
bare-foot-line = L’émail commence à { $height } du bas
overlap-line = Les deux émaux se chevauchent sur { $depth } en haut
no-overlap-line = Pas de chevauchement
fill-line = Remplie à { $depth } sous le bord
point = Point { $number } : hauteur { $height }, largeur { $width }
mark-from = Un bout de la longueur connue
mark-to = L’autre bout

foot-lip-handle = Pied, bord, anse
waxed-foot-help = À quelle hauteur commence l’émail, par exemple au bord de la cire. Vide : { $usual }, comme d’habitude.
handle = Anse
handle-none = Sans anse
handle-code = { $code ->
    [small] Anse de tasse
    [large] Grande anse ou anse de cruche
   *[usual] Anse de mug
}
handle-size = longueur { $long }, tour { $around }
handle-own = Mesure propre
handle-is = Anse : { $handle } sur { $outside } à l’extérieur
