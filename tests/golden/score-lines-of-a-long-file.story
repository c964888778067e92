In a file of many sheets a mistake is told of by its line in the file, not in the sheet.

=== file all.sheet
routine "Ada"
event   figure-evening
values  kingfisher-2026
element 1 figure "Heron"
  parts  fig-heron
  expect 7
element 2 figure "Otter"
  parts  fig-otter
  expect 7
element 3 figure "Reed"
  parts  fig-reed
  expect 7
element 4 figure "Weir"
  parts  fig-weir
  expect 7

# the next one
routine "Bea"
event   figure-evening
values  kingfisher-2026
element 1 figure "Heron"
  parts  fig-heron
  expect 7
element 2 figure "Otter"
  parts  fig-oter
  expect 7
element 3 figure "Reed"
  parts  fig-reed
  expect 7
element 4 figure "Weir"
  parts  fig-weir
  expect 7
routine "Cleo"
event   figure-evening
values  kingfisher-2026
element 1 figure "Heron"
  parts  fig-heron
  expect 7
element 2 figure "Otter"
  parts  fig-otter
  expect 7
element 3 figure "Reed"
  parts  fig-reed
  expect 7
element 4 figure "Weir"
  parts  fig-weir
  expect 7
=== run landdrill score all.sheet
=== output
file              routine         difficulty    estimate       panel      change
all.sheet         Ada                 6.50       70.0000
all.sheet         not scored: 1 error
all.sheet         Cleo                6.50       70.0000
=== errors
landdrill: several routines, so one line each; --full gives every report
all.sheet:25:10: error: found the part "fig-oter"; expected a part of kingfisher-2026 [unknown-part]
    parts  fig-oter
           ^~~~~~~~
  hint: the nearest is fig-otter
=== exit 1
