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
matting = Meist der Brand, das Abkühlen oder das Rezept.
speck = Staub, ein Krümel von der Ofenplatte oder Eisen in der Masse.
metal-marking = Das Rezept, nicht die Menge. Nur eine Laborprüfung kann zeigen, ob sich aus der Oberfläche etwas löst.

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
