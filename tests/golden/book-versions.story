A routine is changed during the season, and its sheet goes into the book again with all its marks. What the panels of spring
saw stays with the routine of spring, and every command goes by that. The whole book comes out as sheets, which change nothing
when they are added again, and from which an empty book becomes the same.

=== file spring.sheet
# Everything in it is invented.
routine  "Reed Song"
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
  element 2: travel small
# No spotter was there.

panel 2026-04-11 "Heron Cup"
  element 1: 7.50 7.75 7.50 7.75 7.50
  element 2: 7.00 7.25 7.25 7.50 7.25
  choreography: 7.50 7.75 7.50 7.25 7.50
  performance: 7.75 8.00 7.50 7.75 7.75
  transitions: 7.00 7.25 7.25 7.50 7.00
  sync: small x4
  penalty: none
# That is all of it.
=== file osier.sheet

panel 2026-06-13 "Osier Shield"
  element 1: 7.50 7.75 7.50 7.75 7.75
  element 2: 7.50 7.50 7.25 7.75 7.50
  choreography: 7.50 7.75 7.50 7.50 7.50
  performance: 7.75 8.00 7.75 7.75 7.75
  transitions: 7.25 7.25 7.25 7.50 7.25
  sync: none
  penalty: none
=== file tarn.csv
date,meet,routine,element,judge,mark
2026-05-09,Tarn Open,Reed Song,2,1,7.75
2026-05-09,Tarn Open,Reed Song,2,2,7.75
2026-05-09,Tarn Open,Reed Song,2,3,7.50
2026-05-09,Tarn Open,Reed Song,2,4,7.75
2026-05-09,Tarn Open,Reed Song,2,5,7.50
=== run landdrill book add club.season spring.sheet && landdrill book add club.season tarn.csv
=== output
Reed Song, duet-free
                                  version  value set
  routine                         1        kingfisher-2026  added
  run      2026-04-05  Long pool  1        kingfisher-2026  added
  panel    2026-04-11  Heron Cup  1        kingfisher-2026  added
Reed Song, duet-free
                                version  value set
  panel  2026-05-09  Tarn Open  1        kingfisher-2026  added
=== errors
landdrill: 3 added, 0 new versions, 0 already there
landdrill: 1 added, 0 new versions, 0 already there
=== exit 0
=== run sed 's/spin-720, split-hold x2, join-foot/spin-360, split-hold/' spring.sheet > summer.sheet; landdrill book add club.season summer.sheet osier.sheet
=== output
Reed Song, duet-free
                                     version  of routine
  routine                            2                    new version
  run      2026-04-05  Long pool     2        2 of 2      new version
  panel    2026-04-11  Heron Cup     1        1 of 2      already there
  panel    2026-06-13  Osier Shield  1        2 of 2      added
=== errors
landdrill: 1 added, 2 new versions, 1 already there
landdrill: Reed Song, duet-free was changed and is version 2; panels stay with the version that they were swum as:
  2026-04-11 "Heron Cup": version 1
=== exit 0
=== run landdrill book list club.season --all
=== output
Reed Song, duet-free
                                     version  of routine
  routine                            1 of 2
  routine                            2 of 2
  run      2026-04-05  Long pool     1 of 2   1 of 2
  run      2026-04-05  Long pool     2 of 2   2 of 2
  panel    2026-04-11  Heron Cup     1        1 of 2
  panel    2026-05-09  Tarn Open     1        1 of 2
  panel    2026-06-13  Osier Shield  1        2 of 2
=== exit 0
=== run landdrill book score club.season
=== output
routine    date        panel         estimate  recorded  difference
Reed Song  2026-04-11  Heron Cup     131.2500  120.7917    -10.4583
Reed Song  2026-05-09  Tarn Open     131.2500
Reed Song  2026-06-13  Osier Shield  118.5750  112.8833     -5.6917

  - Reed Song, 2026-05-09 Tarn Open, no total: element 1 has no marks, nor have
    choreography, performance and transitions
=== exit 0
=== run landdrill book score club.season --from 2026-05-01
=== output
routine    date        panel         estimate  recorded  difference
Reed Song  2026-05-09  Tarn Open     131.2500
Reed Song  2026-06-13  Osier Shield  118.5750  112.8833     -5.6917

  - Reed Song, 2026-05-09 Tarn Open, no total: element 1 has no marks, nor have
    choreography, performance and transitions
=== exit 0
=== run landdrill book progress club.season | grep -A4 Version
=== output
Version 1 of 2: 2 elements, difficulty 6.30
day                           credited  mark  base  sync  penalties     total
2026-04-05  run    Long pool      6.30  9.75     0
2026-04-11  panel  Heron Cup      6.30  7.42     0  -0.4          0  120.7917
2026-05-09  panel  Tarn Open      6.30  7.67     0   0            0
--
Version 2 of 2: 2 elements, difficulty 5.00
day                              credited  mark  base  sync  penalties     total
2026-06-13  panel  Osier Shield      5.00  7.58     0     0          0  112.8833

mark: the mean of the elements' marks, of a run-through what your deductions
=== exit 0
=== run sed -i '2s/7.75/7.25/' tarn.csv; landdrill book add club.season tarn.csv
=== output
Reed Song, duet-free
                                version  of routine
  panel  2026-05-09  Tarn Open  2        1 of 2      new version
