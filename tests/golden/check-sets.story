A sheet is checked by its value set: none named, one that does not exist, one that is itself wrong, one from the command
line and one from a season file.

=== file none.sheet
routine "Ada"
event   figure-evening
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
=== file typo.sheet
routine "Ada"
event   figure-evening
values  kingfihser-2026
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
=== file ada.sheet
routine "Ada"
event   figure-evening
values  sick-2026
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
=== file bea.sheet
routine "Bea"
event   figure-evening
values  sick-2026
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
=== run landdrill values copy kingfisher-2026 sick-2026 && sed -i 's/^fig-otter,figures,[^,]*,1.2/fig-otter,figures,Otter,much/' sick-2026/parts.csv
=== output
kingfisher-2026 is written into sick-2026. In a sheet beside it, the line is
  values sick-2026
=== exit 0
=== run landdrill check none.sheet 2>&1 | sed 's/found: .*/found: .../'
=== output
none.sheet:1:10: error: found a routine without a value set; expected a line such as `values kingfisher-2026`, or --set on the command line [missing-line]
  routine "Ada"
           ^~~
  hint: the sets that were found: ...
none.sheet: Ada: 1 error
=== exit 0
=== run landdrill check none.sheet --set kingfisher-2026
=== output
none.sheet: Ada: ok
=== exit 0
=== run landdrill check none.sheet --set kingfihser-2026 2>&1 | sed 's/ in .*/ in .../'
=== output
landdrill: the value set "kingfihser-2026": no folder of that name with a set.csv in ...
  hint: the nearest is kingfisher-2026
none.sheet: Ada: no value set to check it by
=== exit 0
=== run landdrill check typo.sheet
=== output
typo.sheet: Ada: 1 error
=== errors
typo.sheet:3:9: error: found the value set "kingfihser-2026"; expected the name of a set that can be found [unknown-set]
  values  kingfihser-2026
          ^~~~~~~~~~~~~~~
  hint: the nearest is kingfisher-2026
=== exit 1
=== run landdrill check ada.sheet bea.sheet
=== output
ada.sheet: Ada: no value set to check it by
bea.sheet: Bea: no value set to check it by
=== errors
sick-2026/parts.csv:80:25: error: found "much"; expected a number in the column "value" [bad-number]
  fig-otter,figures,Otter,much,invented for the Kingfisher demo league,invented
                          ^~~~
  hint: leave the cell empty while the number is not known
landdrill: the value set sick-2026 cannot be used until these are mended
=== exit 1
=== run landdrill values import kingfisher-2026 --season club.season >/dev/null; landdrill check none.sheet --set kingfisher-2026 --season club.season; landdrill check ada.sheet --season club.season
=== output
none.sheet: Ada: ok
ada.sheet: Ada: 1 error
=== errors
ada.sheet:3:9: error: found the value set "sick-2026"; expected the name of a set that can be found [unknown-set]
  values  sick-2026
          ^~~~~~~~~
  hint: the sets that were found: kingfisher-2026
=== exit 1
=== run landdrill check none.sheet --set kingfisher-2026 --values nowhere
=== output
none.sheet: Ada: ok
=== exit 0
