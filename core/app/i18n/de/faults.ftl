### Not yet read by a native potter.

crawling = Oft zu dick, oder Staub oder Fett auf der Schrühware.
raw-cracking = Oft zu dick, oder eine Glasur, die beim Trocknen zu stark schwindet.
running = Oft zu dick, vor allem am Rand und wo Glasuren sich überlappen; oder zu heiß.
pooling = Oft blieb innen zu viel stehen: sofort ausgießen und abtropfen lassen.
blistering = Oft zu dick oder zu heiß, oder Gas aus der Masse.
thin = Oft zu wenig Glasur, oder ein Eimer, der verdünnt wurde.
dry = Oft zu wenig Glasur, oder nicht heiß genug.
bare-spot = Oft ein Fingerabdruck, oder eine Stelle, die die Glasur nicht erreicht hat.
crazing = Meist passen Glasur und Masse nicht zusammen, seltener liegt es an der Menge; ein dicker Auftrag zeigt es stärker. Ware mit Haarrissen kann undicht sein und bei kochendem Wasser brechen.
shivering = Glasur und Masse passen nicht zusammen, es liegt nicht an der Menge. Die Splitter sind scharf: So ein Stück nicht benutzen.
dunting = Meist das Abkühlen oder die Masse, nicht die Menge.
pinholing = Meist Gas aus der Masse oder eine kurze Haltezeit, seltener die Menge.
bloating = Die Masse, zu hoch gebrannt; nicht die Menge.
overfired = Der Brand, nicht die Menge.
underfired = Der Brand blieb zu schwach, nicht die Menge. Die Brennkegel ablesen.
stuck = Oft unten zu dick, oder Glasur am Fuß. Abgeplatzte Glasur ist scharf: Augenschutz tragen.
warped = Der Ton, ungleiches Trocknen oder der Brand, nicht die Menge.
cracked = Meist das Trocknen oder eine Naht, nicht die Menge.
plucked = Der Fuß haftete an einer abgenutzten Platte: frisch engobieren. Die Kanten sind scharf.
matting = Meist der Brand, das Abkühlen oder das Rezept.
speck = Staub, ein Krümel von der Ofenplatte oder Eisen in der Masse.
metal-marking = Das Rezept, nicht die Menge. Nur eine Laborprüfung kann zeigen, ob sich aus der Oberfläche etwas löst.
about = { $fault ->
    [crawling] Glasur hat sich von blankem Ton zurückgezogen.
    [pinholing] Kleine Löcher bis auf den Ton.
    [blistering] Blasen, ganz oder geplatzt, mit scharfem Rand.
    [running] Glasur ist die Wand hinabgelaufen.
    [crazing] Ein Netz feiner Risse in der Glasur.
    [delayed_crazing] Dasselbe Netz, Tage oder Monate später.
    [shivering] Glasursplitter springen von Kanten ab.
    [dunting] Der Topf ist beim Abkühlen durchgerissen.
    [underfired] Nicht durchgeschmolzen: stumpf oder pudrig.
    [overfired] Zu hoch gebrannt: Glasur dünn gelaufen oder Ton abgesackt.
    [stuck] Glasur hat den Fuß an die Platte geklebt.
    [warped] Der Topf ist nicht mehr rund oder eben.
    [cracked] Ein Riss in Rand, Boden oder Naht.
    [plucked] Stückchen vom Fuß blieben an der Platte.
    [bloating] Der Ton ist aufgequollen.
    [thin] Dort zu wenig Glasur.
    [dry] Rau am Finger.
    [bare_spot] Eine Stelle ganz ohne Glasur.
    [pooling] Glasur hat sich tief im Boden gesammelt.
    [sagging] Glasur ist als Wulst abgerutscht.
    [pitting] Kleine Mulden, die nicht bis zum Ton reichen.
    [beading] Glasur hat sich zu Tropfen gesammelt.
    [raw_cracking] Der trockene Auftrag riss vor dem Brand.
    [flaking] Der trockene Auftrag ging ab.
    [matting] Matt, wo es glänzen soll.
    [scumming] Ein heller Belag.
    [blushing] Farbe ist von anderswo angeflogen.
    [speck] Punkte von etwas anderem.
   *[metal_marking] Graue Linien von Besteck.
}

cone-as-aimed = Kegel { $cone } { $reading ->
    [standing] steht
    [soft] angeneigt
    [at] gefallen
    [hard] stark gefallen
   *[flat] liegt flach
}: genau getroffen.
cone-near-aim = Kegel { $cone } { $reading ->
    [standing] steht
    [soft] angeneigt
    [at] gefallen
    [hard] stark gefallen
   *[flat] liegt flach
}: nah am Ziel.
cone-over-aim = Kegel { $cone } { $reading ->
    [standing] steht
    [soft] angeneigt
    [at] gefallen
    [hard] stark gefallen
   *[flat] liegt flach
}: über dem Ziel.
cone-under-aim = Kegel { $cone } { $reading ->
    [standing] steht
    [soft] angeneigt
    [at] gefallen
    [hard] stark gefallen
   *[flat] liegt flach
}: unter dem Ziel.
