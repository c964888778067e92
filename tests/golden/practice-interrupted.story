A closed window, Ctrl-C or a killed program loses no mark: the session goes on behind the last one that was given.

=== file interrupt.sh
# interrupt.sh SIGNAL NEXT: gives one mark, waits until the line NEXT is asked for, and sends the signal.
set -m  # otherwise a shell makes its children deaf to Ctrl-C
landdrill practice start club.season --name Robin --lines 6 --seed 3 < <(echo 7.25; sleep 5) > $1.txt &
for try in $(seq 1200); do grep -q "^$2 of 6   " $1.txt && break; sleep 0.05; done
kill -s $1 $!
wait $!
grep "to mark" $1.txt
=== copy examples/harbour-lights.sheet
=== run landdrill book add club.season harbour-lights.sheet > added.txt 2>&1; (bash interrupt.sh INT 2; bash interrupt.sh HUP 3; bash interrupt.sh KILL 4) 2>errors.txt
=== output
6 of 6 lines to mark. A mark, or b back, s skip, p pause, ? help.
5 of 6 lines to mark. A mark, or b back, s skip, p pause, ? help.
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
