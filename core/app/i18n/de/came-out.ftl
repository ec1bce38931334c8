### Not yet read by a native potter.

inside-looks = { $thickness ->
    [thin] innen dünn
    [thick] innen dick
    [right] innen richtig
   *[newer] innen aus einer neueren Version
}
outside-looks = { $thickness ->
    [thin] außen dünn
    [thick] außen dick
    [right] außen richtig
   *[newer] außen aus einer neueren Version
}
overlap-looks = { $thickness ->
    [thin] Überlappung dünn
    [thick] Überlappung dick
    [right] Überlappung richtig
   *[newer] Überlappung aus einer neueren Version
}
liked = bewertet mit { $stars } von 5
fault-at-place = { $fault } { $place }
fault-counted = { $fault } ({ $pieces })
place = { $place ->
    [rim] am Rand
    [floor] innen am Boden
    [foot] am Fuß
    [low_inside] innen unten
    [low_outside] außen unten
    [halfway_inside] innen auf halber Höhe
    [halfway_outside] außen auf halber Höhe
    [high_inside] innen oben
   *[high_outside] außen oben
}
where-is = { $fault ->
    [crawling] Wo ist die Glasur abgerollt?
    [beading] Wo ist die Glasur abgeperlt?
    [raw_cracking] Wo sind Trockenrisse?
    [flaking] Wo ist die Glasur abgeblättert?
    [crazing] Wo sind Haarrisse?
    [delayed_crazing] Wo sind Haarrisse?
    [shivering] Wo ist die Glasur abgeplatzt?
    [dunting] Wo ist das Stück gerissen?
    [pinholing] Wo sind die Nadelstiche?
    [pitting] Wo sind die Grübchen?
    [blistering] Wo sind die Blasen?
    [bloating] Wo ist der Scherben aufgebläht?
    [running] Wo ist die Glasur abgelaufen?
    [pooling] Wo ist die Glasur zusammengelaufen?
    [sagging] Wo sind die Wülste?
    [thin] Wo sind die dünnen Stellen?
    [dry] Wo ist die Glasur zu trocken?
    [overfired] Wo ist die Glasur überbrannt?
    [underfired] Wo ist es zu schwach gebrannt?
    [stuck] Wo klebt es?
    [warped] Wo ist es verzogen?
    [cracked] Wo ist der Riss?
    [plucked] Wo ist es ausgebrochen?
    [matting] Wo ist die Glasur matt?
    [scumming] Wo ist die Ausblühung?
    [blushing] Wo ist der Anflug?
    [speck] Wo sind die Flecken?
    [bare_spot] Wo sind die kahlen Stellen?
   *[metal_marking] Wo sind die Besteckspuren?
}
tap-the-place = Die Stelle antippen: links innen, rechts außen.
