-- When a photo was put aside; one that was not is NULL. It can be brought back until it is removed for good.
ALTER TABLE photo ADD COLUMN binned INTEGER;
