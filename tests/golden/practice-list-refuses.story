What cannot be right in a list of practice marks is said with its row and column, and then nothing of the list is kept.

=== copy examples/harbour-lights.sheet
=== file columns.csv
trainee,date,routine,mark
Robin,2026-05-09,Harbour Lights,7
=== file wrong.csv
trainee,session,date,meet,routine,element,mark
Robin,2026-06-01,2026-05-32,Tarn Open,Harbour Lights,1,7
Robin,yesterday,2026-05-09,Tarn Open,Harbour Lights,1,7
Robin,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,1,good
,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,1,7
Robin,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,1,7,25
=== file unknown.csv
trainee,session,date,meet,routine,element,mark
Robin,2026-06-01,2026-05-09,Tarn Opne,Harbour Lights,1,7
Robin,2026-06-01,2026-05-10,Tarn Open,Harbour Lights,1,7
Robin,2026-06-01,2026-05-09,Tarn Open,Harbor Lights,1,7
Robin,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,9,7
Robin,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,choreografy,7
Robin,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,2,7.3
Robin,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,2,17
Robin,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,3,7
Robin,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,3,7.25
=== file fine.csv
trainee,session,date,meet,routine,element,mark
Robin,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,3,7
=== file other.csv
trainee,session,date,meet,routine,element,mark
Robin,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,2,7
Robin,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,3,7.25
=== run landdrill book add club.season harbour-lights.sheet 2> added.txt > added.txt; landdrill practice add club.season columns.csv
=== errors
columns.csv:1:1: error: found no column for the element; expected one that is called element [missing-column]
  trainee,date,routine,mark
  ^~~~~~~
  hint: a list starts with a heading such as trainee,date,meet,routine,element,mark
landdrill: nothing was added of a list that has errors
=== exit 1
=== run landdrill practice add club.season wrong.csv
=== errors
wrong.csv:2:18: error: found "2026-05-32"; expected a day of the calendar written year-month-day, such as 2026-05-09 [bad-date]
  Robin,2026-06-01,2026-05-32,Tarn Open,Harbour Lights,1,7
                   ^~~~~~~~~~
wrong.csv:3:7: error: found the session "yesterday"; expected the day when she marked, such as 2026-05-09, or that moment, such as <time> [bad-date]
  Robin,yesterday,2026-05-09,Tarn Open,Harbour Lights,1,7
        ^~~~~~~~~
wrong.csv:4:56: error: found "good"; expected a mark such as 7.25, or - [bad-number]
  Robin,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,1,good
                                                         ^~~~
wrong.csv:5:1: error: found nobody whose mark this is; expected a trainee in every row, or --name NAME [missing-cell]
  ,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,1,7
  ^
wrong.csv:6:58: error: found 8 cells; expected 7, as the heading has [cell-count]
  Robin,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,1,7,25
                                                           ^~
  hint: a decimal comma splits a cell: write 7.25, or put it in quotation marks
landdrill: nothing was added of a list that has errors
=== exit 1
=== run landdrill practice add club.season unknown.csv
=== errors
unknown.csv:2:29: error: found the meet "Tarn Opne" on 2026-05-09; expected a panel of Harbour Lights: 2026-05-09 Tarn Open [unknown-name]
  Robin,2026-06-01,2026-05-09,Tarn Opne,Harbour Lights,1,7
                              ^~~~~~~~~
  hint: the nearest is Tarn Open
unknown.csv:3:18: error: found the day 2026-05-10; expected a panel of Harbour Lights: 2026-05-09 Tarn Open [unknown-name]
  Robin,2026-06-01,2026-05-10,Tarn Open,Harbour Lights,1,7
                   ^~~~~~~~~~
unknown.csv:4:39: error: found the routine "Harbor Lights"; expected a routine of the book that a panel has marked [unknown-name]
  Robin,2026-06-01,2026-05-09,Tarn Open,Harbor Lights,1,7
                                        ^~~~~~~~~~~~~
  hint: the nearest is Harbour Lights
unknown.csv:5:54: error: found element 9; expected what the panel of 2026-05-09 marked: 1, 2, 3, 4, 5, 6, 7, choreography, performance, transitions [unknown-element]
  Robin,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,9,7
                                                       ^
unknown.csv:6:54: error: found choreografy; expected what the panel of 2026-05-09 marked: 1, 2, 3, 4, 5, 6, 7, choreography, performance, transitions [unknown-element]
  Robin,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,choreografy,7
                                                       ^~~~~~~~~~~
  hint: the nearest is choreography
unknown.csv:7:56: error: found the mark 7.3; expected a mark in steps of 0.25 for execution [off-step]
  Robin,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,2,7.3
                                                         ^~~
unknown.csv:8:56: error: found the mark 17; expected a mark from 0 to 10 for execution [out-of-range]
  Robin,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,2,17
                                                         ^~
unknown.csv:10:56: error: found 7.25 for element 3, marked before; expected 7.00, as on line 9 [repeated]
  Robin,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,3,7.25
                                                         ^~~~
  hint: marks of another practice need another session
landdrill: nothing was added of a list that has errors
=== exit 1
=== run landdrill practice list club.season
=== errors
landdrill: the book has no practice
=== exit 0
=== run landdrill practice add club.season fine.csv
=== output
trainee  started     lines  marked
Robin    2026-06-01      1       1  added
=== errors
landdrill: 1 mark added, 0 already there
=== exit 0
=== run landdrill practice add club.season other.csv
=== errors
other.csv:3:56: error: found 7.25 for element 3; expected 7.00, as the book has it of Robin on 2026-06-01 [contradiction]
  Robin,2026-06-01,2026-05-09,Tarn Open,Harbour Lights,3,7.25
                                                         ^~~~
  hint: --correct puts it in its place; marks of another practice need another session
landdrill: nothing was added of a list that has errors
=== exit 1
=== run landdrill practice export club.season
=== output
trainee,session,date,meet,routine,event,element,mark,late
Robin,<time>,2026-05-09,Tarn Open,Harbour Lights,duet-free,3,7.00,
=== exit 0
=== run landdrill practice export club.season --name Sam
=== errors
landdrill: the book has no practice of Sam
=== exit 0
=== run landdrill practice report club.season --name Robin --session 2
=== errors
landdrill practice report: found --session 2; expected the number or the day of a finished session: see `landdrill practice list`
=== exit 2
=== run landdrill practice add none.season fine.csv
=== errors
landdrill: none.season: there is no such file
  hint: import a value set or add a sheet to make one
=== exit 3
=== run sed -i 's/trainee/judge/' fine.csv; landdrill practice add club.season fine.csv
=== errors
fine.csv:1:1: error: found a column for the judge; expected a trainee's own marks, one for each line of a panel [contradiction]
  judge,session,date,meet,routine,element,mark
  ^~~~~
  hint: the marks of a panel are kept by `landdrill book add`
landdrill: nothing was added of a list that has errors
=== exit 1
=== run landdrill book add club.season other.csv
=== errors
other.csv:1:1: error: found a column for the trainee; expected the marks of a panel, with a column for the judge [contradiction]
  trainee,session,date,meet,routine,element,mark
  ^~~~~~~
  hint: a trainee's marks are kept by `landdrill practice add`
other.csv:1:1: error: found no column for the judge; expected one that is called judge [missing-column]
  trainee,session,date,meet,routine,element,mark
  ^~~~~~~
  hint: a list starts with a heading such as date,meet,routine,element,judge,mark
landdrill: nothing was added to the book
=== exit 1
