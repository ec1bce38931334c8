-- How a test tile came out of the kiln: code. Tiles of earlier versions were never asked, and have none.
ALTER TABLE tile ADD COLUMN came_out TEXT;

-- The newest control pieces are looked for form by form, so that those of one form do not crowd out another's.
DROP INDEX coat_control;
CREATE INDEX coat_control ON coat (glaze, zone, form, at) WHERE control;
-- A reading far off its aim is asked about; whether the potter said that it is right goes with its coat.
ALTER TABLE coat ADD COLUMN confirmed INTEGER NOT NULL DEFAULT 0;
