A list of marks for a panel that the book has already corrects it: what the list does not speak of stays. What a list cannot say is
refused where it would change the score, and anything else that is not read is named.

=== file low-water.sheet
# Everything in it is invented.
routine  "Low Water"
event    duet-free
values   kingfisher-2026

element 1 lift "Heron"
  parts  stand-feet, rise-high, half-turn
  expect 7.50
element 2 hybrid "Undertow"
  parts  thrust-high, spin-720, split-hold x2, join-foot
  expect 7.50

impression choreography 7.50, performance 7.75, transitions 7.25

panel 2026-05-09 "Tarn Open"
  element 1: 7.5 7.75 7.50 7.75 7.50
  element 2 base: 7.00 7.25 7.25 7.50 7.25  # the spin stopped early
  choreography: 7.50 7.75 7.50 7.25 7.50
  performance: 7.75 8.00 7.50 7.75 7.75
  transitions: 7.00 7.25 7.25 7.50 7.00
  sync: small x4
  penalty: overtime
  result: 90.9833
=== file one-mark.csv
date;meet;routine;element;judge;mark
2026-05-09;Tarn Open;Low Water;Element 2;3;7,75
=== file again.csv
date;meet;routine;element;judge;mark
2026-05-09;Tarn Open;Low Water;1;1;7.50
2026-05-09;Tarn Open;Low Water;Choreography;2;8,00
=== run landdrill book add club.season low-water.sheet >/dev/null 2>&1; landdrill book score club.season; landdrill book add club.season one-mark.csv; landdrill book score club.season
=== output
routine    date        panel      estimate  recorded  difference  announced
Low Water  2026-05-09  Tarn Open  122.2500   94.4167    -27.8333    90.9833
Low Water, duet-free
                                version  value set
  panel  2026-05-09  Tarn Open  2        kingfisher-2026  new version
routine    date        panel      estimate  recorded  difference  announced
Low Water  2026-05-09  Tarn Open  122.2500   94.4584    -27.7916    90.9833
=== errors
landdrill: 0 added, 1 new version, 0 already there
landdrill: the panel of 2026-05-09 "Tarn Open" of Low Water was kept before: 1 of its 25 marks is another now; the rest stays as it was
=== exit 0
=== run landdrill book export club.season | grep -A9 panel
=== output
panel 2026-05-09 "Tarn Open"
  element 1: 7.5 7.75 7.50 7.75 7.50
  element 2 base: 7.00 7.25 7.75 7.50 7.25  # the spin stopped early
  choreography: 7.50 7.75 7.50 7.25 7.50
  performance: 7.75 8.00 7.50 7.75 7.75
  transitions: 7.00 7.25 7.25 7.50 7.00
  sync: small x4
  penalty: overtime
  result: 90.9833
=== exit 0
=== run landdrill book add club.season one-mark.csv
=== output
Low Water, duet-free
                                version  value set
  panel  2026-05-09  Tarn Open  2        kingfisher-2026  already there
=== errors
landdrill: 0 added, 0 new versions, 1 already there
=== exit 0
=== run sed 's/7,75/7,00/' one-mark.csv > other.csv; landdrill book add club.season other.csv again.csv; landdrill book export club.season | grep -A3 panel
=== output
Low Water, duet-free
                                version  value set
  panel  2026-05-09  Tarn Open  3        kingfisher-2026  new version
  panel  2026-05-09  Tarn Open  4        kingfisher-2026  new version
panel 2026-05-09 "Tarn Open"
  element 1: 7.5 7.75 7.50 7.75 7.50
  element 2 base: 7.00 7.25 7.00 7.50 7.25  # the spin stopped early
  choreography: 7.50 8.00 7.50 7.25 7.50
=== errors
landdrill: 0 added, 2 new versions, 0 already there
landdrill: the panel of 2026-05-09 "Tarn Open" of Low Water was kept before: 1 of its 25 marks is another now; the rest stays as it was
landdrill: the panel of 2026-05-09 "Tarn Open" of Low Water was kept before: 1 of its 25 marks is another now; the rest stays as it was
=== exit 0
=== run sed 's/$/;/; 1s/;$/;base/' one-mark.csv > base.csv; landdrill book add club.season base.csv; landdrill book export club.season | grep -A2 panel
=== output
Low Water, duet-free
                                version  value set
  panel  2026-05-09  Tarn Open  5        kingfisher-2026  new version
panel 2026-05-09 "Tarn Open"
  element 1: 7.5 7.75 7.50 7.75 7.50
  element 2: 7.00 7.25 7.75 7.50 7.25  # the spin stopped early
