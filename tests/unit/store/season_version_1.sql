-- A season file as version 1 made it: kept to try the way from there to the present version. Never changed.
PRAGMA application_id = 1279554156;
PRAGMA user_version = 1;

CREATE TABLE value_set (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE CHECK (name <> '')
) STRICT;

CREATE TABLE table_file (
  id INTEGER PRIMARY KEY,
  set_id INTEGER NOT NULL REFERENCES value_set (id) ON DELETE CASCADE,
  position INTEGER NOT NULL,
  file TEXT NOT NULL,       -- parts.csv
  before TEXT NOT NULL,     -- the bytes before the header: a byte order mark, or nothing
  separator TEXT NOT NULL,  -- comma, semicolon or tab
  UNIQUE (set_id, file),
  UNIQUE (set_id, position)
) STRICT;

CREATE TABLE table_row (
  file_id INTEGER NOT NULL REFERENCES table_file (id) ON DELETE CASCADE,
  row INTEGER NOT NULL CHECK (row >= 0),  -- 0 is the header
  ending TEXT NOT NULL,                   -- the line ending; '' for a last line without one
  PRIMARY KEY (file_id, row)
) STRICT, WITHOUT ROWID;

CREATE TABLE cell (
  file_id INTEGER NOT NULL,
  row INTEGER NOT NULL,
  column INTEGER NOT NULL CHECK (column >= 0),
  raw TEXT NOT NULL,  -- the bytes between two separators, with their quotation marks
  PRIMARY KEY (file_id, row, column),
  FOREIGN KEY (file_id, row) REFERENCES table_row (file_id, row) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE change (
  number INTEGER PRIMARY KEY AUTOINCREMENT,
  set_id INTEGER NOT NULL REFERENCES value_set (id) ON DELETE CASCADE,
  at TEXT NOT NULL,  -- UTC
  did TEXT NOT NULL CHECK (did IN ('import', 'edit')),
  why TEXT NOT NULL,
  file TEXT,
  row INTEGER,
  column INTEGER,
  row_key TEXT,
  column_name TEXT,
  before TEXT,
  after TEXT,
  before_raw TEXT,
  after_raw TEXT,
  undone INTEGER NOT NULL DEFAULT 0 CHECK (undone IN (0, 1))
) STRICT;
CREATE INDEX change_of_set ON change (set_id, number);
