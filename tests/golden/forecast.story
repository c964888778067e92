How likely is which score, what are the odds of 210 and of 220 points, and how likely is the other duet beaten?

=== copy examples/harbour-lights.sheet
=== run landdrill forecast harbour-lights.sheet --target 210 --target 220
=== output
Harbour Lights
==============
Duet, free routine - by the values of Kingfisher club league, edition 2026
46 values behind it: all invented.

                                               from bad to good
line                  mark  base mark    mean    5 %   25 %   50 %   75 %   95 %
1 Lantern             7.50   0 %        17.25   16.3   16.9   17.3   17.6   18.2
2 Undertow            7.00    21.5 %    22.73    3.4   26.3   27.7   28.3   29.3
3 Weathervane         7.50     3.75 %   23.96   23.1   24.2   24.8   25.3   26.1
4 Anchor chain        7.00   6 %        25.21    3.6   26.0   26.6   27.2   28.2
5 Slack Water         7.75     1.5 %    20.67   19.8   20.5   20.9   21.4   22.1
6 Beacon              6.75  15 %        24.03    3.3   26.3   27.3   28.4   29.7
7 Mooring             8.00     0.75 %   17.11   16.3   16.8   17.2   17.6   18.1
Choreography and      7.50              30.00   28.7   29.3   30.0   30.7   31.3
music
Performance           7.75              23.25   22.3   22.8   23.3   23.8   24.3
Transitions           7.25              21.75   20.8   21.3   21.8   22.3   22.8
Sync errors                             -0.55   -1.3   -0.8   -0.5   -0.2   -0.1
Penalties                               -0.13   -1.0    0.0    0.0    0.0    0.0
--------------------------------------------------------------------------------
Total                                  225.29  192.7  213.4  230.0  238.0  245.8

One time in twenty the total is below 192.7, one time in twenty above 245.8;
half the time it lies between 213.4 and 238.0.
On average it is 225.29, and usually about 16.37 off that (standard deviation).
Only the means add up to the total: not everything goes badly on the same day.

The chance
  - to reach 210: 82.3 %, about 8 times in 10.
  - to reach 220: 63.1 %, about 6 times in 10.

How much that hangs on what goes in
                                    to reach 210  to reach 220
as it is                                  82.3 %        63.1 %
every base mark a quarter likelier        77.3 %        55.6 %
every base mark a quarter rarer           87.1 %        71.2 %
judges a quarter further apart            82.2 %        63.2 %
no good or bad days                       91.8 %        59.8 %

Where this comes from
  - How far judges' marks scatter: 0.235 marks, from 1 recorded panel, 35 marks
    (1, 2, 3, 4, 5, 7); 0.45 marks, from spread 0.45 in the sheet (6); 0.188
    marks, from 1 recorded panel, 15 marks (Choreography and music, Performance,
    Transitions).
  - Good and bad days: all marks shift together by 0.2 marks, from day 0.2 in
    the sheet.
  - Chance of the base mark (a `slip` counts as 6 runs): from 0 of 2 runs and no
    `slip`, so 0 % (1); from 1 of 2 runs and `slip` 12 % (2); from 0 of 2 runs
    and `slip` 5 % (3); from 0 of 2 runs and `slip` 8 % (4); from 0 of 2 runs
    and `slip` 2 % (5); from 0 of 2 runs and `slip` 20 % (6); from 0 of 2 runs
    and `slip` 1 % (7).
  - Sync errors expected, on average: small 3, clear 0.5, from the sheet.
  - Penalties expected, on average: deck-time 0.05, overtime 0.1.
  - Adding up: on a grid of 0.004167 points; no total lies further than 0.000273
    points from where it truly is; over 45 kinds of day, for which no chance is
    off by more than 0.004 %.

Take care
  - Lifts: agree on the call, check the depth by the facility's and the
    federation's rule, have spotters, land clear of the bases and the walls, and
    let the bases swim clear before the flyer comes down.
  - After a blow to the head: out of the water, and a medical check.
  - Breath-hold: never hyperventilate, never drill it alone or unsupervised,
    rest between tries, stop at the first sign of trouble.
  - This prices a routine; it does not say that anyone can safely swim it.
    Follow your federation's and the facility's rules, the law and medical
    advice.

Values that are from no rule book
  - 46 invented: panels duet-free execution, duet-free choreography, duet-free
    performance, duet-free transitions; kinds lift, hybrid; parts stand-feet,
    rise-high, half-turn, thrust-high, spin-720, split-hold, and 34 more

Values from <repository>/tables/data/kingfisher-2026
=== exit 0
=== run sed 's/routine "Harbour Lights"/routine "Heron Lake"/; s/expect 7.75/expect 8.00/' harbour-lights.sheet > heron.sheet && landdrill forecast harbour-lights.sheet --against heron.sheet --runs none | grep -A 3 'The chance'
=== output
The chance
  - to beat Heron Lake (heron.sheet): 47.5 %, about 5 times in 10; to be equal:
    under 0.1 %.

=== exit 0
