The model and each line, for whoever wants to know; from the sheet alone, and with spreads told by hand.

=== copy examples/solo-ripple.sheet
=== run landdrill forecast solo-ripple.sheet --full --spread 0.5 --day 0.25
=== output
Ripple
======
Solo, free routine - by the values of Kingfisher club league, edition 2026
33 values behind it: all invented.

                                               from bad to good
line                  mark  base mark    mean    5 %   25 %   50 %   75 %   95 %
1 First ripple        7.25     1.5 %    17.19   15.8   16.8   17.4   18.0   18.8
2 Reed bed            7.00   3 %        17.76   16.3   17.6   18.2   18.9   19.7
3 Whirl               6.75     7.5 %    21.48    3.5   21.8   23.0   23.8   24.9
4 Long shadow         7.50     0.75 %   16.40   15.2   16.0   16.5   17.1   17.8
5 Last ring           6.50    18.5 %    15.96    3.1   17.4   18.6   19.3   20.3
Choreography and      7.75              31.00   28.7   30.0   31.0   32.0   33.3
music
Performance           7.50              22.50   20.8   21.8   22.5   23.3   24.3
Transitions           7.25              21.75   20.0   21.0   21.8   22.5   23.5
--------------------------------------------------------------------------------
Total                                  164.05  145.2  157.5  166.0  171.6  178.3

One time in twenty the total is below 145.2, one time in twenty above 178.3;
half the time it lies between 157.5 and 171.6.
On average it is 164.05, and usually about 10.49 off that (standard deviation).
Only the means add up to the total: not everything goes badly on the same day.

Where this comes from
  - How far judges' marks scatter: 0.5 marks, as told.
  - Good and bad days: all marks shift together by 0.25 marks, as told.
  - Chance of the base mark (a `slip` counts as 6 runs): from 0 of 2 runs and
    `slip` 2 % (1); from 0 of 2 runs and `slip` 4 % (2); from 0 of 2 runs and
    `slip` 10 % (3); from 0 of 2 runs and `slip` 1 % (4); from 1 of 2 runs and
    `slip` 8 % (5).
  - Sync errors: none are expected.
  - Penalties: none are expected.
  - Adding up: on a grid of 0.008333 points; no total lies further than 0.000205
    points from where it truly is; over 25 kinds of day, for which no chance is
    off by more than 0.004 %.

How each line comes about
line                    mark  judges     mean  deviation   lowest  highest
1 First ripple          7.25     0.5  17.1934     1.8683   1.9583  24
2 Reed bed              7        0.5  17.7590     2.6613   1.8333  26
3 Whirl                 6.75     0.5  21.4819     5.2801   1.7083  34
4 Long shadow           7.5      0.5  16.4044     1.3385   2.0833  22
5 Last ring             6.5      0.5  15.9640     6.1260   1.5833  28.5167
Choreography and music  7.75     0.5  31.0000     1.3914  17.6667  40
Performance             7.5      0.5  22.5000     1.0436  12.5     30
Transitions             7.25     0.5  21.7500     1.0436  11.75    30

  - Each judge's mark is the expected mark, shifted by the day, and a bell curve
    of the scatter around it, on the nearest step of the scale and never outside
    it. Judges are independent of each other.
  - High and low are dropped and the kept marks added exactly, in every way in
    which the marks can fall; then points are worked out and rounded as the
    value set says.
  - Each element gets its base mark with its own chance, whatever the marks.
  - Sync errors come one by one, so many on average; each penalty comes with its
    chance.
  - The day shifts every mark of the performance by the same amount: a bell
    curve. Two sheets have days of their own.

Take care
  - Breath-hold: never hyperventilate, never drill it alone or unsupervised,
    rest between tries, stop at the first sign of trouble.
  - This prices a routine; it does not say that anyone can safely swim it.
    Follow your federation's and the facility's rules, the law and medical
    advice.

Values that are from no rule book
  - 33 invented: panels solo-free execution, solo-free choreography, solo-free
    performance, solo-free transitions; kinds hybrid; parts thrust-mid,
    twist-half, spin-360, leg-hold-8, leg-switch, split-open, split-walk,
    thrust-high, spin-up-360, arch-hold, arch-knee, side-hold, twist-bent,
    thrust-turn, legs-hold-4, spin-180; faults low-height, off-vertical,
    bent-knee, shake, splash, flat-split, flexed-foot, short-turn, travel,
    late-count, loose-body, drop-early

Values from <repository>/tables/data/kingfisher-2026
=== exit 0
=== run landdrill forecast solo-ripple.sheet --spreads set | grep -A 12 'Where this'
=== output
Where this comes from
  - How far judges' marks scatter: 0.35 marks, from spreads.csv line 2 (1, 2, 3,
    4, 5); 0.3 marks, from spreads.csv line 5 (Choreography and music); 0.3
    marks, from spreads.csv line 6 (Performance); 0.25 marks, from spreads.csv
    line 7 (Transitions).
  - Good and bad days: all marks shift together by 0.2 marks, from spreads.csv
    line 8.
  - Chance of the base mark (a `slip` counts as 6 runs): from 0 of 2 runs and
    `slip` 2 % (1); from 0 of 2 runs and `slip` 4 % (2); from 0 of 2 runs and
    `slip` 10 % (3); from 0 of 2 runs and `slip` 1 % (4); from 1 of 2 runs and
    `slip` 8 % (5).
  - Sync errors: none are expected.
  - Penalties: none are expected.
=== exit 0
