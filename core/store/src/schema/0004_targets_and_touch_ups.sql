-- How targets of a glaze are chosen, as JSON: pairs of a zone and of how, where a potter chose other than the usual.
ALTER TABLE glaze ADD COLUMN targets TEXT;
-- What came out of a firing that does not count for targets.
ALTER TABLE finding ADD COLUMN left_out INTEGER NOT NULL DEFAULT 0;
-- What was added to a coat after it was weighed, and what was rubbed off it, so that its weight can be corrected beside them.
ALTER TABLE coat ADD COLUMN added_mg INTEGER;
ALTER TABLE coat ADD COLUMN rubbed_off_mg INTEGER;

