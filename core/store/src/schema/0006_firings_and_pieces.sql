-- A firing is known by a number, and by a name if it was given one; `fires` is the code of what goes through it, none for glazed ware.
ALTER TABLE firing ADD COLUMN number INTEGER;
ALTER TABLE firing ADD COLUMN name TEXT;
ALTER TABLE firing ADD COLUMN fires TEXT;

-- A piece that went into a firing without having been weighed; its id is that of the piece.
CREATE TABLE piece (
    id    BLOB PRIMARY KEY,
    name  TEXT NOT NULL,
    code  TEXT,
    form  BLOB,
    at    INTEGER NOT NULL,
    gone  INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX piece_at ON piece (at) WHERE NOT gone;
