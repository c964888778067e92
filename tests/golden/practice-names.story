One trainee is one trainee, however her name is typed, and a name is nothing that a terminal would obey.

=== copy examples/harbour-lights.sheet
=== file marks.csv
trainee,session,date,meet,routine,element,mark
Zoë Reed,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,1,7.50
zoë  reed,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,2,7.25
ZOË REED,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,3,7.75
=== run landdrill book add club.season harbour-lights.sheet > added.txt 2>&1; landdrill practice add club.season marks.csv
=== output
trainee   started     lines  marked
Zoë Reed  2026-05-10      3       3  added
=== errors
landdrill: 3 marks added, 0 already there
=== exit 0
=== run landdrill practice add club.season marks.csv; landdrill practice list club.season --name 'zoë reed'
=== output
trainee   started     lines  marked
Zoë Reed  2026-05-10      3       3  already there
trainee   session  started     lines  marked
Zoë Reed        1  2026-05-10      3       3
=== errors
landdrill: 0 marks added, 3 already there
=== exit 0
=== run landdrill practice export club.season --name ' ZOË reed ' | cut -d, -f1,7,8
=== output
trainee,element,mark
Zoë Reed,1,7.50
Zoë Reed,2,7.25
Zoë Reed,3,7.75
=== exit 0
=== run printf '7\n' | landdrill practice start club.season --name 'ZOË REED' --lines 1 --seed 2 | grep 'Practice of' | cut -d, -f1
=== output
Practice of Zoë Reed
=== exit 0
=== run echo p | landdrill practice start club.season --name 'Zoe Reed' --lines 1 --seed 2 | head -1
=== output
1 of 1 line to mark. A mark, or b back, s skip, p pause, ? help.
=== errors
landdrill: Zoe Reed is new to this book: the nearest is Zoë Reed
=== exit 0
=== run landdrill practice start club.season --name $'Ro\x1b[2Jbin'
=== errors
landdrill practice start: found a name with a control character in it; expected a name on one line, such as Robin
=== exit 2
=== run landdrill practice report club.season --name ' '
=== errors
landdrill practice report: found an empty name; expected a name on one line, such as Robin
=== exit 2
=== run landdrill practice list club.season --name $(head -c 90 /dev/zero | tr '\0' e)
=== errors
landdrill practice list: found a name of 90 characters; expected at most 80
=== exit 2
=== run printf 'trainee,date,meet,routine,element,mark\nRo\abin,2026-05-09,Tarn Open,Harbour Lights,1,7\nRobin,2026-05-09,Tarn Open,Harbour Lights,1,7\n' > bell.csv; landdrill practice add club.season bell.csv
=== errors
bell.csv:2:1: error: found a name with a control character in it; expected a name on one line, such as Robin [bad-name]
  Ro\x07bin,2026-05-09,Tarn Open,Harbour Lights,1,7
  ^~~~~~~~~
landdrill: nothing was added of a list that has errors
=== exit 1
=== run printf 'session,date,meet,routine,element,mark\n2026-05-08,2026-05-09,Tarn Open,Harbour Lights,1,7\n2026-05-08T22:30:00Z,2026-05-09,Tarn Open,Harbour Lights,2,7\n2026-06-02,2026-05-09,Tarn Open,Harbour Lights,3,7\n' > days.csv; LANDDRILL_TODAY=2026-06-01 landdrill practice add club.season days.csv --name Robin
=== errors
days.csv:2:1: error: found a practice on 2026-05-08; expected the day of the panel, 2026-05-09, or a later one [bad-date]
  2026-05-08,2026-05-09,Tarn Open,Harbour Lights,1,7
  ^~~~~~~~~~
days.csv:4:1: error: found a practice on 2026-06-02; expected a day until today, 2026-06-01 [bad-date]
  2026-06-02,2026-05-09,Tarn Open,Harbour Lights,3,7
  ^~~~~~~~~~
landdrill: nothing was added of a list that has errors
=== exit 1
=== run sed -i '2s/05-08/05-09/; 4d' days.csv; LANDDRILL_TODAY=2026-05-09 landdrill practice add club.season days.csv --name Robin
=== output
trainee  started               lines  marked
Robin    2026-05-09                1       1  added
Robin    <time>      1       1  added
=== errors
landdrill: 2 marks added, 0 already there
=== exit 0
