### Not yet read by a native potter.

this-phone = ce téléphone
this-phone-named = ce téléphone ({ $name })
another-phone = un autre téléphone
this-phone-row = Ce téléphone
this-phone-named-row = Ce téléphone ({ $name })
another-phone-row = Un autre téléphone
entries-last = { $entries ->
    [one] { $entries } entrée, la dernière : { $moment }
   *[other] { $entries } entrées, la dernière : { $moment }
}
no-entries = Rien d’enregistré pour l’instant
intro-with-location = Chaque téléphone a tout et fonctionne seul. La synchronisation les met tous à jour.
intro-without-location = Chaque téléphone a tout et fonctionne seul. Pour partager, envoyez une sauvegarde à l’autre téléphone et restaurez-la là-bas.
new-phone-set-up = Les autres voient maintenant ce téléphone comme un nouveau. Tout ce qui a été enregistré avant reste tel quel.
clock-behind = { $days ->
    [one] Certaines entrées ont jusqu’à { $days } jour d’avance sur l’horloge de ce téléphone. Rien n’est perdu. Réglez la date, ici ou sur l’autre téléphone.
   *[other] Certaines entrées ont jusqu’à { $days } jours d’avance sur l’horloge de ce téléphone. Rien n’est perdu. Réglez la date, ici ou sur l’autre téléphone.
}
