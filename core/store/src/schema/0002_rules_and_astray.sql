-- The rules of the fold changed: every table is made again from the journal, as after every step.

-- The coats of a piece are looked for by the time they were weighed, near that in the piece's own name. Those that were weighed
-- by a phone whose clock was wrong lie elsewhere: they alone are in this index, so that it costs a Keep next to nothing.
CREATE INDEX coat_astray ON coat (piece)
    WHERE substr(hex(piece), 1, 12) NOT BETWEEN printf('%012X', at - 17280000000) AND printf('%012X', at + 86400000);
