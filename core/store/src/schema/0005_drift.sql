-- When a potter last answered that coats of a glaze drift off their aims, unix ms.
ALTER TABLE glaze ADD COLUMN drift_answered_at INTEGER;
