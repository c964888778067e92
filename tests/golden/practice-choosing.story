What to mark is chosen by kind, by aspect or as whole routines; the parts of an element are on the screen, and with --tell the
panel's marks behind each line. What she met before comes when nothing else is left, and counts for nothing.

=== copy examples/harbour-lights.sheet
=== run landdrill book add club.season harbour-lights.sheet > added.txt 2>&1; sed 's/2026-05-09 "Tarn Open"/2026-06-13 "Osier Shield"/' harbour-lights.sheet > osier.sheet; landdrill book add club.season osier.sheet > added.txt 2>&1; printf '7.5\ns\nb\n7\n' | landdrill practice start club.season tarn --name Robin --kind lift --kind choreography --tell --lines 5
=== output
5 lines were asked for; there are 3 of that
3 of 3 lines to mark. A mark, or b back, s skip, p pause, ? help.

1 of 3   Harbour Lights, 2026-05-09 Tarn Open
  1 Lantern, lift, difficulty 2.30
  stand-feet, rise-high, half-turn
  your mark:   the panel: 7.33 from 7.25 7.50 7.25 7.00 7.75; you gave 7.50, +0.17 off

2 of 3   Harbour Lights, 2026-05-09 Tarn Open
  7 Mooring, lift, difficulty 2.15
  stand-shoulders, rise-mid, grip-one, shape-arch
  your mark:   the panel: 7.83 from 8.00 7.75 7.75 8.25 7.75

3 of 3   Harbour Lights, 2026-05-09 Tarn Open
  Choreography and music
  your mark:   you have been told the panel's marks of the line before: it stays as it is

3 of 3   Harbour Lights, 2026-05-09 Tarn Open
  Choreography and music
  your mark:   the panel: 7.50 from 7.50 7.75 7.50 7.25 7.50; you gave 7.00, -0.50 off

Practice of Robin, <time>: 2 marked, 1 not

  - 2 marks: too few to say much; mark at least 5

Your marks beside the panel's
element            swum                    you  panel    off  judges
1 Lantern          Harbour Lights,        7.50   7.33  +0.17  7.25 7.50 7.25
                   2026-05-09 Tarn                            7.00 7.75
                   Open
7 Mooring          Harbour Lights,     skipped   7.83         8.00 7.75 7.75
                   2026-05-09 Tarn                            8.25 7.75
                   Open
Choreography and   Harbour Lights,        7.00   7.50  -0.50  7.50 7.75 7.50
music              2026-05-09 Tarn                            7.25 7.50
                   Open

How you mark
bias              -0.17 marks (-4.40 to +4.07; above the panel is +)
how far off       0.33 marks on average, whichever way
within one step   50 %, within two 100 %
same order        -1.00 (1 ranks as the panel does, 0 as chance would)
use of the scale  you 7.00 to 7.50, the panel 7.33 to 7.50

Where you are off
where         marks  you are  95 % interval   off
choreography      1    -0.50                 0.50
lift              1    +0.17                 0.17

Where nothing is said of it above, a difference between these may be chance.
=== exit 0
=== run printf '7\n' | landdrill practice start club.season tarn --name Robin --kind Lift --lines 1 --seed 2 | head -3
=== output
You have met all of these lines before, and no others are left: they are left out of your figures
1 of 1 line to mark. A mark, or b back, s skip, p pause, ? help.

=== exit 0
=== run landdrill practice start club.season --name Robin --kind lfit
=== errors
landdrill practice start: found --kind lfit; expected a kind of element or an aspect that these panels marked: choreography, hybrid, lift, performance, transitions
  hint: the nearest is lift
=== exit 2
=== run yes 7 | head -30 | landdrill practice start club.season --name Robin --routines 1 --seed 1 | grep -e ' of 10' -e asked
=== output
10 of 10 lines to mark. A mark, or b back, s skip, p pause, ? help.
1 of 10   Harbour Lights, 2026-06-13 Osier Shield
2 of 10   Harbour Lights, 2026-06-13 Osier Shield
3 of 10   Harbour Lights, 2026-06-13 Osier Shield
4 of 10   Harbour Lights, 2026-06-13 Osier Shield
5 of 10   Harbour Lights, 2026-06-13 Osier Shield
6 of 10   Harbour Lights, 2026-06-13 Osier Shield
7 of 10   Harbour Lights, 2026-06-13 Osier Shield
8 of 10   Harbour Lights, 2026-06-13 Osier Shield
9 of 10   Harbour Lights, 2026-06-13 Osier Shield
10 of 10   Harbour Lights, 2026-06-13 Osier Shield
=== exit 0
=== run echo p | landdrill practice start club.season --name Sam --routines 3 | head -3
=== output
3 routines were asked for; there are 2 of that
20 of 20 lines to mark. A mark, or b back, s skip, p pause, ? help.

=== exit 0
=== run echo p | landdrill practice start club.season --name Sam --routines 2 | head -1
=== output
Going on with session 1 of <time>
=== exit 0
=== run landdrill practice start club.season --name Sam --routines 2 --lines 3
=== errors
landdrill practice start: --lines draws single lines and --routines whole routines: leave one of them out
=== exit 2
=== run printf 'p\n' | landdrill practice start club.season tarn --name Robin --lines 12 --new | head -3
=== output
12 lines were asked for; there are 10 of that
You have met 3 of these 10 lines before, and no others are left: what you mark again is left out of your figures
10 of 10 lines to mark. A mark, or b back, s skip, p pause, ? help.
=== exit 0
=== run landdrill practice report club.season --name Robin --curve
=== output
Practice of Robin over time: the shorter the bar, the closer to the panel

   session               marks   bias   95 % interval   off  in a step
1  <time>      2  -0.17  -4.40 to +4.07  0.33       50 %  ===
2  <time>      0
3  <time>     10  -0.33  -0.63 to -0.02  0.44       30 %  ====
=== exit 0
