-- Version 3 moved a panel to a changed routine when both came in one sheet, as a version of its own with the same words.
-- In version 4 a panel stays with the version of the routine that it was first kept with, so these copies go; practice
-- that was done with one of them was done with the same marks. They bore no words of their own: nothing is lost.
CREATE TEMP TABLE wording AS
  SELECT id, version, what || '/' || routine_id || '/' || date || '/' || title AS panel, text IS lag(text) OVER one AS again
  FROM block WHERE what = 'panel' WINDOW one AS (PARTITION BY routine_id, date, title ORDER BY version);
CREATE TEMP TABLE kept AS
  SELECT id, version, again,
         max(CASE WHEN again THEN 0 ELSE id END) OVER (PARTITION BY panel ORDER BY version) AS first_id,
         sum(NOT again) OVER (PARTITION BY panel ORDER BY version) AS number
  FROM wording;
UPDATE practice_line SET block_id = (SELECT first_id FROM kept WHERE id = block_id)
  WHERE block_id IN (SELECT id FROM kept WHERE again);
DELETE FROM block WHERE id IN (SELECT id FROM kept WHERE again);
-- By way of numbers that none has, because no two versions may have the same one even for a moment.
UPDATE block SET version = version + 1000000000 WHERE id IN (SELECT id FROM kept WHERE number <> version);
UPDATE block SET version = (SELECT number FROM kept WHERE kept.id = block.id) WHERE version > 1000000000;
DROP TABLE wording;
DROP TABLE kept;

-- What was damaged on the disk is noticed by this number; database.h says how it is made.
ALTER TABLE block ADD COLUMN checksum INTEGER;
ALTER TABLE edition_file ADD COLUMN checksum INTEGER;
UPDATE block SET checksum = checksum_of(text);
UPDATE edition_file SET checksum = checksum_of(text);

PRAGMA user_version = 4;
