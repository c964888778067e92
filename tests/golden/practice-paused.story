Two practices at once: one over all panels, one of a single meet with little time. Each is gone on with when it is asked for, and
nothing that was paused is lost.

=== copy examples/harbour-lights.sheet
=== run landdrill book add club.season harbour-lights.sheet > added.txt 2>&1; sed 's/2026-05-09 "Tarn Open"/2026-06-13 "Osier Shield"/' harbour-lights.sheet > osier.sheet; landdrill book add club.season osier.sheet > added.txt 2>&1; printf '7.25\np\n' | landdrill practice start club.season --name Robin --lines 4 --seed 3
=== output
4 of 4 lines to mark. A mark, or b back, s skip, p pause, ? help.

1 of 4   Harbour Lights, 2026-05-09 Tarn Open
  Choreography and music
  your mark: 
2 of 4   Harbour Lights, 2026-05-09 Tarn Open
  Transitions
  your mark: 
paused: landdrill practice start club.season --name Robin --session 1 goes on from here
=== exit 0
=== run printf '7\np\n' | landdrill practice start club.season osier --name Robin --lines 3 --seconds 90 --seed 1
=== output
Session 1 of <time> is still paused: landdrill practice start club.season --name Robin --session 1
3 of 3 lines to mark. A mark, or b back, s skip, p pause, ? help.

1 of 3   Harbour Lights, 2026-06-13 Osier Shield
  3 Weathervane, hybrid, difficulty 3.30
  twist-full, leg-hold-8, spin-360, split-open
  your mark (90 s): 
2 of 3   Harbour Lights, 2026-06-13 Osier Shield
  7 Mooring, lift, difficulty 2.15
  stand-shoulders, rise-mid, grip-one, shape-arch
  your mark (90 s): 
paused: landdrill practice start club.season --name Robin --session 2 goes on from here
=== exit 0
=== run echo p | landdrill practice start club.season --name Robin | head -2
=== output
Going on with session 2 of <time>, 90 s for each mark
Session 1 of <time> is still paused: landdrill practice start club.season --name Robin --session 1
=== exit 0
=== run echo p | landdrill practice start club.season --name Robin --lines 4 | head -3
=== output
Going on with session 1 of <time>
Session 2 of <time> is still paused: landdrill practice start club.season --name Robin --session 2
3 of 4 lines to mark. A mark, or b back, s skip, p pause, ? help.
=== exit 0
=== run echo p | landdrill practice start club.season osier --name Robin --lines 3 --seconds 90 | head -1
=== output
Going on with session 2 of <time>, 90 s for each mark
=== exit 0
=== run echo p | landdrill practice start club.season --name Robin --new --lines 2 --seed 5 | head -4
=== output
Session 1 of <time> is still paused: landdrill practice start club.season --name Robin --session 1
Session 2 of <time> is still paused: landdrill practice start club.season --name Robin --session 2
2 of 2 lines to mark. A mark, or b back, s skip, p pause, ? help.

=== exit 0
=== run echo p | landdrill practice start club.season tarn --name Robin --lines 4 --seed 1 | grep -e Going -e 'of 4'
=== output
4 of 4 lines to mark. A mark, or b back, s skip, p pause, ? help.
1 of 4   Harbour Lights, 2026-05-09 Tarn Open
=== exit 0
=== run echo p | landdrill practice start club.season osier --name Robin --seconds 60 --lines 3 --seed 1 | grep -e Going -e '60 s'
=== output
  your mark (60 s): 
=== exit 0
=== run landdrill practice list club.season --format csv | cut -d, -f1,2,4-
=== output
trainee,number,lines,marked,did
Robin,1,4,1,paused
Robin,2,3,1,paused
Robin,3,2,0,paused
Robin,4,4,0,paused
Robin,5,3,0,paused
=== exit 0
=== run printf '7\n7\n7\n' | landdrill practice start club.season --name robin --session 1 | head -4; landdrill practice list club.season --format csv | cut -d, -f1,2,4-
=== output
Going on with session 1 of <time>
Session 2 of <time> is still paused: landdrill practice start club.season --name Robin --session 2
Session 3 of <time> is still paused: landdrill practice start club.season --name Robin --session 3
Session 4 of <time> is still paused: landdrill practice start club.season --name Robin --session 4
trainee,number,lines,marked,did
Robin,1,4,4,
Robin,2,3,1,paused
Robin,3,2,0,paused
Robin,4,4,0,paused
Robin,5,3,0,paused
=== exit 0
=== run landdrill practice start club.season --name Robin --session 1
=== errors
landdrill practice start: found --session 1; expected the number of a paused session of Robin: 2, 3, 4, 5
=== exit 2
=== run landdrill practice start club.season --name Sam --session 1
=== errors
landdrill practice start: found --session 1; Sam has no paused session: see `landdrill practice list`
=== exit 2
=== run landdrill practice start club.season tarn --name Robin --session 2
=== errors
landdrill practice start: --session goes on as it was begun: leave out the words
=== exit 2
=== run landdrill practice start club.season --name Robin --session 2 --lines 3
=== errors
landdrill practice start: --session goes on as it was begun: leave out --lines
=== exit 2
=== run landdrill practice report club.season --name Robin --session 2
=== errors
landdrill practice report: found --session 2; expected the number or the day of a finished session: see `landdrill practice list`
=== exit 2
=== run landdrill practice report club.season --name Robin --session 1 --format csv | cut -d, -f3-7
=== output
routine,panel,line,kind,mark
Harbour Lights,2026-05-09 Tarn Open,choreography,choreography,7.25
Harbour Lights,2026-05-09 Tarn Open,transitions,transitions,7.00
Harbour Lights,2026-06-13 Osier Shield,5,hybrid,7.00
Harbour Lights,2026-06-13 Osier Shield,6,hybrid,7.00
=== exit 0
=== file windows.sh
# windows.sh: one session in two windows; the second marks its first line after the first has.
landdrill practice start club.season --name Ash --lines 3 --seed 1 < <(sleep 1.5; echo 9; echo p) > second.txt &
for try in $(seq 200); do grep -q "^1 of 3" second.txt && break; sleep 0.05; done
printf '7\np\n' | landdrill practice start club.season --name Ash --session 1 > first.txt
wait $!
grep window second.txt
printf '8\n8\n' | landdrill practice start club.season --name Ash > third.txt
landdrill practice export club.season --name Ash | cut -d, -f8
=== run bash windows.sh
=== output
  your mark:   this line was marked in another window meanwhile: that mark stays, b goes back to it
mark
7.00
8.00
8.00
=== exit 0
