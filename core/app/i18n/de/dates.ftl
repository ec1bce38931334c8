### Not yet read by a native potter.

today = heute
yesterday = gestern
later = an einem künftigen Tag
days-ago = { $days ->
    [one] vor { $days } Tag
   *[other] vor { $days } Tagen
}
just-now = gerade eben
minutes-ago = vor { $minutes } min
hours-ago = vor { $hours } h

clock = { $hour }:{ $minute }
date-and-clock = { $day }. { $month } { $clock }
date = { $day }. { $month } { $year }
month = { $month ->
    [january] Jan.
    [february] Feb.
    [march] März
    [april] Apr.
    [may] Mai
    [june] Juni
    [july] Juli
    [august] Aug.
    [september] Sept.
    [october] Okt.
    [november] Nov.
   *[december] Dez.
}
