A season of one routine: in May its second element was too hard, so the coach made it easier and expected more of it. What
the panels of spring saw is compared with the routine of spring, although the sheet of summer has their marks too.

=== file spring.sheet
routine  "Reed Song"
event    duet-free
values   kingfisher-2026

element 1 lift "Heron"
  parts  stand-feet, rise-high, half-turn
  expect 7.50
element 2 hybrid "Undertow"
  parts  thrust-high, spin-720, split-hold x2, join-foot
  expect 7.50
element 3 hybrid "Weathervane"
  parts  twist-full, leg-hold-8, spin-360, split-open
  expect 7.75
element 4 hybrid "Slack Water"
  parts  arch-knee, side-hold, leg-switch, spin-180
  expect 7.75

impression choreography 7.50, performance 7.75, transitions 7.25

run 2026-03-31 "In the long pool"
  element 4: low-height medium, travel medium, off-vertical medium, late-count medium, flexed-foot small

panel 2026-04-11 "Heron Cup"
  element 1: 7.50 7.75 7.50 7.75 7.50
  element 2: 7.00 7.25 7.25 7.50 7.25
  element 3: 7.50 7.50 7.25 7.75 7.50
  element 4: 7.50 7.25 7.50 7.75 7.50
  choreography: 7.50 7.75 7.50 7.25 7.50
  performance: 7.75 8.00 7.50 7.75 7.75
  transitions: 7.00 7.25 7.25 7.50 7.00
  sync: small x4
  penalty: none

panel 2026-05-09 "Tarn Open"
  element 1: 7.75 7.75 7.50 7.75 7.50
  element 2 base: 6.75 7.00 6.75 7.00 6.75
  element 3: 7.25 7.50 7.50 7.50 7.75
  element 4: 7.50 7.50 7.50 7.75 7.25
  choreography: 7.50 7.75 7.50 7.25 7.50
  performance: 7.75 8.00 7.50 7.75 7.75
  transitions: 7.00 7.25 7.25 7.50 7.00
  sync: small x2
  penalty: deck-time
=== file summer.sheet
routine  "Reed Song"
event    duet-free
values   kingfisher-2026

element 1 lift "Heron"
  parts  stand-feet, rise-high, half-turn
  expect 7.50
element 2 hybrid "Undertow"
  parts  thrust-high, spin-360, split-hold
  expect 7.75
element 3 hybrid "Weathervane"
  parts  twist-full, leg-hold-8, spin-360, split-open
  expect 7.75
element 4 hybrid "Slack Water"
  parts  arch-knee, side-hold, leg-switch, spin-180
  expect 7.75

impression choreography 7.50, performance 7.75, transitions 7.25

run 2026-03-31 "In the long pool"
  element 4: low-height medium, travel medium, off-vertical medium, late-count medium, flexed-foot small

panel 2026-04-11 "Heron Cup"
  element 1: 7.50 7.75 7.50 7.75 7.50
  element 2: 7.00 7.25 7.25 7.50 7.25
  element 3: 7.50 7.50 7.25 7.75 7.50
  element 4: 7.50 7.25 7.50 7.75 7.50
  choreography: 7.50 7.75 7.50 7.25 7.50
  performance: 7.75 8.00 7.50 7.75 7.75
  transitions: 7.00 7.25 7.25 7.50 7.00
  sync: small x4
  penalty: none

panel 2026-05-09 "Tarn Open"
  element 1: 7.75 7.75 7.50 7.75 7.50
  element 2 base: 6.75 7.00 6.75 7.00 6.75
  element 3: 7.25 7.50 7.50 7.50 7.75
  element 4: 7.50 7.50 7.50 7.75 7.25
  choreography: 7.50 7.75 7.50 7.25 7.50
  performance: 7.75 8.00 7.50 7.75 7.75
  transitions: 7.00 7.25 7.25 7.50 7.00
  sync: small x2
  penalty: deck-time

panel 2026-06-13 "Osier Shield"
  element 1: 7.50 7.75 7.50 7.75 7.75
  element 2: 7.50 7.50 7.25 7.75 7.50
  element 3: 7.50 7.50 7.25 7.75 7.50
  element 4: 7.50 7.75 7.50 7.75 7.50
  choreography: 7.50 7.75 7.50 7.50 7.50
  performance: 7.75 8.00 7.75 7.75 7.75
  transitions: 7.25 7.25 7.25 7.50 7.25
  sync: none
  penalty: none

