How a routine went, by the days on which it was swum: whatever its versions are called, whatever was changed, and what is still to come.

=== file low-water.sheet
routine  "Low Water"
event    duet-free
values   pool

element 1 lift "Heron"
  parts  stand-feet, rise-high, half-turn
  expect 7.50

panel 2026-05-09 "Tarn Open"
  element 1: 7.50 7.75 7.50 7.75 7.50
  choreography: 7.50 7.75 7.50 7.25 7.50
  performance: 7.75 8.00 7.50 7.75 7.75
  transitions: 7.00 7.25 7.25 7.50 7.00
  sync: none
  penalty: none
=== run landdrill values copy kingfisher-2026 pool >/dev/null; landdrill book add club.season low-water.sheet 2>&1 | tail -1; landdrill book progress club.season
=== output
landdrill: 2 added, 0 new versions, 0 already there
Low Water: Duet, free routine
  - One panel only: there is no course to see yet.

1 element, difficulty 2.30
day                           credited  mark  base  sync  penalties    total
2026-05-09  panel  Tarn Open      2.30  7.58     0     0          0  92.1917

mark: the mean of the elements' marks, of a run-through what your deductions
leave; credited: the difficulty that counted; base: how many elements got their
base mark; sync and penalties: points taken off.
=== exit 0
=== run landdrill values edit pool parts half-turn value 0.5 --why "new catalogue" >/dev/null; landdrill book add club.season low-water.sheet 2>&1 | tail -3; landdrill book progress club.season | head -8
=== output
landdrill: 0 added, 1 new version, 1 already there
landdrill: Low Water, duet-free has another value set, and so is version 2; panels stay with the version that they were swum as:
  2026-05-09 "Tarn Open": version 1
Low Water: Duet, free routine
  - The value set was changed, version 1 to 2: its difficulty went from 2.30 to
    2.50 (+0.20).
  - Version 2 was not swum yet.
  - One panel only: there is no course to see yet.

Version 1 of 2: 1 element, difficulty 2.30
day                           credited  mark  base  sync  penalties    total
=== exit 0
=== run sed '/^panel/,$d; s/rise-high, //' low-water.sheet > next.sheet; sed -n '/^panel/,$p' low-water.sheet | sed 's/2026-05-09 "Tarn Open"/2026-03-14 "Heron Cup"/; s/element 1: 7/element 1: 6/' >> next.sheet; landdrill book add club.season next.sheet 2>&1 | tail -1; landdrill book progress club.season
=== output
  hint: if it was version 1 that was swum: landdrill book swum-as club.season 1 'Low Water Heron Cup' --event duet-free --from 2026-03-14 --until 2026-03-14
Low Water: Duet, free routine
  - From the panel of 2026-03-14 "Heron Cup" to that of 2026-05-09 "Tarn Open"
    the mean mark of an element stayed at 7.58.
  - The total went from 88.4000 to 92.1917 (+3.7917).
  - The routine and its value set were changed, version 1 to 3: its difficulty
    went from 2.30 to 1.80 (-0.50).

Version 1 of 3: 1 element, difficulty 2.30
day                           credited  mark  base  sync  penalties    total
2026-05-09  panel  Tarn Open      2.30  7.58     0     0          0  92.1917

Version 3 of 3: 1 element, difficulty 1.80
day                           credited  mark  base  sync  penalties    total
2026-03-14  panel  Heron Cup      1.80  7.58     0     0          0  88.4000

mark: the mean of the elements' marks, of a run-through what your deductions
leave; credited: the difficulty that counted; base: how many elements got their
base mark; sync and penalties: points taken off.
=== exit 0
=== run sed 's/2026-03-14 "Heron Cup"/2026-05-09 "Osier Shield"/' next.sheet > same-day.sheet; landdrill book add club.season same-day.sheet 2>&1 | tail -1; landdrill book progress club.season | head -4; landdrill book progress club.season --from 2026-05-01 | head -4; landdrill book progress club.season tarn | grep Version
=== output
landdrill: 1 added, 0 new versions, 1 already there
Low Water: Duet, free routine
  - From the panel of 2026-03-14 "Heron Cup" to that of 2026-05-09 "Tarn Open"
    the mean mark of an element stayed at 7.58.
  - The total went from 88.4000 to 92.1917 (+3.7917).
Low Water: Duet, free routine
  - The routine and its value set were changed, version 1 to 3: its difficulty
    went from 2.30 to 1.80 (-0.50).
  - All panels are of one day: there is no course to see yet.
Version 1 of 3: 1 element, difficulty 2.30
=== exit 0
=== run sed '/^panel/,$d; s/half-turn/half-turn x2/' low-water.sheet > later.sheet; landdrill book add club.season later.sheet >/dev/null 2>&1; landdrill book progress club.season | sed -n '/Version 4/,$p'; landdrill book progress club.season --until 2026-12-31 | grep 'Version 4'
=== output
  - Version 4 was not swum yet.

Version 1 of 4: 1 element, difficulty 2.30
day                           credited  mark  base  sync  penalties    total
2026-05-09  panel  Tarn Open      2.30  7.58     0     0          0  92.1917

Version 3 of 4: 1 element, difficulty 1.80
day                              credited  mark  base  sync  penalties    total
2026-03-14  panel  Heron Cup         1.80  7.58     0     0          0  88.4000
2026-05-09  panel  Osier Shield      1.80  7.58     0     0          0  88.4000

Version 4 of 4: 1 element, difficulty 3.00
not swum yet

mark: the mean of the elements' marks, of a run-through what your deductions
leave; credited: the difficulty that counted; base: how many elements got their
base mark; sync and penalties: points taken off.
=== exit 1
=== run landdrill book progress club.season --format csv; landdrill book progress club.season --format json | tail -30
=== output
routine,event,version,routine_versions,set,date,what,title,declared,credited,mark,marked,of,base_marks,elements,impression,sync,penalties,total,announced
Low Water,duet-free,1,4,pool,2026-05-09,panel,Tarn Open,2.3,2.3,7.583333,1,1,0,17.4417,74.7500,0,0,92.1917,
Low Water,duet-free,3,4,pool,2026-03-14,panel,Heron Cup,1.8,1.8,7.583333,1,1,0,13.6500,74.7500,0,0,88.4000,
Low Water,duet-free,3,4,pool,2026-05-09,panel,Osier Shield,1.8,1.8,7.583333,1,1,0,13.6500,74.7500,0,0,88.4000,
              "what": "panel",
              "title": "Osier Shield",
              "declared": "1.8",
              "credited": "1.8",
              "mark": "7.583333",
              "marked": 1,
              "of": 1,
              "base_marks": 0,
              "elements": "13.6500",
              "impression": "74.7500",
              "sync": "0",
              "penalties": "0",
              "total": "88.4000",
              "announced": null
            }
          ]
        },
        {
          "version": 4,
          "routine_versions": 4,
          "kept_at": "<time>",
          "set": "pool",
          "elements": 1,
          "declared": "3",
          "points": []
        }
      ]
    }
  ]
}
=== exit 0
