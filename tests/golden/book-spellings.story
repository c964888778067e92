One title spelled in two ways is one title: a meet of the same day and routine, or a routine of the same event. It is said where, and nothing is added.

=== file low-water.sheet
routine  "Low Water"
event    duet-free
values   kingfisher-2026

element 1 lift "Heron"
  parts  stand-feet, rise-high, half-turn
  expect 7.50

panel 2026-05-09 "Tarn Open"
  element 1: 7.50 7.75 7.50 7.75 7.50
=== file tarn.csv
date,meet,routine,element,judge,mark
2026-05-09,tarn-open,Low Water,1,1,7.25
=== file mere.csv
date,meet,routine,event,element,judge,mark
2026-06-06,Mere Cup,Low Water,duet-free,1,1,7.25
2026-06-06,Mere Cup,Low Water,duet-free,1,2,7.25
2026-06-06,Mere  cup,Low Water,duet-free,1,3,7.25
2026-06-06,Mere Cup,Low Water,,1,4,7.25
2026-06-06,Mere Cup,Low Water,,1,5,7.25
2026-06-07,Mere cup,Low Water,,1,5,7.25
=== run sed 's/Low Water/low-water/' low-water.sheet > other.sheet; landdrill book add club.season low-water.sheet other.sheet; ls club.season
=== errors
landdrill: found the routine "low-water"; expected "Low Water", as it is spelled elsewhere
  hint: write the title in one way
landdrill: nothing was added to the book
ls: cannot access 'club.season': No such file or directory
=== exit 2
=== run landdrill book add club.season low-water.sheet
=== output
Low Water, duet-free
                                  version  value set
  routine                         1        kingfisher-2026  added
  panel    2026-05-09  Tarn Open  1        kingfisher-2026  added
=== errors
landdrill: 2 added, 0 new versions, 0 already there
=== exit 0
=== run landdrill book add club.season other.sheet
=== errors
landdrill: found the routine "low-water"; expected "Low Water", as it is spelled elsewhere
  hint: write the title in one way
landdrill: nothing was added to the book
=== exit 1
=== run sed 's/Tarn Open/Tarn open/' low-water.sheet > open.sheet; landdrill book add club.season open.sheet
=== errors
landdrill: found the panel of Low Water, 2026-05-09, "Tarn open"; expected "Tarn Open", as it is spelled elsewhere
  hint: write the title in one way
landdrill: nothing was added to the book
=== exit 1
=== run landdrill book add club.season tarn.csv
=== errors
tarn.csv:2:12: error: found the meet "tarn-open"; expected "Tarn Open", as the book has it on this day [two-spellings]
  2026-05-09,tarn-open,Low Water,1,1,7.25
             ^~~~~~~~~
  hint: write the meet in one way
landdrill: nothing was added to the book
=== exit 1
=== run landdrill book add club.season mere.csv
=== errors
mere.csv:4:12: error: found the meet "Mere  cup"; expected "Mere Cup", as another row has it on this day [two-spellings]
  2026-06-06,Mere  cup,Low Water,duet-free,1,3,7.25
             ^~~~~~~~~
  hint: write the meet in one way
mere.csv:5:31: error: found rows of one panel with and without the event; expected the event in each of its rows, or in none [repeated]
  2026-06-06,Mere Cup,Low Water,,1,4,7.25
                                ^
landdrill: nothing was added to the book
=== exit 1
=== run sed 's/Tarn Open/Tarn Open, final/' low-water.sheet > final.sheet; landdrill book add club.season final.sheet
=== output
Low Water, duet-free
                                         version  value set
  routine                                1        kingfisher-2026  already there
  panel    2026-05-09  Tarn Open, final  1        kingfisher-2026  added
=== errors
landdrill: 1 added, 0 new versions, 1 already there
=== exit 0
