The same sheet priced from another set than it says, wherever that set is.

=== file ada.sheet
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
=== run landdrill values copy kingfisher-2026 sets/ours-2026 && landdrill values edit sets/ours-2026 parts fig-heron value 2.5
=== output
kingfisher-2026 is written into sets/ours-2026. In a sheet beside it, the line is
  values ours-2026
ours-2026 parts fig-heron: value 1.6 -> 2.5
  its source is now "typed in, value was 1.6 before"
  its status is now "memory"
=== exit 0
=== run landdrill score ada.sheet --brief
=== output
file              routine         difficulty    estimate       panel      change
ada.sheet         Ada                 6.50       70.0000
=== exit 0
=== run landdrill score ada.sheet --brief --set ours-2026 --values sets
=== output
file              routine         difficulty    estimate       panel      change
ada.sheet         Ada                 7.40       70.0000
=== exit 0
=== run landdrill score ada.sheet --brief --set ours-2026 2>&1 | sed 's/set.csv in .*/set.csv in .../; s/found are .*/found are .../'
=== output
landdrill: the value set "ours-2026": no folder of that name with a set.csv in ...
  hint: the sets that were found are ...
file              routine         difficulty    estimate       panel      change
ada.sheet         not scored: 1 error
landdrill: not scored: mend the sheet first
=== exit 0
=== run LANDDRILL_VALUES=sets landdrill score ada.sheet --brief --set ours-2026
=== output
file              routine         difficulty    estimate       panel      change
ada.sheet         Ada                 7.40       70.0000
=== exit 0
=== run landdrill score ada.sheet --brief --set sets/ours-2026
=== output
file              routine         difficulty    estimate       panel      change
ada.sheet         Ada                 7.40       70.0000
=== exit 0
