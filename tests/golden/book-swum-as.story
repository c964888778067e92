Which version of a routine was swum: a panel stays with it whatever is corrected or changed later, and it can be said.

=== file spring.sheet
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
element 3 hybrid "Slack Water"
  parts  arch-knee, side-hold, leg-switch, spin-180
  expect 7.75

impression choreography 7.50, performance 7.75, transitions 7.25

run 2026-04-05 "Long pool"
  element 1: clean
  element 3: bent-knee small

panel 2026-05-09 "Tarn Open"
  element 1: 7.50 7.75 7.50 7.75 7.50
  element 2: 7.00 7.25 7.25 7.50 7.25
  element 3: 7.00 7.25 7.25 7.50 7.25
  choreography: 7.50 7.75 7.50 7.25 7.50
  performance: 7.75 8.00 7.50 7.75 7.75
  transitions: 7.00 7.25 7.25 7.50 7.00
  sync: none
  penalty: none
=== file early.csv
date;meet;routine;element;judge;mark
2026-03-14;Mallard Cup;Low Water;1;1;7,00
2026-03-14;Mallard Cup;Low Water;1;2;7,00
2026-03-14;Mallard Cup;Low Water;1;3;7,00
2026-03-14;Mallard Cup;Low Water;1;4;7,00
2026-03-14;Mallard Cup;Low Water;1;5;7,00
=== run landdrill book add club.season spring.sheet 2>&1 | tail -1; sed '/^element 3/,/7.75$/d' spring.sheet > summer.sheet; landdrill book add club.season summer.sheet
=== output
landdrill: 3 added, 0 new versions, 0 already there
Low Water, duet-free
                                  version  of routine
  routine                         2                    new version
  run      2026-04-05  Long pool  1        1 of 2      already there
  panel    2026-05-09  Tarn Open  1        1 of 2      already there
=== errors
landdrill: 0 added, 1 new version, 2 already there
landdrill: what does not fit its routine any more was left as it is kept, with the version that it belongs to:
  run 2026-04-05 "Long pool", Low Water: version 1
  panel 2026-05-09 "Tarn Open", Low Water: version 1
  hint: take it out of the sheet, for the other commands stumble over it
=== exit 0
=== run sed -i '/^  element 3/d; s/7.75 7.50$/7.75 7.75/; s/element 1: clean/element 1: bent-knee small/' summer.sheet; landdrill book add club.season summer.sheet
=== output
Low Water, duet-free
                                  version  of routine
  routine                         2                    already there
  run      2026-04-05  Long pool  2        2 of 2      new version
  panel    2026-05-09  Tarn Open  2        1 of 2      new version
=== errors
landdrill: 0 added, 2 new versions, 1 already there
landdrill: the panel of 2026-05-09 "Tarn Open" of Low Water was kept before: 1 of its 30 marks is another now, 5 are gone
landdrill: the panel of 2026-05-09 "Tarn Open" has new words; it stays with version 1 of Low Water, as which it was swum
  hint: if it was version 2 that was swum: landdrill book swum-as club.season 2 'Low Water Tarn Open' --event duet-free --from 2026-05-09 --until 2026-05-09
=== exit 0
=== run landdrill book score club.season
=== output
routine    date        panel      estimate
Low Water  2026-05-09  Tarn Open  148.5750

  - Low Water, 2026-05-09 Tarn Open, no total: element 3 has no marks
=== exit 0
=== run landdrill book add club.season summer.sheet
=== output
Low Water, duet-free
                                  version  of routine
  routine                         2                    already there
  run      2026-04-05  Long pool  2        2 of 2      already there
  panel    2026-05-09  Tarn Open  2        1 of 2      already there
=== errors
landdrill: 0 added, 0 new versions, 3 already there
=== exit 0
=== run landdrill book list club.season
=== output
Low Water, duet-free
                                  version  of routine
  routine                         2 of 2
  run      2026-04-05  Long pool  2 of 2   1 of 2
  panel    2026-05-09  Tarn Open  2 of 2   1 of 2
=== exit 0
=== run landdrill book add club.season early.csv
=== output
Low Water, duet-free
                                  version  of routine
  panel  2026-03-14  Mallard Cup  1        2 of 2      added
=== errors
landdrill: 1 added, 0 new versions, 0 already there
landdrill: the panel of 2026-03-14 "Mallard Cup" was put to version 2 of Low Water, though a panel saw version 1 later, on 2026-05-09
  hint: if it was version 1 that was swum: landdrill book swum-as club.season 1 'Low Water Mallard Cup' --event duet-free --from 2026-03-14 --until 2026-03-14