=== errors
landdrill: 0 added, 1 new version, 0 already there
landdrill: the panel of 2026-05-09 "Tarn Open" of Low Water was kept before: 1 of its 25 marks is another now, 1 element has the base mark no longer, as the list's column for it says; the rest stays as it was
=== exit 0
=== run sed 's/$/;overtime;good/; 1s/overtime;good/Penalty;Remark/' one-mark.csv > penalty.csv; landdrill book add club.season penalty.csv
=== errors
penalty.csv:1:46: warning: found a column "Remark", which is not read; expected date, meet, routine, event, element, judge, mark or base [unread-column]
  date;meet;routine;element;judge;mark;Penalty;Remark
                                               ^~~~~~
  hint: the nearest is mark
penalty.csv:2:49: error: found "overtime" in the column "Penalty", which no list has; expected nothing there [not-in-lists]
  2026-05-09;Tarn Open;Low Water;Element 2;3;7,75;overtime;good
                                                  ^~~~~~~~
  hint: sync errors, penalties and results belong in the panel of a sheet: `landdrill help book add`
landdrill: nothing was added to the book
=== exit 1
=== run sed 's/overtime/-/' penalty.csv > remark.csv; landdrill book add club.season remark.csv
=== output
Low Water, duet-free
                                version  value set
  panel  2026-05-09  Tarn Open  5        kingfisher-2026  already there
=== errors
remark.csv:1:46: warning: found a column "Remark", which is not read; expected date, meet, routine, event, element, judge, mark or base [unread-column]
  date;meet;routine;element;judge;mark;Penalty;Remark
                                               ^~~~~~
  hint: the nearest is mark
landdrill: 0 added, 0 new versions, 1 already there
=== exit 0
=== run head -1 one-mark.csv > heading.csv; landdrill book add club.season heading.csv
=== errors
heading.csv: error: found a heading and nothing below it; expected one row a mark [no-rows]
landdrill: nothing was added to the book
=== exit 1
=== run printf '2026-05-09;Tarn Open;Low Water;2;4;' | cat one-mark.csv - > half.csv; landdrill book add club.season half.csv
=== errors
half.csv:3:1: error: found a row that ends before its mark; expected 6 cells, as the heading has [cut-off]
  2026-05-09;Tarn Open;Low Water;2;4;
  ^~~~~~~~~~
  hint: write - where there is no mark
landdrill: nothing was added to the book
=== exit 1
=== run cp one-mark.csv one-mark.txt; landdrill book add club.season one-mark.txt
=== errors
one-mark.txt: error: found a list of marks; expected a sheet [not-a-sheet]
  hint: `landdrill book add BOOK FILE.csv` keeps such a list; its name has to end in .csv
landdrill: nothing was added to the book
=== exit 1
=== run landdrill book add club.season - < one-mark.csv
=== errors
standard input: error: found a list of marks; expected a sheet [not-a-sheet]
  hint: `landdrill book add BOOK FILE.csv` keeps such a list; its name has to end in .csv
landdrill: nothing was added to the book
=== exit 1
=== run landdrill book lessons club.season --sheet one-mark.csv
=== errors
one-mark.csv: error: found a list of marks; expected a sheet [not-a-sheet]
  hint: `landdrill book add BOOK FILE.csv` keeps such a list; its name has to end in .csv
=== exit 1
=== run sed 's/;3;/;6;/' one-mark.csv > six.csv; landdrill book add club.season six.csv
=== errors
six.csv:2:32: error: found 6 marks; expected 5, one for each judge of execution [wrong-judges]
  2026-05-09;Tarn Open;Low Water;Element 2;6;7,75
                                 ^~~~~~~~~
landdrill: nothing was added to the book
=== exit 1
=== run landdrill book add clbu.season one-mark.csv; ls *.season
=== output
club.season
=== errors
landdrill: clbu.season: there is no such file
  hint: import a value set or add a sheet to make one
=== exit 0
=== run rm -f club.season; landdrill book add club.season low-water.sheet >/dev/null 2>&1; landdrill book add club.season one-mark.csv >/dev/null 2>&1; landdrill book add club.season low-water.sheet; landdrill book add club.season low-water.sheet 2>&1 | tail -1; landdrill book add club.season one-mark.csv 2>&1 | tail -1
=== output
Low Water, duet-free
                                  version  value set
  routine                         1        kingfisher-2026  already there
  panel    2026-05-09  Tarn Open  3        kingfisher-2026  new version
landdrill: 0 added, 0 new versions, 2 already there
landdrill: the panel of 2026-05-09 "Tarn Open" of Low Water was kept before: 1 of its 25 marks is another now; the rest stays as it was
=== errors
landdrill: 0 added, 1 new version, 1 already there
landdrill: the panel of 2026-05-09 "Tarn Open" of Low Water was kept before: 1 of its 25 marks is another now
landdrill: the panel of 2026-05-09 "Tarn Open" of Low Water is again as it was in its version 1: what was corrected since counts no longer
  hint: if it shall count, correct the sheet too and add it, or add the list with the corrections again
=== exit 0
