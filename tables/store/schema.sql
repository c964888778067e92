-- The season file as of version 3. A new file gets book.sql and the migrations to later versions after this, an older
-- file those that it has not had.
-- The CSV files of a set are kept cell by cell with every byte around them, so that an export is the import again.
PRAGMA application_id = 1279554156;  -- 0x4C44726C, "LDrl"
PRAGMA user_version = 3;

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

-- What was done to a set, in order. Rows are only ever added: an undo is one more row that names its target.
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
