The second file of a call starts with an element whose line is broken, and its `routine` line is missing. Nothing of it is
taken for a part of the routine in the file before: the broken line is told of by its own name, and that is all.

=== file otter.sheet
routine "Otter"
event   figure-evening
values  kingfisher-2026
element 1 figure "Heron"
  parts  fig-heron
  expect 7
=== file heron.sheet
element x figure "Otter"
  parts  fig-otter
element 1 figure "Heron"
  parts  fig-hern
=== run landdrill check otter.sheet heron.sheet
=== output
otter.sheet: Otter: 1 error
=== errors
heron.sheet:1:9: error: found "x"; expected the number of the element (like 1) [syntax]
  element x figure "Otter"
          ^
  hint: elements are numbered 1, 2, 3 and so on: element 1 hybrid "Undertow"
=== exit 1
=== run landdrill score otter.sheet heron.sheet --brief
=== output
file              routine         difficulty    estimate       panel      change
otter.sheet       not scored: 1 error
=== errors
heron.sheet:1:9: error: found "x"; expected the number of the element (like 1) [syntax]
  element x figure "Otter"
          ^
  hint: elements are numbered 1, 2, 3 and so on: element 1 hybrid "Undertow"
landdrill: not scored: mend the sheet first
=== exit 1