panel 2026-07-04 "Kingfisher Final"
  element 1: 7.75 7.75 7.50 7.75 7.50
  element 2: 7.50 7.50 7.50 7.75 7.50
  element 3: 7.50 7.75 7.50 7.75 7.50
  element 4: 7.50 7.50 7.25 7.75 7.50
  choreography: 7.75 7.75 7.50 7.50 7.75
  performance: 7.75 8.00 7.75 8.00 7.75
  transitions: 7.25 7.50 7.25 7.50 7.25
  sync: small x1
  penalty: none
=== run landdrill book add club.season spring.sheet 2>&1 >/dev/null && landdrill book add club.season summer.sheet 2>&1 >/dev/null
=== output
landdrill: 4 added, 0 new versions, 0 already there
landdrill: 2 added, 2 new versions, 2 already there
landdrill: Reed Song, duet-free was changed and is version 2; panels stay with the version that they were swum as:
  2026-04-11 "Heron Cup": version 1
  2026-05-09 "Tarn Open": version 1
=== exit 0
=== run landdrill book lessons club.season
=== output
What panels gave beside what you expected: 16 elements on 4 days

  - On average panels give elements of kind hybrid less than you expect: 0.27 so
    far, 0.10 to 0.44 where chance is allowed for.
  - On average panels give elements of kind lift more than you expect: 0.15 so
    far, 0.06 to 0.23 where chance is allowed for.
  - Whether calibrating would have helped is open: mean distance from the panel
    0.21 before, 0.07 after, on 8 elements on 2 days; that may be chance.

What panels gave, less what you expected (marks)
                elements  days  on average  95 % interval   to go by
all                   16     4       -0.17  -0.26 to -0.07     -0.17
by kind
  hybrid              12     4       -0.27  -0.40 to -0.14     -0.27
  lift                 4     4       +0.15  +0.08 to +0.21     +0.14
by family
  flexibility         12     4       -0.27  -0.40 to -0.14     -0.27
  spins               12     4       -0.27  -0.40 to -0.14     -0.27
  airborne             8     4       -0.23  -0.27 to -0.19     -0.23
  rises                4     4       +0.15  +0.08 to +0.21     +0.12
  stands               4     4       +0.15  +0.08 to +0.21     +0.12
  thrusts              4     4       -0.35  -0.69 to -0.02     -0.34
  turns                4     4       +0.15  +0.08 to +0.21     +0.12
  twists               4     4       -0.23  -0.30 to -0.16     -0.22
  connections          2     2       -0.46                     -0.41
by fault
  flexed-foot          4     4       -0.23  -0.30 to -0.16     -0.23
  late-count           4     4       -0.23  -0.30 to -0.16     -0.23
  low-height           4     4       -0.23  -0.30 to -0.16     -0.23
  off-vertical         4     4       -0.23  -0.30 to -0.16     -0.23
  travel               4     4       -0.23  -0.30 to -0.16     -0.23

How to read it
  - on average: what panels gave less what you expected before their day; below
    0 they gave less. An element counts once for its kind, for each family of
    its parts and for each fault of the run it rests on.
  - 95 % interval: one in twenty of them misses the true difference. Marks of
    one day go up and down together, so days count, not elements (Bell and
    McCaffrey 2002): of fewer than 3 days, or of days that are all alike, there
    is none. What is said of single kinds takes wider ones, as several kinds are
    looked at.
  - to go by: the average drawn towards that of all kinds (families, faults),
    the more so the fewer its elements are: a few marks tell little (empirical
    Bayes, Efron and Morris 1975).
  - A calibrated mark is your expected mark with what is to go by for its kind
    added.
=== exit 0
=== run landdrill book lessons club.season --until 2026-05-31
=== output
What panels gave beside what you expected: 8 elements on 2 days

  - On average panels gave 0.21 less than you expected, on 8 elements on 2 days:
    too little to tell whether they will again.
  - Whether calibrating would have helped cannot be tested yet: no day has 8
    marked elements before it.

