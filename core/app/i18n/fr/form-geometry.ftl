### Not yet read by a native potter.

newer-profile = Un profil de cet atelier vient d’une version plus récente. Mettez laydown à jour, puis rouvrez-le.
weight-off-at-point = { $weight ->
    [heavier] La pièce pesée est { $percent } % plus lourde que son dessin. Vérifiez le point { $point } : sans lui, tout concorde.
   *[lighter] La pièce pesée est { $percent } % plus légère que son dessin. Vérifiez le point { $point } : sans lui, tout concorde.
}
weight-off = { $weight ->
    [heavier] La pièce pesée est { $percent } % plus lourde que son dessin. Vérifiez la paroi, le fond, l’unité, et le stade où elle a été mesurée.
   *[lighter] La pièce pesée est { $percent } % plus légère que son dessin. Vérifiez la paroi, le fond, l’unité, et le stade où elle a été mesurée.
}
overlap = Les deux émaux se chevauchent sur { $band } en haut : trop épais là, ils se retirent ou coulent. Gardez la seconde couche mince sur cette bande.
wide-floor = Le fond est large : l’émail s’y accumule. Videz aussitôt et laissez égoutter à l’envers.
