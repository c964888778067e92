The routine in one file, the panel of the meet in another, as it was written down at the pool: they belong together.
Comments and a mistake in the second file are told of by its own name and line.

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
=== file meet.sheet
# typed at the pool
panel 2026-05-09 "Tarn Open"
  element 1: 7 7.25 7 7 7
  element 2: 7 7 7 7 7
  element 3: 6.5 6.75 7 7 7
  element 4: 8 7 7 7 7
=== file wrong.sheet

panel 2026-05-09 "Tarn Open"
  element 1: 7 7.2 7 7 7
  element 2: 7 7 7 7 7
  element 3: 6.5 6.75 7 7 7
  element 4: 8 7 7 7 7
=== run landdrill score ada.sheet meet.sheet --panel 'Tarn Open' --brief
=== output
file              routine         difficulty    estimate       panel      change
ada.sheet         Ada                 6.50       70.0000     69.8205     -0.1795
=== exit 0
=== run landdrill check ada.sheet wrong.sheet
=== output
ada.sheet: Ada: 1 error
=== errors
wrong.sheet:3:16: error: found the mark 7.2; expected a mark in steps of 0.25 for execution [off-step]
    element 1: 7 7.2 7 7 7
                 ^~~
  hint: it lies between two steps: write 7.00 or 7.25
=== exit 1
=== run landdrill check meet.sheet
=== output
meet.sheet: 1 error
=== errors
meet.sheet:2:1: error: found "panel" before any routine; expected a routine above it [misplaced]
  panel 2026-05-09 "Tarn Open"
  ^~~~~
  hint: a sheet starts with: routine "Harbour Lights"
=== exit 1