=== exit 0
=== run landdrill book swum-as club.season 1 'Low Water Mallard Cup' --event duet-free --from 2026-03-14 --until 2026-03-14
=== output
Low Water, duet-free
                                  version  of routine
  panel  2026-03-14  Mallard Cup  2        1 of 2      new version
=== errors
landdrill: 0 added, 1 new version, 0 already there
=== exit 0
=== run landdrill book swum-as club.season 1 mallard
=== output
Low Water, duet-free
                                  version  of routine
  panel  2026-03-14  Mallard Cup  2        1 of 2      already there
=== errors
landdrill: 0 added, 0 new versions, 1 already there
=== exit 0
=== run landdrill book swum-as club.season 1 mallard --format csv
=== output
routine,event,what,date,title,version,of_version,routine_versions,set,kept_at,did
Low Water,duet-free,panel,2026-03-14,Mallard Cup,2,1,2,kingfisher-2026,,already there
=== errors
landdrill: 0 added, 0 new versions, 1 already there
=== exit 0
=== run sed 's/;1;\([0-9];\)/;3;\1/; s/Mallard/Merganser/' early.csv > third.csv; landdrill book add club.season third.csv 2>&1 | tail -9
=== output
third.csv:2:36: error: found element 3; expected an element of "Low Water": 1, 2 [unknown-element]
  2026-03-14;Merganser Cup;Low Water;3;1;7,00
                                     ^
  hint: version 1 of the routine has it: add the list with --swum-as 1
landdrill: nothing was added to the book
=== exit 0
=== run landdrill book add club.season third.csv --swum-as 1
=== output
Low Water, duet-free
                                    version  of routine
  panel  2026-03-14  Merganser Cup  1        1 of 2      added
=== errors
landdrill: 1 added, 0 new versions, 0 already there
=== exit 0
=== run landdrill book swum-as club.season 2 merganser
=== errors
landdrill: the panel of 2026-03-14 "Merganser Cup" does not fit version 2 of Low Water:
Low Water:15:11: error: found element 3; expected an element of "Low Water": 1, 2 [unknown-element]
    element 3: 7.00 7.00 7.00 7.00 7.00
            ^
landdrill: nothing was changed
=== exit 1
=== run landdrill book swum-as club.season 7 mallard
=== errors
landdrill: found no version 7 of Low Water, duet-free; expected a number from 1 to 2
landdrill: nothing was changed
=== exit 1
=== run landdrill book add club.season third.csv --swum-as 7 2>&1 | tail -4
=== output
third.csv:2:26: error: found Low Water with --swum-as 7; expected one of its versions, 1 to 2 [unknown-name]
  2026-03-14;Merganser Cup;Low Water;3;1;7,00
                           ^~~~~~~~~
landdrill: nothing was added to the book
=== exit 0
=== run landdrill book list club.season --format csv | cut -d, -f 3-8
=== output
what,date,title,version,of_version,routine_versions
routine,,,2 of 2,,2
panel,2026-03-14,Mallard Cup,2 of 2,1,2
panel,2026-03-14,Merganser Cup,1,1,2
run,2026-04-05,Long pool,2 of 2,1,2
panel,2026-05-09,Tarn Open,2 of 2,1,2
=== exit 0
=== run landdrill book export club.season --all > all.sheet; landdrill book add club.season all.sheet 2>&1 | tail -1; landdrill book add other.season all.sheet 2>&1 | tail -1; landdrill book score club.season > a; landdrill book score other.season | diff a - && echo the same
=== output
landdrill: 0 added, 0 new versions, 9 already there
landdrill: 5 added, 3 new versions, 1 already there
the same
=== exit 0
=== run landdrill book swum-as club.season first mallard; landdrill book swum-as club.season 1; landdrill book swum-as club.season 1 nothing; landdrill book add club.season summer.sheet --swum-as 1; landdrill book add club.season early.csv --swum-as x
=== errors
landdrill book swum-as: found first; expected the number of a version of the routine, such as 1
landdrill book swum-as: which panels? Expected words of their titles, or --from and --until
landdrill: the book has nothing with "nothing" in its title
landdrill book add: --swum-as says it of the panels of a list; `landdrill book swum-as` says it of a panel that is kept
landdrill book add: found --swum-as x; expected the number of a version, such as 1
=== exit 2
