-- A glaze by its dry materials, as JSON; `density_from` is the code of where the powder's density comes from, none where it was typed.
-- `hazards`: pairs of a hazard and `yes` or `no`, where a potter says otherwise than the materials' names do.
ALTER TABLE glaze ADD COLUMN materials TEXT;
ALTER TABLE glaze ADD COLUMN density_from TEXT;
ALTER TABLE glaze ADD COLUMN hazards TEXT;
-- The specific gravity at which it is used, hundred-thousandths.
ALTER TABLE glaze ADD COLUMN working_sg_e5 INTEGER;

-- How wide and how deep a bucket is and what it weighs empty, so that a level and a weight are volumes.
ALTER TABLE bucket ADD COLUMN diameter_um INTEGER;
ALTER TABLE bucket ADD COLUMN depth_um INTEGER;
ALTER TABLE bucket ADD COLUMN empty_mg INTEGER;

-- Which flow cup was used, and whether a check was made by mistake.
ALTER TABLE "check" ADD COLUMN cup TEXT;
ALTER TABLE "check" ADD COLUMN gone INTEGER NOT NULL DEFAULT 0;

-- What was done to a bucket, or seen of it; `what` is its code.
CREATE TABLE bucket_entry (
    id         BLOB PRIMARY KEY,
    bucket     BLOB NOT NULL,
    at         INTEGER NOT NULL,
    what       TEXT NOT NULL,
    volume_ul  INTEGER,
    amount_mg  INTEGER,
    level_um   INTEGER,
    note       TEXT,
    gone       INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX bucket_entry_bucket ON bucket_entry (bucket, at) WHERE NOT gone;
