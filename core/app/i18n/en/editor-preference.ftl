### The preferences of this phone: units, decimal mark, sound and touch.

title = Units, sound and touch
mass = Weights
volume = Volumes
area = Areas
length = Lengths
decimal = Decimal mark
speak = Speak the verdict
tick = Tick on every key
code-pieces = Code each piece
# A run: equal pieces that go through the studio together and are counted, not told apart.
code-pieces-help = Mark it on the foot, to know the piece after the firing. Off: equal pieces are counted together as a run.
phone = Phone name
phone-hint = Tablet by the sink
hand = Who glazes
hand-hint = Leave empty if it does not matter
hand-help = This name goes on each new coat until you change it. Findings then say how alike each hand's coats are.
ask-dip = Ask for dip times
ask-dip-help = How long each coat was dipped or poured, on Weigh. After four coats of a bucket laydown hints how long.
