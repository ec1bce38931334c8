-- The dry glaze in a coat, from its piece weighed again bone dry, and its standard uncertainty; how long it was dipped or poured over.
ALTER TABLE coat ADD COLUMN dry_mg INTEGER;
ALTER TABLE coat ADD COLUMN dry_uncertainty_mg INTEGER;
ALTER TABLE coat ADD COLUMN dip_ms INTEGER;
CREATE INDEX coat_dip ON coat (bucket, at) WHERE dip_ms IS NOT NULL;
-- Whether a phone asks for that as a coat is weighed.
ALTER TABLE preference ADD COLUMN ask_dip INTEGER NOT NULL DEFAULT 0;

-- The accuracy class that is marked on a scale: code.
ALTER TABLE scale ADD COLUMN accuracy_class TEXT;

-- One test of a scale: the same load again and again, and a known weight.
CREATE TABLE scale_test (
    id        BLOB PRIMARY KEY,
    scale     BLOB NOT NULL,
    at        INTEGER NOT NULL,
    readings  TEXT,                             -- JSON array, mg
    known_mg  INTEGER,
    shown_mg  INTEGER,
    gone      INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX scale_test_scale ON scale_test (scale, at);

-- One bisque firing's ware: how much water it drinks.
CREATE TABLE bisque_lot (
    id                    BLOB PRIMARY KEY,
    name                  TEXT NOT NULL,
    body                  BLOB,
    cone                  TEXT,
    at                    INTEGER NOT NULL,     -- when it was fired
    soaking               TEXT NOT NULL,        -- code
    bone_dry_mg           INTEGER NOT NULL,
    soaked_mg             INTEGER NOT NULL,
    suspended_mg          INTEGER,              -- hanging in water
    water_temperature_mc  INTEGER NOT NULL,
    gone                  INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

-- How many coats a tile carries, and the wet weight that was planned for it.
ALTER TABLE tile ADD COLUMN coats INTEGER;
ALTER TABLE tile ADD COLUMN aim_mg INTEGER;
