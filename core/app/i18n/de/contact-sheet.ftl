### Not yet read by a native potter.

liked-on-average = im Schnitt bewertet mit { $mean } von 5
coat = { $coat }: { $weight }, { $laydown }
program = Programm: { $program }
top = Höchste Temperatur { $degrees }
took = Dauer { $time }
page-not-painted = Eine Seite ließ sich nicht zeichnen. Den Kontaktbogen neu öffnen.
