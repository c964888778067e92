The evening of the figures: many sheets, one line each, and the same for a spreadsheet and for programs. That the full
report is not shown is said once, on standard error.

=== file ada.sheet
routine "Ada"
event   figure-evening
values  kingfisher-2026
element 1 figure "Heron"
  parts  fig-heron
  expect 7.5
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
=== file bea.sheet
routine "Bea"
event   figure-evening
values  kingfisher-2026
element 1 figure "Heron"
  parts  fig-heron
  expect 6.5
element 2 figure "Otter"
  parts  fig-otter
  expect 7
element 3 figure "Reed"
  parts  fig-reed
  expect 7
element 4 figure "Weir"
  parts  fig-weir
  expect 7
routine "Cleo"
event   figure-evening
values  kingfisher-2026
element 1 figure "Heron"
  parts  fig-heron
  expect 8.25
element 2 figure "Otter"
  parts  fig-otter
  expect 7
element 3 figure "Reed"
  parts  fig-reed
  expect 7
element 4 figure "Weir"
  parts  fig-weir
  expect 7
=== run landdrill score ada.sheet bea.sheet
=== output
file              routine         difficulty    estimate       panel      change
ada.sheet         Ada                 6.50       71.2308     69.8205     -1.4103
bea.sheet         Bea                 6.50       68.7692
bea.sheet         Cleo                6.50       73.0769
=== errors
landdrill: several routines, so one line each; --full gives every report
=== exit 0
=== run landdrill score ada.sheet bea.sheet --format csv
=== output
file,routine,event,difficulty,estimate,recorded,difference,announced
ada.sheet,Ada,Figure evening,6.50,71.2308,69.8205,-1.4103,
bea.sheet,Bea,Figure evening,6.50,68.7692,,,
bea.sheet,Cleo,Figure evening,6.50,73.0769,,,
=== exit 0
=== run landdrill score ada.sheet bea.sheet --format json | cut -c1-110
=== output
{"format":1,"report":"score","file":"ada.sheet","routine":"Ada","event":"Figure evening","values":{"set":"King
{"format":1,"report":"score","file":"bea.sheet","routine":"Bea","event":"Figure evening","values":{"set":"King
{"format":1,"report":"score","file":"bea.sheet","routine":"Cleo","event":"Figure evening","values":{"set":"Kin
=== exit 0
=== run landdrill score ada.sheet --brief
=== output
file              routine         difficulty    estimate       panel      change
ada.sheet         Ada                 6.50       71.2308     69.8205     -1.4103
=== exit 0
=== run landdrill score ada.sheet bea.sheet --format csv --panel 'Tarn Open' | cut -d, -f2,6
=== output
routine,recorded
Ada,69.8205
Bea,
Cleo,
=== exit 0
=== run landdrill score ada.sheet bea.sheet --format csv --panel 'Tarn Lake' | cut -d, -f2,6
=== output
routine,recorded
Ada,
Bea,
Cleo,
=== errors
landdrill score: found --panel "Tarn Lake"; expected the title or date of a panel in the sheet, or none
  hint: the sheet has none
=== exit 0
=== run landdrill score ada.sheet bea.sheet --runs lastest
=== errors
landdrill: several routines, so one line each; --full gives every report
landdrill score: found --runs lastest; expected latest, mean, none, or the date of a run in the sheet
  hint: the nearest is latest
=== exit 2
=== run landdrill score bea.sheet --full | grep -E '^(Bea|Cleo)$'
=== output
Bea
Cleo
=== exit 0
