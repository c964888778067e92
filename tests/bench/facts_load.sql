-- The tables that make_sheets --tables writes, each clustered as the query reads it. Run in their folder.
-- Marks, values and difficulties in hundredths, weights in tenths, points in ten-thousandths: all exact integers.
CREATE TABLE part(part INTEGER PRIMARY KEY, family INTEGER, flight INTEGER, value INTEGER) STRICT;
CREATE TABLE kind(kind INTEGER PRIMARY KEY, formula INTEGER, base INTEGER) STRICT;
CREATE TABLE element_weight(event INTEGER, kind INTEGER, weight INTEGER, PRIMARY KEY(event, kind)) STRICT, WITHOUT ROWID;
CREATE TABLE aspect_weight(event INTEGER, aspect INTEGER, weight INTEGER, PRIMARY KEY(event, aspect)) STRICT, WITHOUT ROWID;
CREATE TABLE fault(fault INTEGER, size INTEGER, taken INTEGER, cap INTEGER, PRIMARY KEY(fault, size)) STRICT, WITHOUT ROWID;
CREATE TABLE sync(sync INTEGER PRIMARY KEY, points INTEGER) STRICT;
CREATE TABLE penalty(penalty INTEGER PRIMARY KEY, points INTEGER, most INTEGER) STRICT;

CREATE TABLE routine(sheet INTEGER PRIMARY KEY, event INTEGER, marked INTEGER) STRICT;
CREATE TABLE element(sheet INTEGER, element INTEGER, kind INTEGER, expect INTEGER, PRIMARY KEY(sheet, element)) STRICT, WITHOUT ROWID;
CREATE TABLE part_use(sheet INTEGER, element INTEGER, part INTEGER, times INTEGER, PRIMARY KEY(sheet, element, part)) STRICT, WITHOUT ROWID;
CREATE TABLE impression(sheet INTEGER, aspect INTEGER, mark INTEGER, PRIMARY KEY(sheet, aspect)) STRICT, WITHOUT ROWID;
CREATE TABLE run(sheet INTEGER, run INTEGER, says_sync INTEGER, says_penalties INTEGER, PRIMARY KEY(sheet, run)) STRICT, WITHOUT ROWID;
CREATE TABLE run_element(sheet INTEGER, run INTEGER, element INTEGER, base INTEGER, PRIMARY KEY(sheet, element, run)) STRICT, WITHOUT ROWID;
CREATE TABLE fault_use(sheet INTEGER, run INTEGER, element INTEGER, fault INTEGER, size INTEGER, times INTEGER) STRICT;
CREATE TABLE run_aspect(sheet INTEGER, run INTEGER, aspect INTEGER, mark INTEGER, PRIMARY KEY(sheet, aspect, run)) STRICT, WITHOUT ROWID;
CREATE TABLE recorded_element(sheet INTEGER, element INTEGER, base INTEGER, PRIMARY KEY(sheet, element)) STRICT, WITHOUT ROWID;
CREATE TABLE mark(sheet INTEGER, line INTEGER, judge INTEGER, mark INTEGER, PRIMARY KEY(sheet, line, judge)) STRICT, WITHOUT ROWID;
CREATE TABLE sync_use(sheet INTEGER, run INTEGER, sync INTEGER, times INTEGER, PRIMARY KEY(sheet, run, sync)) STRICT, WITHOUT ROWID;
CREATE TABLE penalty_use(sheet INTEGER, run INTEGER, penalty INTEGER, times INTEGER, PRIMARY KEY(sheet, run, penalty)) STRICT, WITHOUT ROWID;

.mode csv
.import part.csv part
.import kind.csv kind
.import element_weight.csv element_weight
.import aspect_weight.csv aspect_weight
.import fault.csv fault
.import sync.csv sync
.import penalty.csv penalty
.import routine.csv routine
.import element.csv element
.import part_use.csv part_use
.import impression.csv impression
.import run.csv run
.import run_element.csv run_element
.import fault_use.csv fault_use
.import run_aspect.csv run_aspect
.import recorded_element.csv recorded_element
.import mark.csv mark
.import sync_use.csv sync_use
.import penalty_use.csv penalty_use
CREATE INDEX fault_use_of ON fault_use(sheet, run, element, fault, size, times);

-- The same marks with the five judges side by side: a layout that suits this one sum, and is measured as well.
CREATE TABLE marks(sheet INTEGER, line INTEGER, a INTEGER, b INTEGER, c INTEGER, d INTEGER, e INTEGER, PRIMARY KEY(sheet, line)) STRICT, WITHOUT ROWID;
INSERT INTO marks SELECT sheet, line, max(iif(judge = 0, mark, NULL)), max(iif(judge = 1, mark, NULL)), max(iif(judge = 2, mark, NULL)),
                         max(iif(judge = 3, mark, NULL)), max(iif(judge = 4, mark, NULL)) FROM mark GROUP BY sheet, line;
ANALYZE;
