### Not yet read by a native potter.

today = hoy
yesterday = ayer
later = en una fecha futura
days-ago = { $days ->
    [one] hace { $days } día
   *[other] hace { $days } días
}
just-now = ahora mismo
minutes-ago = hace { $minutes } min
hours-ago = hace { $hours } h

clock = { $hour }:{ $minute }
date-and-clock = { $day } { $month } { $clock }
date = { $day } { $month } { $year }
month = { $month ->
    [january] ene
    [february] feb
    [march] mar
    [april] abr
    [may] may
    [june] jun
    [july] jul
    [august] ago
    [september] sept
    [october] oct
    [november] nov
   *[december] dic
}
