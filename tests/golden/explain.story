How did that number come about? From the list of lines down to the row of the table and its source.

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
=== run landdrill explain ada.sheet
=== output
line                  what it is             value
total                 Total                70.0000
element 1             Heron
element 1 difficulty  declared difficulty   1.60
element 1 fig-heron   fig-heron             1.60
element 1 mark        mark                  7.00
element 1 weight      weight               10
element 2             Otter
element 2 difficulty  declared difficulty   1.20
element 2 fig-otter   fig-otter             1.20
element 2 mark        mark                  7.00
element 2 weight      weight               10
element 3             Reed
element 3 difficulty  declared difficulty   1.40
element 3 fig-reed    fig-reed              1.40
element 3 mark        mark                  7.00
element 3 weight      weight               10
element 4             Weir
element 4 difficulty  declared difficulty   2.30
element 4 fig-weir    fig-weir              2.30
element 4 mark        mark                  7.00
element 4 weight      weight               10
elements              Elements together    70.0000

With `panel` in front, of the panel of 2026-05-09 Tarn Open:
line                  what it is             value
total                 Total                69.8205
element 1             Heron
element 1 difficulty  declared difficulty   1.60
element 1 fig-heron   fig-heron             1.60
element 1 mark        mark                  7.00
element 1 judge 1     judge 1               7.00
element 1 judge 2     judge 2               7.25
element 1 judge 3     judge 3               7.00
element 1 judge 4     judge 4               7.00
element 1 judge 5     judge 5               7.00
element 1 weight      weight               10
element 2             Otter
element 2 difficulty  declared difficulty   1.20
element 2 fig-otter   fig-otter             1.20
element 2 mark        mark                  7.00
element 2 judge 1     judge 1               7.00
element 2 judge 2     judge 2               7.00
element 2 judge 3     judge 3               7.00
element 2 judge 4     judge 4               7.00
element 2 judge 5     judge 5               7.00
element 2 weight      weight               10
element 3             Reed
element 3 difficulty  declared difficulty   1.40
element 3 fig-reed    fig-reed              1.40
element 3 mark        mark                  6.9167
element 3 judge 1     judge 1               6.50
element 3 judge 2     judge 2               6.75
element 3 judge 3     judge 3               7.00
element 3 judge 4     judge 4               7.00
element 3 judge 5     judge 5               7.00
element 3 weight      weight               10
element 4             Weir
element 4 difficulty  declared difficulty   2.30
element 4 fig-weir    fig-weir              2.30
element 4 mark        mark                  7.00
element 4 judge 1     judge 1               8.00
element 4 judge 2     judge 2               7.00
element 4 judge 3     judge 3               7.00
element 4 judge 4     judge 4               7.00
element 4 judge 5     judge 5               7.00
element 4 weight      weight               10
elements              Elements together    69.8205
=== exit 0
=== run landdrill explain ada.sheet element 1
=== output
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

Where the values of kingfisher-2026 are from
  [1] invented: invented for the Kingfisher demo league
=== exit 0
=== run landdrill explain ada.sheet element 1 difficulty
=== output
declared difficulty: 1.60
  = sum(parts) = 1.6
  from kinds.csv figure, line 3 [1]
  part fig-heron: 1.60 (Heron: one leg raised, bent and stretched again)
    from parts.csv line 79 [1]

Where the values of kingfisher-2026 are from
  [1] invented: invented for the Kingfisher demo league
=== exit 0
=== run landdrill explain ada.sheet total --panel none
=== output
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

Where the values of kingfisher-2026 are from
  [1] invented: invented for the Kingfisher demo league
=== exit 0
=== run landdrill explain ada.sheet panel element 3
=== output
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

Where the values of kingfisher-2026 are from
  [1] invented: invented for the Kingfisher demo league
=== exit 0
=== run landdrill explain ada.sheet panel
=== output
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

Where the values of kingfisher-2026 are from
  [1] invented: invented for the Kingfisher demo league
=== exit 0
