-- A reading far off its aim is asked about; whether the potter said that it is right goes with its coat.
ALTER TABLE coat ADD COLUMN confirmed INTEGER NOT NULL DEFAULT 0;
