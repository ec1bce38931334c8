### Dates and times in the potter's words.

## How long ago, within a sentence.
today = today
yesterday = yesterday
later = on a future date
days-ago = { $days ->
    [one] { $days } day ago
   *[other] { $days } days ago
}
just-now = just now
minutes-ago = { $minutes } min ago
hours-ago = { $hours } h ago

## The clock and the date. $hour and $minute: two figures each.
clock = { $hour }:{ $minute }
# $month: as month. $clock: as clock.
date-and-clock = { $day } { $month } { $clock }
date = { $day } { $month } { $year }
# A month within a date, short.
month = { $month ->
    [january] Jan
    [february] Feb
    [march] Mar
    [april] Apr
    [may] May
    [june] Jun
    [july] Jul
    [august] Aug
    [september] Sep
    [october] Oct
    [november] Nov
   *[december] Dec
}
