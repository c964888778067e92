She goes back to a mark: it is on the screen, Enter leaves it, and it stays when the time is up before she gives another.

=== copy examples/harbour-lights.sheet
=== run landdrill book add club.season harbour-lights.sheet > added.txt 2>&1; (printf '7.75\nb\n'; sleep 2.5; printf 'b\n\np\n') | landdrill practice start club.season --name Robin --lines 2 --seed 3 --seconds 2
=== output
2 of 2 lines to mark. A mark, or b back, s skip, p pause, ? help.

1 of 2   Harbour Lights, 2026-05-09 Tarn Open
  Choreography and music
  your mark (2 s): 
2 of 2   Harbour Lights, 2026-05-09 Tarn Open
  Transitions
  your mark (2 s): 
1 of 2   Harbour Lights, 2026-05-09 Tarn Open
  Choreography and music
  you gave 7.75: Enter leaves it
  your mark (2 s): 
  the time is up: your 7.75 stays

2 of 2   Harbour Lights, 2026-05-09 Tarn Open
  Transitions
  your mark (2 s): 
1 of 2   Harbour Lights, 2026-05-09 Tarn Open
  Choreography and music
  you gave 7.75: Enter leaves it
  your mark (2 s): 
2 of 2   Harbour Lights, 2026-05-09 Tarn Open
  Transitions
  your mark (2 s): 
paused: landdrill practice start club.season --name Robin --session 1 goes on from here
=== exit 0
=== run printf '7\n' | landdrill practice start club.season --name Robin > rest.txt; landdrill practice export club.season | cut -d, -f7,8
=== output
element,mark
choreography,7.75
transitions,7.00
=== exit 0
