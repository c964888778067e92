A run and a panel are corrected in a sheet whose routine was changed meanwhile: they count as before, with the version that was swum.
New words that do not fit that version are of the changed routine.

=== file low-water.sheet
# Everything in it is invented.
routine  "Low Water"
event    duet-free
values   kingfisher-2026

element 1 lift "Heron"
  parts  stand-feet, rise-high, half-turn
  expect 7.50
element 2 hybrid "Undertow"
  parts  thrust-high, spin-720, split-hold x2, join-foot
  expect 7.50

impression choreography 7.50, performance 7.75, transitions 7.25

run 2026-04-05 "Long pool"
  element 1: clean

panel 2026-05-09 "Tarn Open"
  element 1: 7.50 7.75 7.50 7.75 7.50
  element 2: 7.00 7.25 7.25 7.50 7.25
  choreography: 7.50 7.75 7.50 7.25 7.50
  performance: 7.75 8.00 7.50 7.75 7.75
  transitions: 7.00 7.25 7.25 7.50 7.00
  sync: none
  penalty: none
=== run landdrill book add club.season low-water.sheet 2>&1 | tail -1; sed -i 's/spin-720/spin-360/' low-water.sheet; landdrill book add club.season low-water.sheet 2>&1 | tail -3; landdrill book score club.season
=== output
landdrill: 3 added, 0 new versions, 0 already there
landdrill: 0 added, 2 new versions, 1 already there
landdrill: Low Water, duet-free was changed and is version 2; panels stay with the version that they were swum as:
  2026-05-09 "Tarn Open": version 1
routine    date        panel      estimate  recorded  difference
Low Water  2026-05-09  Tarn Open  122.2500  121.1917     -1.0583
=== exit 0
=== run sed -i 's/element 1: clean/element 1: bent-knee small/; s/7.25 7.50 7.25$/7.25 7.50 8.00/' low-water.sheet; landdrill book add club.season low-water.sheet
=== output
Low Water, duet-free
                                  version  of routine
  routine                         2                    already there
  run      2026-04-05  Long pool  3        1 of 2      new version
  run      2026-04-05  Long pool  4        2 of 2      new version
  panel    2026-05-09  Tarn Open  2        1 of 2      new version
=== errors
landdrill: 0 added, 3 new versions, 1 already there
landdrill: the run of 2026-04-05 "Long pool" has new words; they are kept with version 1 of Low Water too, which the run counts with
landdrill: the panel of 2026-05-09 "Tarn Open" of Low Water was kept before: 1 of its 25 marks is another now
landdrill: the panel of 2026-05-09 "Tarn Open" has new words; it stays with version 1 of Low Water, as which it was swum
  hint: if it was version 2 that was swum: landdrill book swum-as club.season 2 'Low Water Tarn Open' --event duet-free --from 2026-05-09 --until 2026-05-09
=== exit 0
=== run landdrill book score club.season; landdrill book list club.season --all; landdrill book progress club.season | head -12
=== output
routine    date        panel      estimate  recorded  difference
Low Water  2026-05-09  Tarn Open  127.4250  121.5250     -5.9000
Low Water, duet-free
                                  version  of routine
  routine                         1 of 2
  routine                         2 of 2
  run      2026-04-05  Long pool  1 of 4   1 of 2
  run      2026-04-05  Long pool  2 of 4   2 of 2
  run      2026-04-05  Long pool  3 of 4   1 of 2
  run      2026-04-05  Long pool  4 of 4   2 of 2
  panel    2026-05-09  Tarn Open  1 of 2   1 of 2
  panel    2026-05-09  Tarn Open  2 of 2   1 of 2
Low Water: Duet, free routine
  - The routine was changed, version 1 to 2: its difficulty went from 6.30 to
    5.80 (-0.50).
  - Version 2 was not swum yet.
  - One panel only: there is no course to see yet.

Version 1 of 2: 2 elements, difficulty 6.30
day                           credited  mark  base  sync  penalties     total
2026-04-05  run    Long pool      6.30  9.75     0
2026-05-09  panel  Tarn Open      6.30  7.46     0     0          0  121.5250

Version 2 of 2: 2 elements, difficulty 5.80
=== exit 0
=== run landdrill book add club.season low-water.sheet 2>&1 | tail -1; landdrill book export club.season --all > all.sheet; landdrill book add club.season all.sheet 2>&1 | tail -1; landdrill book add other.season all.sheet 2>&1 | tail -1; landdrill book score other.season
=== output
landdrill: 0 added, 0 new versions, 3 already there
landdrill: 0 added, 0 new versions, 10 already there
landdrill: 3 added, 5 new versions, 2 already there
routine    date        panel      estimate  recorded  difference
Low Water  2026-05-09  Tarn Open  127.4250  121.5250     -5.9000
=== exit 0
=== run sed -i 's/^impression/element 3 hybrid "Slack Water"\n  parts  arch-knee, side-hold\n  expect 7.75\n\nimpression/; s/^  choreography:/  element 3: 7.00 7.00 7.00 7.00 7.00\n  choreography:/' low-water.sheet; landdrill book add club.season low-water.sheet
=== output
Low Water, duet-free
                                  version  of routine
  routine                         3                    new version
  run      2026-04-05  Long pool  5        3 of 3      new version
  panel    2026-05-09  Tarn Open  3        3 of 3      new version
=== errors
landdrill: 0 added, 3 new versions, 0 already there
landdrill: the panel of 2026-05-09 "Tarn Open" of Low Water was kept before: 5 marks are new
landdrill: the panel of 2026-05-09 "Tarn Open" has new words, which do not fit version 1 of Low Water; it belongs to version 3 now
=== exit 0
