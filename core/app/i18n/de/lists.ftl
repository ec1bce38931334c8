### Not yet read by a native potter.

and = { $before } und { $last }

size-impossible = Maß unmöglich
inside-area = innen { $area }

bucket-checked = { $bucket }, Dichte { $sg }, geprüft { $when }
bucket-not-checked = { $bucket }, Dichte nicht geprüft

scale = bis { $capacity }, Teilung { $step }
