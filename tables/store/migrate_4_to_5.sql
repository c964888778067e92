-- In version 5 a practice session can be taken out, and put back; and a session says whether it tells the panel's marks
-- behind each line.
ALTER TABLE practice ADD COLUMN taken_out INTEGER NOT NULL DEFAULT 0;
ALTER TABLE practice ADD COLUMN tells_panel INTEGER NOT NULL DEFAULT 0;

PRAGMA user_version = 5;
