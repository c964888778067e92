A line that does not exist: the nearest that do. A panel that does not, a file with two routines, a sheet with a mistake.

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
=== file two.sheet
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
=== file bad.sheet
routine "Ada"
event   figure-evening
values  kingfisher-2026
element 1 figure "Heron"
  parts  fig-heron
  expect 7
element 2 figure "Otter"
  parts  otter
  expect 7
element 3 figure "Reed"
  parts  fig-reed
  expect 7
element 4 figure "Weir"
  parts  fig-weir
  expect 7
=== run landdrill explain ada.sheet elemnt 1
=== errors
landdrill explain: found "elemnt 1"; expected a line of the score
  hint: the nearest are element 1, element 2, element 3
=== exit 2
=== run landdrill explain ada.sheet weather
=== errors
landdrill explain: found "weather"; expected a line of the score
  hint: without LINE, `landdrill explain FILE` lists all lines
=== exit 2
=== run landdrill explain ada.sheet panel element 1
=== errors
landdrill explain: found "panel"; but no recorded panel is chosen in this sheet
=== exit 2
=== run landdrill explain two.sheet total
=== errors
landdrill explain: two.sheet holds several routines; expected one
=== exit 2
=== run landdrill explain bad.sheet total
=== errors
bad.sheet:8:10: error: found the part "otter"; expected a part of kingfisher-2026 [unknown-part]
    parts  otter
           ^~~~~
=== exit 1
=== run landdrill explain ada.sheet total --panel Tarn
=== errors
landdrill explain: found --panel "Tarn"; expected the title or date of a panel in the sheet, or none
  hint: the sheet has none
=== exit 2
