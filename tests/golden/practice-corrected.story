The meet's office corrects two marks of a panel after a trainee has practised on it. She is compared with the corrected marks,
and is told so.

=== copy examples/harbour-lights.sheet
=== file corrected.csv
date,meet,routine,element,judge,mark
2026-05-09,Tarn Open,Harbour Lights,1,3,8.25
2026-05-09,Tarn Open,Harbour Lights,1,4,8.25
=== file marks.csv
trainee,session,date,meet,routine,element,mark
Robin,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,1,7.50
Robin,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,2,7.25
=== run landdrill book add club.season harbour-lights.sheet > added.txt 2>&1; landdrill practice add club.season marks.csv > added.txt 2>&1; echo p | landdrill practice start club.season --name Robin --lines 20 > paused.txt; landdrill practice report club.season --name Robin --format csv | cut -d, -f5,7-
=== output
line,mark,late,kept,off,corrected,again
1,7.50,no,7.33,+0.17,no,no
2,7.25,no,6.83,+0.42,no,no
=== exit 0
=== run landdrill book add club.season corrected.csv 2>&1 | tail -1; landdrill practice report club.season --name Robin
=== output
landdrill: the panel of 2026-05-09 "Tarn Open" of Harbour Lights was kept before: 2 of its 50 marks are another now; the rest stays as it was
Practice of Robin, 2026-05-10: 2 marked, 0 not

  - 2 marks: too few to say much; mark at least 5
  - The panel's marks of 1 of the 2 lines were corrected since this practice
    began (1 Lantern): you are compared with the corrected ones.

Your marks beside the panel's
element     swum                      you  panel    off  judges
1 Lantern   Harbour Lights,          7.50   7.83  -0.33  7.25 7.50 8.25 8.25
            2026-05-09 Tarn Open                         7.75
2 Undertow  Harbour Lights,          7.25   6.83  +0.42  6.75 7.00 6.50 7.00
            2026-05-09 Tarn Open                         6.75

How you mark
bias              +0.04 marks (-4.72 to +4.81; above the panel is +)
how far off       0.38 marks on average, whichever way
within one step   0 %, within two 100 %
same order        1.00 (1 ranks as the panel does, 0 as chance would)
use of the scale  you 7.25 to 7.50, the panel 6.83 to 7.83

Where you are off
where   marks  you are  95 % interval   off
hybrid      1    +0.42                 0.42
lift        1    -0.33                 0.33

Where nothing is said of it above, a difference between these may be chance.
=== exit 0
=== run landdrill practice report club.season --name Robin --format csv | cut -d, -f5,7-; landdrill practice report club.season --name Robin --format json | grep '"corrected"'
=== output
line,mark,late,kept,off,corrected,again
1,7.50,no,7.83,-0.33,yes,no
2,7.25,no,6.83,+0.42,no,no
      "corrected": true,
      "corrected": false,
    "corrected": 1,
=== exit 0
=== run for i in $(seq 10); do echo 7; done | landdrill practice start club.season --name Robin --lines 10 | grep -e 'Going on' -e corrected -A 1; landdrill practice report club.season --name Robin --curve --format csv | cut -d, -f3-
=== output
Going on with session 2 of <time>
10 of 10 lines to mark. A mark, or b back, s skip, p pause, ? help.
--
  - The panel's marks of 1 of the 10 lines were corrected since this practice
    began (1 Lantern): you are compared with the corrected ones.

marked,bias,difference,within_one,order,number
2,+0.04,0.38,0.00,1.00,1
8,-0.39,0.49,0.25,,2
=== exit 0
