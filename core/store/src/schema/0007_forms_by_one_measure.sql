-- A form may be known by one measure: its width or height as bisque, or the wet clay it is thrown of.
ALTER TABLE form ADD COLUMN width_um INTEGER;
ALTER TABLE form ADD COLUMN height_um INTEGER;
ALTER TABLE form ADD COLUMN clay_mg INTEGER;
