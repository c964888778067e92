Pinned on the wall for the discussion after the meet: the whole build-up, down to each judge.

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
panel 2026-05-09 "Tarn Open"
  element 1: 7 7.25 7 7 7
  element 2: 7 7 7 7 7
  element 3: 6.5 6.75 7 7 7
  element 4: 8 7 7 7 7
=== run landdrill score ada.sheet --full --panel 2026-05-09
=== output
Ada
===
Figure evening - by the values of Kingfisher club league, edition 2026
Panel of 2026-05-09 Tarn Open
6 values behind it: all invented.

                                  estimate           panel
no. element                         DD mark  points    DD   mark  points  change
  1 Heron, Figure                 1.60 7.00          1.60 7.00
  2 Otter, Figure                 1.20 7.00          1.20 7.00
> 3 Reed, Figure                  1.40 7.00          1.40 6.9167
  4 Weir, Figure                  2.30 7.00          2.30 7.00
    Elements, weighted by                   70.0000              69.8205 -0.1795
    difficulty
--------------------------------------------------------------------------------
    Total                         6.50      70.0000  6.50        69.8205 -0.1795

> Worst line: 3 Reed, as the way from estimate to result shows below.

From estimate to result
line      what changed                      change    total
Estimate                                            70.0000
3 Reed    execution mark 7.0000 to 6.9167  -0.1795  69.8205
Panel                                               69.8205

Values that are from no rule book
  - 6 invented: panels figure-evening execution; kinds figure; parts fig-heron,
    fig-otter, fig-reed, fig-weir

How the estimate comes about
Total: 70.0000
  = 70.0000
  element 1 Heron
    = (21 / 3) x 1.60, weighed with the others
    from panels.csv figure-evening execution, line 29 [1]
    declared difficulty: 1.60
      = sum(parts) = 1.6
      from kinds.csv figure, line 3 [1]
      part fig-heron: 1.60 (Heron: one leg raised, bent and stretched again)
        from parts.csv line 79 [1]
    mark: 7.00 (expected on the sheet)
      from panels.csv figure-evening execution, line 29 [1]
    weight: 10
      from panels.csv figure-evening execution, line 29 [1]
  element 2 Otter
    = (21 / 3) x 1.20, weighed with the others
    from panels.csv figure-evening execution, line 29 [1]
    declared difficulty: 1.20
      = sum(parts) = 1.2
      from kinds.csv figure, line 3 [1]
      part fig-otter: 1.20 (Otter: tuck turn backwards and lay out)
        from parts.csv line 80 [1]
    mark: 7.00 (expected on the sheet)
      from panels.csv figure-evening execution, line 29 [1]
    weight: 10
      from panels.csv figure-evening execution, line 29 [1]
  element 3 Reed
    = (21 / 3) x 1.40, weighed with the others
    from panels.csv figure-evening execution, line 29 [1]
    declared difficulty: 1.40
      = sum(parts) = 1.4
      from kinds.csv figure, line 3 [1]
      part fig-reed: 1.40 (Reed: one leg raised and lowered on the back)
        from parts.csv line 78 [1]
    mark: 7.00 (expected on the sheet)
      from panels.csv figure-evening execution, line 29 [1]
    weight: 10
      from panels.csv figure-evening execution, line 29 [1]
  element 4 Weir
    = (21 / 3) x 2.30, weighed with the others
    from panels.csv figure-evening execution, line 29 [1]
    declared difficulty: 2.30
      = sum(parts) = 2.3
      from kinds.csv figure, line 3 [1]
      part fig-weir: 2.30 (Weir: split, walk out over the back)
        from parts.csv line 86 [1]
    mark: 7.00 (expected on the sheet)
      from panels.csv figure-evening execution, line 29 [1]
    weight: 10
      from panels.csv figure-evening execution, line 29 [1]
  Elements together: 70.0000
    = ((21 / 3) x 1.6 + (21 / 3) x 1.2 + (21 / 3) x 1.4 + (21 / 3) x 2.3) / (1.6
      + 1.2 + 1.4 + 2.3) x 10, rounded half-up to 4 places
    from panels.csv figure-evening execution, line 29 [1]

