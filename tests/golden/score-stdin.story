A stream of sheets on standard input; `-` may stand among files.

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
=== run landdrill score - --brief < ada.sheet
=== output
file              routine         difficulty    estimate       panel      change
standard input    Ada                 6.50       70.0000
=== exit 0
=== run (cat ada.sheet; echo; cat ada.sheet) | landdrill score - ada.sheet 2>/dev/null
=== output
file              routine         difficulty    estimate       panel      change
standard input    Ada                 6.50       70.0000
standard input    Ada                 6.50       70.0000
ada.sheet         Ada                 6.50       70.0000
=== exit 0
