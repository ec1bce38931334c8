### Not yet read by a native potter.

nothing = Rien de nouveau sur vos autres téléphones.
news = { $news ->
    [one] { $news } chose archivée, supprimée ou renommée sur un autre téléphone
   *[other] { $news } choses archivées, supprimées ou renommées sur d’autres téléphones
}
disagreements = { $clashes ->
    [one] Deux téléphones se contredisent sur { $clashes } point
   *[other] Deux téléphones se contredisent sur { $clashes } points
}
archived = { $thing } : archivé sur { $phone }. Vous le trouvez sous « Archives ».
removed = { $thing } : supprimé sur { $phone }.
renamed = { $thing } : s’appelait { $before }, renommé sur { $phone }.
ours = Ce téléphone : { $value }
theirs = { $phone } : { $value }
both-in-name = Le nom devient { $names }.
both-in-note = Ce qui compte reste, et la remarque dit l’autre.
not-both = On ne peut pas garder les deux ici. Choisissez.
other-phone-said = L’autre téléphone disait : { $value }.
settled = Réglé.