Where the values of Kingfisher club league are from
  [1] invented: invented for the Kingfisher demo league

How the panel's result comes about
Total: 69.8205
  = 69.8205
  element 1 Heron
    = (21 / 3) x 1.60, weighed with the others
    from panels.csv figure-evening execution, line 29 [1]
    declared difficulty: 1.60
      = sum(parts) = 1.6
      from kinds.csv figure, line 3 [1]
      part fig-heron: 1.60 (Heron: one leg raised, bent and stretched again)
        from parts.csv line 79 [1]
    mark: 7.00
      = mean of 3 kept marks: 21.00 / 3
      from panels.csv figure-evening execution, line 29 [1]
      judge 1: 7.00 (dropped: lowest)
      judge 2: 7.25 (dropped: highest)
      judge 3: 7.00
      judge 4: 7.00
      judge 5: 7.00
    weight: 10
      from panels.csv figure-evening execution, line 29 [1]
  element 2 Otter
    = (21 / 3) x 1.20, weighed with the others
    from panels.csv figure-evening execution, line 29 [1]
    declared difficulty: 1.20
      = sum(parts) = 1.2
      from kinds.csv figure, line 3 [1]
      part fig-otter: 1.20 (Otter: tuck turn backwards and lay out)
        from parts.csv line 80 [1]
    mark: 7.00
      = mean of 3 kept marks: 21.00 / 3
      from panels.csv figure-evening execution, line 29 [1]
      judge 1: 7.00 (dropped: lowest)
      judge 2: 7.00
      judge 3: 7.00
      judge 4: 7.00
      judge 5: 7.00 (dropped: highest)
    weight: 10
      from panels.csv figure-evening execution, line 29 [1]
  element 3 Reed
    = (20.75 / 3) x 1.40, weighed with the others
    from panels.csv figure-evening execution, line 29 [1]
    declared difficulty: 1.40
      = sum(parts) = 1.4
      from kinds.csv figure, line 3 [1]
      part fig-reed: 1.40 (Reed: one leg raised and lowered on the back)
        from parts.csv line 78 [1]
    mark: 6.9167
      = mean of 3 kept marks: 20.75 / 3
      from panels.csv figure-evening execution, line 29 [1]
      judge 1: 6.50 (dropped: lowest)
      judge 2: 6.75
      judge 3: 7.00
      judge 4: 7.00
      judge 5: 7.00 (dropped: highest)
    weight: 10
      from panels.csv figure-evening execution, line 29 [1]
  element 4 Weir
    = (21 / 3) x 2.30, weighed with the others
    from panels.csv figure-evening execution, line 29 [1]
    declared difficulty: 2.30
      = sum(parts) = 2.3
      from kinds.csv figure, line 3 [1]
      part fig-weir: 2.30 (Weir: split, walk out over the back)
        from parts.csv line 86 [1]
    mark: 7.00
      = mean of 3 kept marks: 21.00 / 3
      from panels.csv figure-evening execution, line 29 [1]
      judge 1: 8.00 (dropped: highest)
      judge 2: 7.00 (dropped: lowest)
      judge 3: 7.00
      judge 4: 7.00
      judge 5: 7.00
    weight: 10
      from panels.csv figure-evening execution, line 29 [1]
  Elements together: 69.8205
    = ((21 / 3) x 1.6 + (21 / 3) x 1.2 + (20.75 / 3) x 1.4 + (21 / 3) x 2.3) /
      (1.6 + 1.2 + 1.4 + 2.3) x 10, rounded half-up to 4 places
    from panels.csv figure-evening execution, line 29 [1]

Where the values of Kingfisher club league are from
  [1] invented: invented for the Kingfisher demo league

Values from <repository>/tables/data/kingfisher-2026
=== exit 0
