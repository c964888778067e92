While marks are missing there is no total, and the report says which marks.

=== file ada.sheet
routine "Ada"
event   figure-evening
values  kingfisher-2026
element 1 figure "Heron"
  parts  fig-heron
element 2 figure "Otter"
  parts  fig-otter
element 3 figure "Reed"
  parts  fig-reed
  expect 7
element 4 figure "Weir"
  parts  fig-weir
  expect 7
=== run landdrill score ada.sheet
=== output
Ada
===
Figure evening - by the values of Kingfisher club league, edition 2026
6 values behind it: all invented.

no.  element                           difficulty  mark   points     left
  1  Heron, Figure                           1.60  -
  2  Otter, Figure                           1.20  -
  3  Reed, Figure                            1.40  7.00           11.3514
> 4  Weir, Figure                            2.30  7.00           18.6486
     Elements, weighted by difficulty                    70.0000
-------------------------------------------------------------------------
     So far                                  6.50        70.0000

> Worst line: 4 Weir, 18.6486 points short of a full mark.
left: the points that a full mark for what was declared would add.

Missing, so there is no total yet
  - elements 1 and 2 have no expected mark: add `expect`, or a run

Values that are from no rule book
  - 6 invented: kinds figure; parts fig-heron, fig-otter, fig-reed, fig-weir;
    panels figure-evening execution

Values from <repository>/tables/data/kingfisher-2026
=== exit 0
=== run landdrill score ada.sheet --brief
=== output
file              routine         difficulty    estimate       panel      change
ada.sheet         Ada                 6.50
=== exit 0
