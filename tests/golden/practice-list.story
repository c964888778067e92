An official in training wrote her marks into a spreadsheet while she watched, and they become practice like any other: reported,
listed, exported, and added to another book. The same list again changes nothing.

=== copy examples/harbour-lights.sheet
=== file robin.csv
Trainee;Session;Datum;Meet;Routine;Element;Mark
Robin;2026-06-01;2026-05-09;Tarn Open;Harbour Lights;1;7,5
Robin;2026-06-01;2026-05-09;Tarn Open;Harbour Lights;2;7,25
Robin;2026-06-01;2026-05-09;Tarn Open;Harbour Lights;3;7,75
Robin;2026-06-01;2026-05-09;Tarn Open;Harbour Lights;4;-
Robin;2026-06-01;2026-05-09;Tarn Open;Harbour Lights;Choreography;7
Robin;2026-06-01;2026-05-09;Tarn Open;Harbour Lights;performance;8
=== file sam.csv
date,routine,element,mark
2026-05-09,Harbour Lights,1,6.75
2026-05-09,Harbour Lights,2,6.50
2026-05-09,Harbour Lights,3,7.00
2026-05-09,Harbour Lights,5,7.00
2026-05-09,Harbour Lights,6,7.00
=== run landdrill book add club.season harbour-lights.sheet 2> added.txt > added.txt; landdrill practice add club.season robin.csv
=== output
trainee  started     lines  marked
Robin    2026-06-01      6       5  added
=== errors
landdrill: 6 marks added, 0 already there
=== exit 0
=== run landdrill practice add club.season robin.csv sam.csv --name Sam --format csv
=== output
trainee,number,started,lines,marked,did
Robin,,<time>,6,5,already there
Sam,,<time>,5,5,added
=== errors
landdrill: 5 marks added, 6 already there
=== exit 0
=== run sed -i 's/;4;-/;5;6,75/' robin.csv; landdrill practice add club.season robin.csv
=== output
trainee  started     lines  marked
Robin    2026-06-01      6       6  1 added, 5 already there
=== errors
landdrill: 1 mark added, 5 already there
=== exit 0
=== run printf '7\n7\n' | landdrill practice start club.season --name Robin --lines 2 --seed 2 > practice.txt; landdrill practice list club.season --name Robin --format csv
=== output
trainee,number,started,lines,marked,did
Robin,1,<time>,7,6,
Robin,2,<time>,2,2,
=== exit 0
=== run landdrill practice list club.season
=== output
trainee  session  started               lines  marked
Robin          1  2026-06-01                7       6
Robin          2  <time>      2       2
Sam            1  2026-05-09                5       5
=== exit 0
=== run landdrill practice report club.season --name Robin --session 1 --format csv
=== output
trainee,started,routine,panel,line,kind,mark,late,kept,off,corrected,again
Robin,<time>,Harbour Lights,2026-05-09 Tarn Open,1,lift,7.50,no,7.33,+0.17,no,no
Robin,<time>,Harbour Lights,2026-05-09 Tarn Open,2,hybrid,7.25,no,6.83,+0.42,no,no
Robin,<time>,Harbour Lights,2026-05-09 Tarn Open,3,hybrid,7.75,no,7.42,+0.33,no,no
Robin,<time>,Harbour Lights,2026-05-09 Tarn Open,4,hybrid,,no,6.92,,no,no
Robin,<time>,Harbour Lights,2026-05-09 Tarn Open,choreography,choreography,7.00,no,7.50,-0.50,no,no
Robin,<time>,Harbour Lights,2026-05-09 Tarn Open,performance,performance,8.00,no,7.75,+0.25,no,no
Robin,<time>,Harbour Lights,2026-05-09 Tarn Open,5,hybrid,6.75,no,7.83,-1.08,no,no
=== exit 0
=== run landdrill practice report club.season --name Robin --session 2026-06-01 | head -12
=== output
Practice of Robin, 2026-06-01: 6 marked, 1 not

  - On average you marked 0.07 lower than the panel; with 6 marks that may be
    chance.

Your marks beside the panel's
element            swum                    you  panel    off  judges
1 Lantern          Harbour Lights,        7.50   7.33  +0.17  7.25 7.50 7.25
                   2026-05-09 Tarn                            7.00 7.75
                   Open
2 Undertow         Harbour Lights,        7.25   6.83  +0.42  6.75 7.00 6.50
                   2026-05-09 Tarn                            7.00 6.75
=== exit 0
=== run landdrill practice export club.season --name Sam
=== output
trainee,session,date,meet,routine,event,element,mark,late
Sam,<time>,2026-05-09,Tarn Open,Harbour Lights,duet-free,1,6.75,
Sam,<time>,2026-05-09,Tarn Open,Harbour Lights,duet-free,2,6.50,
Sam,<time>,2026-05-09,Tarn Open,Harbour Lights,duet-free,3,7.00,
Sam,<time>,2026-05-09,Tarn Open,Harbour Lights,duet-free,5,7.00,
Sam,<time>,2026-05-09,Tarn Open,Harbour Lights,duet-free,6,7.00,
=== exit 0
=== run landdrill practice export club.season > all.csv; landdrill book backup club.season other.season > backup.txt; landdrill practice add club.season all.csv
=== output
trainee  started               lines  marked
Robin    2026-06-01                7       6  already there
Robin    <time>      2       2  already there
Sam      2026-05-09                5       5  already there
=== errors
landdrill: 0 marks added, 14 already there
=== exit 0
=== run landdrill book add new.season harbour-lights.sheet 2> added.txt > added.txt; landdrill practice add new.season all.csv > added.txt; landdrill practice export new.season | diff - all.csv && echo the same
=== output
the same
=== errors
landdrill: 14 marks added, 0 already there
=== exit 0
=== run landdrill practice list new.season --format json | head -10
=== output
{
  "format": 1,
  "report": "practice list",
  "sessions": [
    {
      "trainee": "Robin",
      "number": 1,
      "started": "<time>",
      "lines": 7,
      "marked": 6,
=== exit 0