With care
  - All of it is from 2 days, fewer than 3: strict or kind panels on so few days
    would look the same.

What panels gave, less what you expected (marks)
                elements  days  on average  95 % interval  to go by
all                    8     2       -0.21                    -0.21
by kind
  hybrid               6     2       -0.32                    -0.31
  lift                 2     2       +0.13                    +0.10
by family
  flexibility          6     2       -0.32                    -0.23
  spins                6     2       -0.32                    -0.23
  airborne             4     2       -0.25                    -0.23
  connections          2     2       -0.46                    -0.23
  rises                2     2       +0.13                    -0.23
  stands               2     2       +0.13                    -0.23
  thrusts              2     2       -0.46                    -0.23
  turns                2     2       +0.13                    -0.23
  twists               2     2       -0.25                    -0.23
by fault
  flexed-foot          2     2       -0.25                    -0.25
  late-count           2     2       -0.25                    -0.25
  low-height           2     2       -0.25                    -0.25
  off-vertical         2     2       -0.25                    -0.25
  travel               2     2       -0.25                    -0.25

How to read it
  - on average: what panels gave less what you expected before their day; below
    0 they gave less. An element counts once for its kind, for each family of
    its parts and for each fault of the run it rests on.
  - 95 % interval: one in twenty of them misses the true difference. Marks of
    one day go up and down together, so days count, not elements (Bell and
    McCaffrey 2002): of fewer than 3 days, or of days that are all alike, there
    is none. What is said of single kinds takes wider ones, as several kinds are
    looked at.
  - to go by: the average drawn towards that of all kinds (families, faults),
    the more so the fewer its elements are: a few marks tell little (empirical
    Bayes, Efron and Morris 1975).
  - A calibrated mark is your expected mark with what is to go by for its kind
    added.
=== exit 0
=== run landdrill book progress club.season
=== output
Reed Song: Duet, free routine
  - From the panel of 2026-04-11 "Heron Cup" to that of 2026-07-04 "Kingfisher
    Final" the mean mark of an element went from 7.46 to 7.56 (+0.10).
  - The total went from 165.7917 to 159.2250 (-6.5667).
  - What panels took for sync errors and penalties went from 0.40 to 0.10.
  - The routine was changed, version 1 to 2: its difficulty went from 12.30 to
    11.00 (-1.30).

Version 1 of 2: 4 elements, difficulty 12.30
day                              credited  mark  base  sync  penalties     total
2026-03-31  run    In the long      12.30  7.75     0
                   pool
2026-04-11  panel  Heron Cup        12.30  7.46     0  -0.4        0    165.7917
2026-05-09  panel  Tarn Open         8.80  7.38     1  -0.2       -0.5  140.1000

Version 2 of 2: 4 elements, difficulty 11.00
day                              credited  mark  base  sync  penalties     total
2026-06-13  panel  Osier Shield     11.00  7.56     0   0            0  158.1083
2026-07-04  panel  Kingfisher       11.00  7.56     0  -0.1          0  159.2250
                   Final

mark: the mean of the elements' marks, of a run-through what your deductions
leave; credited: the difficulty that counted; base: how many elements got their
base mark; sync and penalties: points taken off.
=== exit 0
=== run landdrill book progress club.season reed --from 2026-06-01 --full
=== output
Reed Song: Duet, free routine
  - From the panel of 2026-06-13 "Osier Shield" to that of 2026-07-04
    "Kingfisher Final" the mean mark of an element stayed at 7.56.
  - The total went from 158.1083 to 159.2250 (+1.1167).
  - What panels took for sync errors and penalties went from 0.00 to 0.10.

Version 2 of 2: 4 elements, difficulty 11.00
day                              credited  mark  base  sync  penalties     total
2026-06-13  panel  Osier Shield     11.00  7.56     0   0            0  158.1083
2026-07-04  panel  Kingfisher       11.00  7.56     0  -0.1          0  159.2250
                   Final

day                marked  elements  impression  announced
2026-06-13  panel  4 of 4   83.1083     75.0000
2026-07-04  panel  4 of 4   83.1583     76.1667

mark: the mean of the elements' marks, of a run-through what your deductions
leave; credited: the difficulty that counted; base: how many elements got their
base mark; sync and penalties: points taken off.
=== exit 0
