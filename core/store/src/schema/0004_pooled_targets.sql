-- How targets of a glaze are chosen, as JSON: pairs of a zone and of how, where a potter chose other than the usual.
ALTER TABLE glaze ADD COLUMN targets TEXT;
-- What came out of a firing that does not count for targets.
ALTER TABLE finding ADD COLUMN left_out INTEGER NOT NULL DEFAULT 0;
