### The preferences of this phone: units, decimal mark, sound and touch.

title = Units, sound and touch
mass = Weights in
volume = Volumes in
area = Areas in
length = Lengths in
decimal = Decimal mark
speak = Speak the verdict
tick = Tick at every key
code-pieces = A code for each piece
# A run: equal pieces that go through the studio together and are counted, not told apart.
code-pieces-help = To mark on the foot, so that you know the piece after the firing. Off: equal pieces are counted as a run.
phone = Name of this phone
phone-hint = Tablet by the sink
