Nothing is scored from a sheet with a mistake in it; of many sheets the good ones are.

=== file bad.sheet
routine "Ada"
event   figure-evening
values  kingfisher-2026
element 1 figure "Heron"
  parts  fig-heron
  expect 77
element 2 figure "Otter"
  parts  fig-oter
  expect 7
element 3 figure "Reed"
  parts  fig-reed
  expect 7
element 4 figure "Weir"
  parts  fig-weir
  expect 7
=== file good.sheet
routine "Bea"
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
=== run landdrill score bad.sheet
=== errors
bad.sheet:6:10: error: found the mark 77; expected a mark from 0 to 10 for execution [out-of-range]
    expect 77
           ^~
bad.sheet:8:10: error: found the part "fig-oter"; expected a part of kingfisher-2026 [unknown-part]
    parts  fig-oter
           ^~~~~~~~
  hint: the nearest is fig-otter
landdrill: not scored: mend the sheet first
=== exit 1
=== run landdrill score bad.sheet good.sheet
=== output
file              routine         difficulty    estimate       panel      change
bad.sheet         not scored: 2 errors
good.sheet        Bea                 6.50       70.0000
=== errors
landdrill: several routines, so one line each; --full gives every report
bad.sheet:6:10: error: found the mark 77; expected a mark from 0 to 10 for execution [out-of-range]
    expect 77
           ^~
bad.sheet:8:10: error: found the part "fig-oter"; expected a part of kingfisher-2026 [unknown-part]
    parts  fig-oter
           ^~~~~~~~
  hint: the nearest is fig-otter
=== exit 1
=== run landdrill score bad.sheet good.sheet --format csv 2>/dev/null
=== output
file,routine,event,difficulty,estimate,recorded,difference,announced
good.sheet,Bea,Figure evening,6.50,70.0000,,,
=== exit 1
