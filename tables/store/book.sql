-- What version 3 of the season file has beside value sets: the book, and practice. A new file gets it after schema.sql,
-- an older one by migration.

-- ---- the book: what the club swam, and how it was marked ----

-- Value sets as they were when something was swum.
CREATE TABLE edition (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL,
  kept_at TEXT NOT NULL  -- UTC
) STRICT;
CREATE INDEX edition_by_name ON edition (name);
CREATE TABLE edition_file (
  edition_id INTEGER NOT NULL REFERENCES edition (id) ON DELETE CASCADE,
  position INTEGER NOT NULL,
  file TEXT NOT NULL,
  text TEXT NOT NULL,
  PRIMARY KEY (edition_id, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE routine (
  id INTEGER PRIMARY KEY,
  title TEXT NOT NULL,
  event TEXT NOT NULL,
  UNIQUE (title, event)
) STRICT;

-- Routines, runs and panels as sheet text. Rows are only ever added: another text is another version.
CREATE TABLE block (
  id INTEGER PRIMARY KEY,
  routine_id INTEGER NOT NULL REFERENCES routine (id),
  what TEXT NOT NULL CHECK (what = 'routine' OR what = 'run' OR what = 'panel'),  -- faster than IN (...)
  date TEXT NOT NULL,
  title TEXT NOT NULL,
  version INTEGER NOT NULL CHECK (version >= 1),
  of_routine INTEGER REFERENCES block (id),  -- the version of the routine that was swum
  edition_id INTEGER NOT NULL REFERENCES edition (id),
  kept_at TEXT NOT NULL,  -- UTC
  text TEXT NOT NULL,
  UNIQUE (routine_id, title, what, date, version),
  CHECK ((what = 'routine') = (of_routine IS NULL)),
  CHECK ((what = 'routine') = (date = ''))
) STRICT;
CREATE INDEX block_of_routine ON block (of_routine) WHERE of_routine IS NOT NULL;

-- ---- practice: what officials in training marked ----

CREATE TABLE practice (
  id INTEGER PRIMARY KEY,
  trainee TEXT NOT NULL CHECK (trainee <> ''),
  started_at TEXT NOT NULL,  -- UTC
  finished_at TEXT,          -- UTC; none: to be resumed
  seconds_each INTEGER CHECK (seconds_each > 0)
) STRICT;
CREATE INDEX practice_by_trainee ON practice (trainee, id);
CREATE TABLE practice_line (
  practice_id INTEGER NOT NULL REFERENCES practice (id) ON DELETE CASCADE,
  position INTEGER NOT NULL,
  block_id INTEGER NOT NULL REFERENCES block (id),  -- the panel
  line TEXT NOT NULL,                               -- the element's number, or the aspect
  did TEXT NOT NULL DEFAULT 'open' CHECK (did IN ('open', 'marked', 'skipped')),
  mark TEXT,                                        -- exact decimal
  late INTEGER NOT NULL DEFAULT 0,
  PRIMARY KEY (practice_id, position),
  CHECK ((did = 'marked') = (mark IS NOT NULL))
) STRICT, WITHOUT ROWID;
