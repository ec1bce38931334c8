### Not yet read by a native potter.

inside-looks = { $thickness ->
    [thin] intérieur mince
    [thick] intérieur épais
    [right] intérieur juste
   *[newer] intérieur d’une version plus récente
}
outside-looks = { $thickness ->
    [thin] extérieur mince
    [thick] extérieur épais
    [right] extérieur juste
   *[newer] extérieur d’une version plus récente
}
overlap-looks = { $thickness ->
    [thin] chevauchement mince
    [thick] chevauchement épais
    [right] chevauchement juste
   *[newer] chevauchement d’une version plus récente
}
liked = note { $stars } sur 5
fault-at-place = { $fault } { $place }
fault-counted = { $fault } ({ $pieces })
place = { $place ->
    [rim] au bord
    [floor] au fond à l’intérieur
    [foot] au pied
    [low_inside] en bas à l’intérieur
    [low_outside] en bas à l’extérieur
    [halfway_inside] à mi-hauteur à l’intérieur
    [halfway_outside] à mi-hauteur à l’extérieur
    [high_inside] en haut à l’intérieur
   *[high_outside] en haut à l’extérieur
}
where-is = { $fault ->
    [crawling] Où l’émail s’est-il retiré ?
    [beading] Où l’émail a-t-il perlé ?
    [raw_cracking] Où l’émail cru s’est-il fendu ?
    [flaking] Où l’émail s’est-il décollé ?
    [crazing] Où est le tressaillage ?
    [delayed_crazing] Où est le tressaillage ?
    [shivering] Où l’émail s’est-il écaillé ?
    [dunting] Où est le fêle ?
    [pinholing] Où sont les piqûres ?
    [pitting] Où sont les cratères ?
    [blistering] Où l’émail a-t-il bouillonné ?
    [bloating] Où la terre est-elle boursouflée ?
    [running] Où l’émail a-t-il coulé ?
    [pooling] Où l’émail s’est-il accumulé ?
    [sagging] Où y a-t-il un affaissement ?
    [thin] Où l’émail est-il trop mince ?
    [dry] Où l’émail est-il trop sec ?
    [overfired] Où est-ce surcuit ?
    [underfired] Où est-ce sous-cuit ?
    [stuck] Où est-ce collé ?
    [warped] Où est-ce déformé ?
    [cracked] Où est la fente ?
    [plucked] Où est-ce arraché ?
    [matting] Où l’émail est-il terne ?
    [scumming] Où est l’efflorescence ?
    [blushing] Où l’émail a-t-il rougi ?
    [speck] Où sont les points ?
    [bare_spot] Où l’émail manque-t-il ?
   *[metal_marking] Où sont les marques de métal ?
}
tap-the-place = Touchez l’endroit : l’intérieur à gauche, l’extérieur à droite.
