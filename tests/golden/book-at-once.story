Two people at one book at once: each list brings marks of the same panel, and none of them is lost; nor is a correction when
somebody moves the panel to another version.

=== file low-water.sheet
routine  "Low Water"
event    duet-free
values   kingfisher-2026

element 1 lift "Heron"
  parts  stand-feet, rise-high, half-turn
  expect 7.50
element 2 hybrid "Undertow"
  parts  thrust-high, spin-720, split-hold x2, join-foot
  expect 7.50

panel 2026-05-09 "Tarn Open"
  element 1: 7.50 7.75 7.50 7.75 7.50
=== file rounds.sh
# rounds.sh: ten times five lists at once, each with another judge's mark of each element; how many marks were kept.
for judge in 1 2 3 4 5; do
  echo "date,meet,routine,element,judge,mark" > $judge.csv
  echo "2026-05-09,Tarn Open,Low Water,1,$judge,9.50" >> $judge.csv
done
for round in $(seq 10); do
  rm -f club.season
  landdrill book add club.season low-water.sheet > out.txt 2>&1
  for judge in 1 2 3 4 5; do landdrill book add club.season $judge.csv > $judge.txt 2>&1 & done
  wait
  landdrill book export club.season | grep -A1 '^panel' | tail -1
done | sort | uniq -c
=== run bash rounds.sh
=== output
     10   element 1: 9.50 9.50 9.50 9.50 9.50
=== exit 0
=== file moves.sh
# moves.sh: a correction and a move at once, in both orders as they fall.
sed 's/spin-720/spin-360/' low-water.sheet > next.sheet
for round in $(seq 10); do
  rm -f club.season
  landdrill book add club.season low-water.sheet > out.txt 2>&1; landdrill book add club.season next.sheet > out.txt 2>&1
  landdrill book add club.season 1.csv > 1.txt 2>&1 &
  landdrill book swum-as club.season 2 tarn > 2.txt 2>&1 &
  wait
  landdrill book list club.season tarn --format csv | tail -1 | cut -d, -f5,7
  landdrill book export club.season | grep -A1 '^panel' | tail -1
done | sort | uniq -c
=== run bash moves.sh
=== output
     10   element 1: 9.50 7.75 7.50 7.75 7.50
     10 Tarn Open,2
=== exit 0
