### Not yet read by a native potter.

liked-on-average = note moyenne { $mean } sur 5
coat = { $coat } : { $weight }, { $laydown }
program = Programme : { $program }
top = Température maximale { $degrees }
took = durée { $time }
page-not-painted = Une page n’a pas pu être dessinée. Rouvrez la planche-contact.
