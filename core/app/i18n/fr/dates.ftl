### Not yet read by a native potter.

today = aujourd’hui
yesterday = hier
later = à une date à venir
days-ago = { $days ->
    [one] il y a { $days } jour
   *[other] il y a { $days } jours
}
just-now = à l’instant
minutes-ago = il y a { $minutes } min
hours-ago = il y a { $hours } h
clock = { $hour }:{ $minute }
date-and-clock = { $day } { $month } { $clock }
date = { $day } { $month } { $year }
month = { $month ->
    [january] janv.
    [february] févr.
    [march] mars
    [april] avr.
    [may] mai
    [june] juin
    [july] juil.
    [august] août
    [september] sept.
    [october] oct.
    [november] nov.
   *[december] déc.
}