=== errors
landdrill: 0 added, 1 new version, 0 already there
landdrill: the panel of 2026-05-09 "Tarn Open" of Reed Song was kept before: 1 of its 5 marks is another now; the rest stays as it was
=== exit 0
=== run sed -i 's/7.00 7.25 7.25 7.50 7.00/7.00 7.25 7.25 7.50 7.25/' summer.sheet; landdrill book add club.season summer.sheet osier.sheet
=== output
Reed Song, duet-free
                                     version  of routine
  routine                            2                    already there
  run      2026-04-05  Long pool     2        2 of 2      already there
  panel    2026-04-11  Heron Cup     2        1 of 2      new version
  panel    2026-06-13  Osier Shield  1        2 of 2      already there
=== errors
landdrill: 0 added, 1 new version, 3 already there
landdrill: the panel of 2026-04-11 "Heron Cup" of Reed Song was kept before: 1 of its 25 marks is another now
landdrill: the panel of 2026-04-11 "Heron Cup" has new words; it stays with version 1 of Reed Song, as which it was swum
  hint: if it was version 2 that was swum: landdrill book swum-as club.season 2 'Reed Song Heron Cup' --event duet-free --from 2026-04-11 --until 2026-04-11
=== exit 0
=== run landdrill book export club.season --all > all.sheet; cat all.sheet
=== output
# Everything in it is invented.
routine "Reed Song"
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
  element 2: travel small
  # No spotter was there.

panel 2026-04-11 "Heron Cup"
  element 1: 7.50 7.75 7.50 7.75 7.50
  element 2: 7.00 7.25 7.25 7.50 7.25
  choreography: 7.50 7.75 7.50 7.25 7.50
  performance: 7.75 8.00 7.50 7.75 7.75
  transitions: 7.00 7.25 7.25 7.50 7.00
  sync: small x4
  penalty: none
  # That is all of it.

panel 2026-05-09 "Tarn Open"
  element 2: 7.75 7.75 7.50 7.75 7.50

# Everything in it is invented.
routine "Reed Song"
event    duet-free
values   kingfisher-2026

element 1 lift "Heron"
  parts  stand-feet, rise-high, half-turn
  expect 7.50
element 2 hybrid "Undertow"
  parts  thrust-high, spin-720, split-hold x2, join-foot
  expect 7.50

impression choreography 7.50, performance 7.75, transitions 7.25

panel 2026-04-11 "Heron Cup"
  element 1: 7.50 7.75 7.50 7.75 7.50
  element 2: 7.00 7.25 7.25 7.50 7.25
  choreography: 7.50 7.75 7.50 7.25 7.50
  performance: 7.75 8.00 7.50 7.75 7.75
  transitions: 7.00 7.25 7.25 7.50 7.25
  sync: small x4
  penalty: none
  # That is all of it.

panel 2026-05-09 "Tarn Open"
  element 2: 7.25 7.75 7.50 7.75 7.50

# Everything in it is invented.
routine "Reed Song"
event    duet-free
values   kingfisher-2026

element 1 lift "Heron"
  parts  stand-feet, rise-high, half-turn
  expect 7.50
element 2 hybrid "Undertow"
  parts  thrust-high, spin-360, split-hold
  expect 7.50

impression choreography 7.50, performance 7.75, transitions 7.25

run 2026-04-05 "Long pool"
  element 2: travel small
  # No spotter was there.

panel 2026-06-13 "Osier Shield"
  element 1: 7.50 7.75 7.50 7.75 7.75
  element 2: 7.50 7.50 7.25 7.75 7.50
  choreography: 7.50 7.75 7.50 7.50 7.50
  performance: 7.75 8.00 7.75 7.75 7.75
  transitions: 7.25 7.25 7.25 7.50 7.25
  sync: none
  penalty: none
=== exit 0
=== run landdrill book add club.season all.sheet
=== output
Reed Song, duet-free
                                     version  of routine
  routine                            1                    already there
  run      2026-04-05  Long pool     1        1 of 2      already there
  panel    2026-04-11  Heron Cup     1        1 of 2      already there
  panel    2026-05-09  Tarn Open     1        1 of 2      already there
  routine                            1                    already there
  panel    2026-04-11  Heron Cup     2        1 of 2      already there
  panel    2026-05-09  Tarn Open     2        1 of 2      already there
  routine                            2                    already there
  run      2026-04-05  Long pool     2        2 of 2      already there
  panel    2026-06-13  Osier Shield  1        2 of 2      already there
=== errors
landdrill: 0 added, 0 new versions, 10 already there
=== exit 0
=== run landdrill book add other.season all.sheet 2>&1 | tail -1; landdrill book export other.season --all | diff all.sheet - && echo the same
=== output
landdrill: 5 added, 4 new versions, 1 already there
the same
=== exit 0
=== run for book in club other; do landdrill book list $book.season --all --format csv | cut -d, -f 1-8 > $book.txt; landdrill book score $book.season >> $book.txt; done; diff club.txt other.txt && echo the same
=== output
the same
=== exit 0
=== run printf 'panel 2026-06-13 "Osier Shield"\n  element 1: 7 7 7 7 7\n' > twice.sheet; landdrill book add club.season summer.sheet osier.sheet twice.sheet
=== errors
twice.sheet:1:7: error: found a second panel of 2026-06-13 called "Osier Shield"; expected one, for the book tells them apart by day and title [repeated]
  panel 2026-06-13 "Osier Shield"
        ^~~~~~~~~~
  hint: give it a title of its own, such as "second"
landdrill: nothing was added to the book
=== exit 1
