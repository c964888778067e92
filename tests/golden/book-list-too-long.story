A list of 200 MB is refused with the row and column at which it is too long; nothing of it is added, and it takes little memory.

=== file reed-song.sheet
routine  "Reed Song"
event    duet-free
values   kingfisher-2026

element 1 lift "Heron"
  parts  stand-feet, rise-high, half-turn
  expect 7.50
=== run landdrill book add club.season reed-song.sheet >/dev/null; (echo 'date,meet,routine,element,judge,mark'; yes '2026-05-09,Tarn Open,Reed Song,1,1,7.25' | head -c 200000000) > long.csv; ulimit -v 400000; landdrill book add club.season long.csv
=== errors
landdrill: 1 added, 0 new versions, 0 already there
landdrill: long.csv:1677722:28: it is longer than 64 MB here
  hint: split it into several files
landdrill: nothing was added to the book
=== exit 3
=== run landdrill book list club.season
=== output
Reed Song, duet-free
               version  value set
  routine      1        kingfisher-2026
=== exit 0
