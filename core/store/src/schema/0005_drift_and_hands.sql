-- When a potter last answered that coats of a glaze drift off their aims, unix ms.
ALTER TABLE glaze ADD COLUMN drift_answered_at INTEGER;
-- Who glazed, where a studio writes that down, and who glazes at a phone now.
ALTER TABLE coat ADD COLUMN hand TEXT;
ALTER TABLE preference ADD COLUMN hand TEXT;
