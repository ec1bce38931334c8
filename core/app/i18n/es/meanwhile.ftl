### Not yet read by a native potter.

nothing = Nada nuevo de los otros teléfonos.
news = { $news ->
    [one] { $news } cosa se archivó, quitó o renombró en otro teléfono
   *[other] { $news } cosas se archivaron, quitaron o renombraron en otros teléfonos
}
disagreements = { $clashes ->
    [one] Dos teléfonos no coinciden en { $clashes } cosa
   *[other] Dos teléfonos no coinciden en { $clashes } cosas
}
archived = { $thing }: archivado en { $phone }. Está en “Archivado”.
removed = { $thing }: quitado en { $phone }.
renamed = { $thing }: se llamaba { $before }, renombrado en { $phone }.
ours = Este teléfono: { $value }
theirs = { $phone }: { $value }
both-in-name = El nombre pasa a ser { $names }.
both-in-note = Lo que cuenta se queda y la nota dice lo otro.
not-both = Aquí no se pueden guardar ambos. Elegir uno.
other-phone-said = El otro teléfono decía: { $value }.
settled = Resuelto.
