-- In version 5 a practice session can be left out, and count again; and it says whether it tells the panel's marks
-- behind each line.
ALTER TABLE practice ADD COLUMN left_out INTEGER NOT NULL DEFAULT 0;
ALTER TABLE practice ADD COLUMN tells_panel INTEGER NOT NULL DEFAULT 0;

PRAGMA user_version = 5;
