### Not yet read by a native potter.

save = Enregistrer
name = Nom
glaze = Émail
form = Forme
dipped-at = Densité au trempage
laydown-is = Grammage : { $laydown }.
add-first = { $kind ->
    [form] Ajoutez d’abord une forme.
    [kiln] Ajoutez d’abord un four.
   *[glaze] Ajoutez d’abord un émail.
}
saved = Enregistré.
is-saved = « { $name } » : enregistré.
nothing-to-save = Il n’y a rien à enregistrer ici.
write-here = { $field } : à écrire ici.
type-here = { $field } : à saisir ici.
choose-here = { $field } : à choisir ici.
fill-in = { $field } : à remplir.
choose-from-list = { $field } : à choisir dans la liste.
too-long = Trop long. Au plus { $most } caractères.
too-short = Trop court. Au moins { $fewest } caractères.
no-day = Choisissez un jour, au plus un an à l’avance.
not-on-this-phone = Absent de ce téléphone
secret-saved = Enregistré sur ce téléphone. Écrivez pour le remplacer.
