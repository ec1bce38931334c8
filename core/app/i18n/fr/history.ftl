### Not yet read by a native potter.

recent-changes = Modifications récentes
nothing-done = Pas encore de modification.
how-to-read = Les plus récentes d’abord. Vous pouvez annuler et rétablir les modifications faites sur ce téléphone.
how-to-read-one = Les plus récentes d’abord. Si deux téléphones ont enregistré des valeurs différentes, la dernière compte. L’autre reste dans cette liste.
nothing-to-redo = Rien à rétablir.
redone = Rétabli.
kind = { $kind ->
    [glaze] Émail
    [bucket] Seau
    [vessel] Récipient
    [form] Forme
    [body] Terre
    [scale] Balance
    [kiln] Four
    [tile] Plaquette d’essai
    [check] Contrôle
    [bucket_entry] Note du seau
    [control] Pièce témoin
    [coat] Couche
    [firing] Cuisson
    [piece] Pièce
    [placement] Dans le four
    [finding] Résultat
    [photo] Photo
    [scale_test] Test de balance
    [bisque_lot] Biscuit
    [preference] Unités, son et vibration
   *[other] Quelque chose d’une version plus récente
}
kind-and-name = { $kind } : { $name }
title-and-more = { $more ->
    [one] { $title }, et { $more } de plus
   *[other] { $title }, et { $more } de plus
}
not-here = absent de ce téléphone
when-and-where = { $moment }, { $phone }
changed = modifié : { $fields }
undone = annulé
came-back = annulé sur { $undone ->
    [this] ce téléphone
    [this-named] ce téléphone ({ $undone-name })
    [another] un autre téléphone
   *[named] { $undone-name }
}, mais modifié sur { $edited ->
    [this] ce téléphone
    [this-named] ce téléphone ({ $edited-name })
    [another] un autre téléphone
   *[named] { $edited-name }
}, et donc revenu. Annulez encore une fois pour l’enlever
set-anew = { $phone ->
    [this] modifié ensuite sur ce téléphone
    [this-named] modifié ensuite sur ce téléphone ({ $name })
    [another] modifié ensuite sur un autre téléphone
   *[named] modifié ensuite sur { $name }
}
not-shown = caché, car ce dont il dépend a été annulé ou n’est pas arrivé
left-out = laissé de côté car impossible : { $fields }
its-was-undone = { $thing ->
    [glaze] son émail a été annulé : rétablissez-le pour retrouver ceci
    [bucket] son seau a été annulé : rétablissez-le pour retrouver ceci
    [vessel] son récipient a été annulé : rétablissez-le pour retrouver ceci
    [form] sa forme a été annulée : rétablissez-la pour retrouver ceci
    [body] sa terre a été annulée : rétablissez-la pour retrouver ceci
    [scale] sa balance a été annulée : rétablissez-la pour retrouver ceci
    [kiln] son four a été annulé : rétablissez-le pour retrouver ceci
    [firing] sa cuisson a été annulée : rétablissez-la pour retrouver ceci
   *[other] ce dont il dépend a été annulé (« { $thing } ») : rétablissez-le pour retrouver ceci
}
field-and-value = { $field } : { $value }
field = { $field ->
    [name] nom
    [sensitivity] sensibilité à l’épaisseur
    [powder_density] densité de la poudre
    [starting_laydown] grammage de départ
    [drift_answered_at] dérive notée
    [gone] supprimé ou archivé
    [glaze] émail
    [volume] volume
    [mixed_at] date de préparation
    [bucket] seau
    [at] date
    [specific_gravity] densité
    [standard_uncertainty] incertitude de la densité
    [how] méthode
    [vessel] récipient
    [full] poids avec l’émail
    [temperature] température de l’émail
    [flow] temps à la coupe d’écoulement
    [note] remarque
    [empty] poids à vide
    [with_water] poids avec l’eau
    [water_temperature] température de l’eau
    [class] silhouette
    [capacity] capacité
    [inside_area] surface émaillée à l’intérieur
    [outside_area] surface émaillée à l’extérieur
    [profile] profil extérieur
    [traced] incertitude du contour pris sur photo
    [stage] stade de mesure
    [body] terre
    [wall] épaisseur de la paroi
    [floor] épaisseur du fond
    [foot_width] largeur du talon
    [foot_height] hauteur du talon
    [bare_foot] pied sans émail
    [overlap] chevauchement
    [fill] niveau de remplissage
    [handle_length] longueur de l’anse
    [handle_girth] tour de l’anse
    [extra_area] surface émaillée en plus
    [bisque] poids du biscuit
    [to_bisque] retrait au biscuit
    [to_fired] retrait après cuisson d’émail
    [bisque_density] densité du biscuit
    [step] échelon
    [minimum] minimum
    [repeatability] répétabilité
    [piece] pièce
    [form] forme
    [zone] zone
    [scale] balance
    [bare] poids de la pièce nue
    [glazed] poids de la pièce émaillée
    [net] poids humide
    [added] ajouté en retouche
    [rubbed_off] gratté
    [hand] qui a émaillé
    [sg_uncertainty] incertitude de la densité
    [area] surface émaillée
    [aim] cible
    [low] minimum accepté
    [high] maximum accepté
    [source] origine de la cible
    [verdict] verdict
    [laydown] grammage
    [control] pièce témoin
    [code] code sur le pied
    [round] plaques rondes
    [across] largeur des plaques
    [deep] profondeur des plaques
    [shelves] nombre de plaques
    [kiln] four
    [cone] cône visé
    [cone_kind] type de cône
    [state] étape de la cuisson
    [number] numéro de cuisson
    [fires] ce qui est cuit
    [program] programme
    [fired_at] date de cuisson
    [top] température maximale
    [minutes] durée de cuisson en minutes
    [witnesses] cônes témoins
    [checked] liste de vérification
    [firing] cuisson
    [shelf] plaque
    [x] distance de la gauche
    [y] distance de l’avant
    [inside] intérieur
    [outside] extérieur
    [faults] défauts
    [liking] note
    [again] à recuire
    [sha256] fichier d’image
    [width] largeur de l’image
    [height] hauteur de l’image
    [dry] poids sec de la couche
    [dry_uncertainty] incertitude du poids sec
    [dip] durée de trempage ou de versage
    [ask_dip] demander les durées
    [accuracy_class] classe de précision
    [readings] lectures du test
    [known] poids connu
    [shown] poids connu affiché
    [soaking] mode de trempage
    [bone_dry] poids bien sec
    [soaked] poids imbibé
    [suspended] poids dans l’eau
    [coats] nombre de couches
    [mass] poids
    [length] longueurs
    [decimal] signe décimal
    [speak] dire le verdict à voix haute
    [tick] vibrer à chaque touche
    [code_pieces] un code par pièce
    [phone] nom du téléphone
    [materials] matières
    [density_from] origine de la densité de la poudre
    [hazards] dangers corrigés
    [working_sg] densité de travail
    [diameter] diamètre du seau
    [depth] profondeur du seau
    [cup] coupe d’écoulement
    [what] ce qui a été fait
    [amount] quantité
    [level] niveau
   *[other] { $words }
}
value-none = aucun
value-yes = oui
value-no = non
value-list = { $entries ->
    [one] { $entries } valeur
   *[other] { $entries } valeurs
}
value-kept = enregistré
value-code = { $code ->
    [class-cylinder_mug] mug droit
    [class-rounded_mug] mug arrondi
    [class-open_bowl] bol ouvert
    [class-deep_bowl] bol profond
    [class-plate] assiette
    [class-bottle] bouteille
    [class-jar] pot
    [class-vase] vase
    [class-teapot] théière
    [class-planter] pot de fleurs
    [class-tile] carreau
    [stage-bisque] au biscuit
    [stage-thrown] au tournage
    [stage-fired] après cuisson d’émail
    [sensitivity-low] tolérant
    [sensitivity-medium] normal
    [sensitivity-high] sensible
    [how-vessel] récipient
    [how-volume] volume mesuré
    [how-hydrometer] aréomètre
    [how-typed] saisi
    [source-control] pièce témoin
    [source-control_by_area] pièce témoin, par la surface
    [source-control_by_capacity] pièce témoin, par la contenance
    [source-tile] plaquette d’essai
    [source-starting] valeur de départ
    [source-told] tableur
    [verdict-within] bon
    [verdict-short] pas assez
    [verdict-over] trop
    [verdict-cannot_tell] incertain
    [cone_kind-self_supporting] autoporteur
    [cone_kind-large] grand
    [state-loading] enfournement en cours
    [state-fired] cuite, à défourner
    [state-done] défournée
    [fires-glazed] pièces émaillées
    [fires-bisque] biscuit
    [soaking-boil] bouilli
    [soaking-cold] trempé à froid
    [soaking-vacuum] sous vide
    [zone-inside] intérieur
    [zone-outside] extérieur
    [zone-whole] intérieur et extérieur
    [inside-thin] mince
    [inside-right] juste
    [inside-thick] épais
    [outside-thin] mince
    [outside-right] juste
    [outside-thick] épais
    [overlap-thin] mince
    [overlap-right] juste
    [overlap-thick] épais
    [density_from-materials] d’après les matières
    [density_from-own] propre valeur
    [what-water] eau ajoutée
    [what-water_off] eau retirée
    [what-powder] émail sec ajouté
    [what-flocculant] floculant
    [what-deflocculant] défloculant
    [what-sieved] tamisé
    [what-level] niveau
    [what-weighed] pesé avec l’émail
    [what-note] note
   *[other] { $words }
}
