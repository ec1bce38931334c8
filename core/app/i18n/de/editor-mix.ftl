### Not yet read by a native potter.

title = { $glaze } mischen
save = Als neuen Eimer speichern
by = Wie viel
by-powder = Nach trockener Glasur
by-powder-detail = Ohne Zusätze: Sie kommen obendrauf
by-volume = Nach Volumen
powder = Trockene Glasur
volume = Glasur gewünscht
sg = Dichte gewünscht
scale = Waage
lot-of = Ansatz vom { $day }
water = Wasser
weigh = { $name }: { $weight }
weighed = { $done } von { $all } gewogen.
rounded = { $name }: Diese Waage zeigt { $weight } statt { $exact }, { $off } daneben. Eine feinere Waage nehmen oder mehr mischen.
over-capacity = { $name }: { $weight } ist mehr, als diese Waage wiegen kann. In Teilen wiegen.
makes = Ergibt { $volume } mit Dichte { $sg }, darin { $powder } trockene Glasur.
by-weight = Jedes Pulver wiegen: Ein Becher lockeres Pulver kann ein Fünftel von dem sein, was er an dichtem fasst.
