Trainees beside the panels and each other, and beside an expert who marked the same lines; and a form to mark on by hand.

=== copy examples/harbour-lights.sheet
=== file marks.csv
trainee,session,date,meet,routine,element,mark
Ash,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,1,7.25
Ash,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,2,6.75
Ash,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,3,7.50
Ash,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,4,7.00
Ash,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,5,7.75
Ash,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,6,6.50
Robin,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,1,8.00
Robin,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,2,7.75
Robin,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,3,8.25
Robin,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,4,7.75
Robin,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,5,8.75
Robin,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,6,7.25
Sam,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,1,7.50
Sam,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,2,6.50
Sam,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,3,7.25
=== run landdrill book add club.season harbour-lights.sheet > added.txt 2>&1; landdrill practice add club.season marks.csv > added.txt 2>&1; landdrill practice compare club.season --colour never
=== output
Trainees beside the panel

  - Robin marks 0.79 higher than the panel on average, over 6 lines.
  - Ash marks 0.83 lower than Robin on average, over 6 lines.
  - Sam has 3 marks to compare: too few to say much of.

trainee  marks   bias  95 % interval    off  within a step  order
Ash          6  -0.04  -0.15 to +0.07  0.10          100 %   1.00
Robin        6  +0.79  +0.65 to +0.94  0.79            0 %   0.99
Sam          3  -0.11  -0.74 to +0.52  0.22           67 %   0.50

Beside each other, on the lines that both marked
trainee  beside  lines  higher by  95 % interval   apart
Ash      Robin       6      -0.83  -0.97 to -0.70   0.83
Ash      Sam         3      +0.08  -0.63 to +0.80   0.25
Robin    Sam         3      +0.92  -0.03 to +1.87   0.92
=== exit 0
=== run landdrill practice compare club.season --expert ash --name Robin --format csv
=== output
trainee,marks,bias,bias_low,bias_high,difference,within_one,order,again
Robin,6,0.833333,0.697852,0.968815,0.833333,0,0.985611,0
=== exit 0
=== run landdrill practice compare club.season --expert Kim
=== errors
landdrill practice compare: Kim has no finished session in this book
=== exit 2
=== run landdrill practice report club.season --name Robin --expert Ash
=== output
Practice of Robin, 2026-05-10: 6 marked, 0 not

  - On average you mark 0.83 higher than Ash: by 0.70 to 0.97, as far as 6 marks
    of one meet can tell.

Your marks beside Ash's
element         swum                                   you   Ash    off
1 Lantern       Harbour Lights, 2026-05-09 Tarn Open  8.00  7.25  +0.75
2 Undertow      Harbour Lights, 2026-05-09 Tarn Open  7.75  6.75  +1.00
3 Weathervane   Harbour Lights, 2026-05-09 Tarn Open  8.25  7.50  +0.75
4 Anchor chain  Harbour Lights, 2026-05-09 Tarn Open  7.75  7.00  +0.75
5 Slack Water   Harbour Lights, 2026-05-09 Tarn Open  8.75  7.75  +1.00
6 Beacon        Harbour Lights, 2026-05-09 Tarn Open  7.25  6.50  +0.75

How you mark
bias              +0.83 marks (+0.70 to +0.97; above Ash is +)
how far off       0.83 marks on average, whichever way
within one step   0 %, within two 0 %
same order        0.99 (0.87 to 1.00; 1 ranks as Ash does, 0 as chance would)
use of the scale  you 7.25 to 8.75, Ash 6.50 to 7.75
steadiness        off by 0.83 in the first half, 0.83 in the second

Where you are off
where   marks  you are  95 % interval    off
hybrid      5    +0.85  +0.68 to +1.02  0.85
lift        1    +0.75                  0.75

Where nothing is said of it above, a difference between these may be chance.
=== exit 0
=== run landdrill practice report club.season --name Robin --expert Ash --curve
=== output
Practice of Robin over time: the shorter the bar, the closer to Ash

   session     marks   bias   95 % interval   off  in a step
1  2026-05-10      6  +0.83  +0.70 to +0.97  0.83        0 %  ========
=== exit 0
=== run landdrill practice form club.season harbour --event duet-free --from 2026-01-01 --until 2026-12-31
=== output
Harbour Lights: Duet, free routine
==================================
Meet ______________________   Day ______________

element                 parts                   scale               mark
----------------------------------------------------------------------------
1 Lantern               stand-feet, rise-high,  0 to 10, step 0.25  ________
                        half-turn
----------------------------------------------------------------------------
2 Undertow              thrust-high, spin-720,  0 to 10, step 0.25  ________
                        split-hold x2,
                        join-foot
----------------------------------------------------------------------------
3 Weathervane           twist-full,             0 to 10, step 0.25  ________
                        leg-hold-8, spin-360,
                        split-open
----------------------------------------------------------------------------
4 Anchor chain          legs-hold-4,            0 to 10, step 0.25  ________
                        legs-lower,
                        split-walk, join-foot,
                        twist-half x2
----------------------------------------------------------------------------
5 Slack Water           arch-knee, side-hold,   0 to 10, step 0.25  ________
                        leg-switch, spin-180
----------------------------------------------------------------------------
6 Beacon                thrust-top,             0 to 10, step 0.25  ________
                        twist-fast, spin-1080
----------------------------------------------------------------------------
7 Mooring               stand-shoulders,        0 to 10, step 0.25  ________
                        rise-mid, grip-one,
                        shape-arch
----------------------------------------------------------------------------
Choreography and music                          0 to 10, step 0.25  ________
----------------------------------------------------------------------------
Performance                                     0 to 10, step 0.25  ________
----------------------------------------------------------------------------
Transitions                                     0 to 10, step 0.25  ________
=== exit 0
=== run landdrill practice form club.season heron
=== errors
landdrill: the book has nothing with "heron" in its title
=== exit 0
