A closed window, Ctrl-C or a killed program loses no mark: the session goes on behind the last one that was given.

=== file interrupt.sh
# interrupt.sh SIGNAL NEXT: gives one mark, waits until the line NEXT is asked for, and sends the signal.
set -m  # otherwise a shell makes its children deaf to Ctrl-C
landdrill practice start club.season --name Robin --lines 6 --seed 3 < <(echo 7.25; sleep 5) > $1.txt &
for try in $(seq 1200); do grep -q "^$2 of 6   " $1.txt && break; sleep 0.05; done
kill -s $1 $!
wait $!
echo "$1 ends it with $?"
grep "to mark\|^paused" $1.txt
=== copy examples/harbour-lights.sheet
=== run landdrill book add club.season harbour-lights.sheet > added.txt 2>&1; (bash interrupt.sh INT 2; bash interrupt.sh HUP 3; bash interrupt.sh KILL 4) 2>errors.txt
=== output
INT ends it with 130
6 of 6 lines to mark. A mark, or b back, s skip, p pause, ? help.
paused: landdrill practice start club.season --name Robin --session 1 goes on from here
HUP ends it with 129
5 of 6 lines to mark. A mark, or b back, s skip, p pause, ? help.
KILL ends it with 137
4 of 6 lines to mark. A mark, or b back, s skip, p pause, ? help.
=== exit 0
=== run printf '7\n7\n7\n' | landdrill practice start club.season --name Robin | grep "to mark"
=== output
3 of 6 lines to mark. A mark, or b back, s skip, p pause, ? help.
=== exit 0
=== run landdrill practice report club.season --name Robin --format csv | cut -d, -f5,7
=== output
line,mark
2,7.25
3,7.25
6,7.25
choreography,7.00
performance,7.00
transitions,7.00
=== exit 0
=== file stop.sh
# stop.sh: Ctrl-Z and back again in the second line, whose mark is given after that.
landdrill practice start club.season --name Sam --lines 6 --seed 3 < <(echo 7.25; sleep 2; printf '7.5\np\n') > stop.txt &
for try in $(seq 1200); do grep -q "^2 of 6   " stop.txt && break; sleep 0.05; done
kill -s STOP $!
sleep 0.2
kill -s CONT $!
wait $!
grep "^[0-9] of 6   \|paused" stop.txt
=== run bash stop.sh
=== output
1 of 6   Harbour Lights, 2026-05-09 Tarn Open
2 of 6   Harbour Lights, 2026-05-09 Tarn Open
2 of 6   Harbour Lights, 2026-05-09 Tarn Open
3 of 6   Harbour Lights, 2026-05-09 Tarn Open
paused: landdrill practice start club.season --name Sam --session 1 goes on from here
=== exit 0
