-- What was added to a coat after it was weighed, and what was rubbed off it, so that its weight can be corrected beside them.
ALTER TABLE coat ADD COLUMN added_mg INTEGER;
ALTER TABLE coat ADD COLUMN rubbed_off_mg INTEGER;
