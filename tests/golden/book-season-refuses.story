Nothing to learn from, nothing found, and sheets that cannot be calibrated.

=== copy examples/solo-ripple.sheet
=== file broken.sheet
routine "Broken"
event   duet-free
values  kingfisher-2026
element 1 lift "Heron"
  parts stand-feet, rise-hihg
=== run landdrill book add club.season solo-ripple.sheet >/dev/null
=== errors
landdrill: 3 added, 0 new versions, 0 already there
=== exit 0
=== run landdrill book lessons club.season
=== output
What panels gave beside what you expected: 0 elements on 0 days

  - There is nothing to learn from yet.
  - Whether calibrating would have helped cannot be tested yet: no day has 8
    marked elements before it.

With care
  - No panel marked an element that had an expected mark before its day.
=== exit 0
=== run landdrill book lessons club.season --sheet nowhere.sheet
=== errors
landdrill: nowhere.sheet: there is no such file
  hint: check the spelling and the folder
=== exit 3
=== run landdrill book lessons club.season --sheet broken.sheet
=== errors
broken.sheet:5:21: error: found the part "rise-hihg"; expected a part of kingfisher-2026 [unknown-part]
    parts stand-feet, rise-hihg
                      ^~~~~~~~~
  hint: the nearest are rise-high, rise-mid
=== exit 1
=== run cat solo-ripple.sheet solo-ripple.sheet | landdrill book lessons club.season --sheet -
=== errors
landdrill book lessons: standard input holds several routines; expected one
=== exit 2
=== run landdrill book lessons club.season lantern
=== errors
landdrill: the book has nothing with "lantern" in its title
=== exit 0
=== run landdrill book lessons club.season --from 31.3.2026
=== errors
landdrill book lessons: found the date "31.3.2026"; expected a day written year-month-day, such as 2026-05-09
=== exit 2
=== run landdrill book progress club.season
=== output
Ripple: Solo, free routine
  - No panel has seen it yet: run-throughs are the coach's own view.

5 elements, difficulty 13.50
day                              credited  mark  base  sync  penalties     total
2026-03-03  run  Land drill,        11.10  6.95     1
                 then once in
                 the water
2026-03-10  run  Second Tuesday     13.50  7.00     0                   169.1500

mark: the mean of the elements' marks, of a run-through what your deductions
leave; credited: the difficulty that counted; base: how many elements got their
base mark; sync and penalties: points taken off.
=== exit 0
=== run landdrill book progress club.season --from 2027-01-01
=== errors
landdrill: the book has nothing of that
=== exit 0
=== run landdrill book judges club.season
=== errors
landdrill: there is no recorded panel in it
=== exit 0
=== run landdrill judges solo-ripple.sheet
=== errors
landdrill: there is no recorded panel in it
=== exit 0
=== run landdrill judges broken.sheet
=== errors
broken.sheet:5:21: error: found the part "rise-hihg"; expected a part of kingfisher-2026 [unknown-part]
    parts stand-feet, rise-hihg
                      ^~~~~~~~~
  hint: the nearest are rise-high, rise-mid
=== exit 1
=== run landdrill judges nowhere.sheet
=== errors
landdrill: nowhere.sheet: there is no such file
  hint: check the spelling and the folder
=== exit 3
=== run landdrill book judges nowhere.season
=== errors
landdrill: nowhere.season: there is no such file
  hint: import a value set or add a sheet to make one
=== exit 3
