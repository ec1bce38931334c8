### Not yet read by a native potter.

and = { $before } y { $last }

size-impossible = medida imposible
inside-area = interior { $area }

bucket-checked = { $bucket }, densidad { $sg }, comprobado { $when }
bucket-not-checked = { $bucket }, densidad sin comprobar

scale = hasta { $capacity }, división { $step }
