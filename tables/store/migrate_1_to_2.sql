-- Version 1 marked an undone edit with a flag and forgot when it was undone and brought back; it could not take back
-- the replacement of a set. Version 2 keeps every undo and redo as a row of its own.
ALTER TABLE change RENAME TO change_1;
DROP INDEX change_of_set;

CREATE TABLE change (
  number INTEGER PRIMARY KEY AUTOINCREMENT,
  set_id INTEGER NOT NULL REFERENCES value_set (id) ON DELETE CASCADE,
  at TEXT NOT NULL,  -- UTC
  did TEXT NOT NULL CHECK (did IN ('import', 'replace', 'edit', 'undo', 'redo')),
  target INTEGER REFERENCES change (number) ON DELETE CASCADE,
  why TEXT NOT NULL,
  file TEXT,
  row INTEGER,
  column INTEGER,
  row_key TEXT,
  column_name TEXT,
  before TEXT,
  after TEXT,
  before_raw TEXT,       -- the bytes of the cell
  after_raw TEXT,
  CHECK ((did IN ('undo', 'redo')) = (target IS NOT NULL)),
  CHECK ((did = 'edit') = (before_raw IS NOT NULL AND after_raw IS NOT NULL))
) STRICT;
INSERT INTO change
  SELECT number, set_id, at, did, NULL, why, file, row, column, row_key, column_name, before, after, before_raw,
         after_raw
  FROM change_1 ORDER BY number;
-- The latest edit was undone first. When that was is not known: the time is that of this step, and `why` says so.
INSERT INTO change (set_id, at, did, target, why)
  SELECT set_id, strftime('%Y-%m-%dT%H:%M:%SZ', 'now'), 'undo', number,
         'undone before this season file was brought to version 2'
  FROM change_1 WHERE undone = 1 ORDER BY number DESC;
DROP TABLE change_1;
CREATE INDEX change_of_set ON change (set_id, number);
CREATE INDEX change_by_target ON change (target, number) WHERE target IS NOT NULL;

-- The whole files that a `replace` put aside; undoing it exchanges them with those in force.
CREATE TABLE file_aside (
  change INTEGER NOT NULL REFERENCES change (number) ON DELETE CASCADE,
  position INTEGER NOT NULL,
  file TEXT NOT NULL,
  text TEXT NOT NULL,
  PRIMARY KEY (change, position)
) STRICT, WITHOUT ROWID;

-- Edits and replacements with whether they are undone: the last undo or redo of each decides.
CREATE VIEW step AS
  SELECT c.*, (SELECT u.did FROM change u WHERE u.target = c.number ORDER BY u.number DESC LIMIT 1) IS 'undo' AS undone,
         (SELECT max(u.number) FROM change u WHERE u.target = c.number) AS last_touched
  FROM change c WHERE c.did IN ('edit', 'replace');

PRAGMA user_version = 2;
