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
1 First ripple        7.75     1.5 %    18.38   17.0   18.0   18.6   19.2   20.0
2 Reed bed            7.50   3 %        19.03   17.6   18.9   19.5   20.2   21.0
3 Whirl               7.25     7.5 %    23.07    3.7   23.5   24.7   25.5   26.6
4 Long shadow         8.00     0.75 %   17.50   16.3   17.1   17.6   18.2   18.9
5 Last ring           7.00    18.5 %    17.19    3.4   18.9   20.1   20.8   21.8
Choreography and      7.75              31.00   28.7   30.0   31.0   32.0   33.3
music
Performance           7.50              22.50   20.8   21.8   22.5   23.3   24.3
Transitions           7.25              21.75   20.0   21.0   21.8   22.5   23.5
--------------------------------------------------------------------------------
Total                                  170.42  150.6  163.5  172.8  178.1  184.9

One time in twenty the total is below 150.6, one time in twenty above 184.9;
half the time it lies between 163.5 and 178.1.
On average it is 170.42, and usually about 11.02 off that (standard deviation).
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
    points from where it truly is.

How each line comes about
line                    mark  judges     mean  deviation   lowest  highest
1 First ripple          7.75     0.5  18.3791     1.9725   2.1667       24
2 Reed bed              7.5      0.5  19.0275     2.8307   2.0417       26
3 Whirl                 7.25     0.5  23.0731     5.6536   1.9167       34
4 Long shadow           8        0.5  17.4980     1.3994   2.2917       22
5 Last ring             7        0.5  17.1920     6.5871   1.7917       29
Choreography and music  7.75     0.5  31.0000     1.3914  17.3333       40
Performance             7.5      0.5  22.5000     1.0436  12.25         30
Transitions             7.25     0.5  21.7500     1.0436  11.5          30

  - Each judge's mark is the expected mark, shifted by the day, and a bell curve
    of the scatter around it, on the nearest step of the scale and never outside
    it. Judges are independent of each other.
  - High and low are dropped and the kept marks added exactly, in every way in
    which the marks can fall; then points are worked out and rounded as the
    value set says.
  - Each element gets its base mark with its own chance, whatever the marks.
  - Sync errors come one by one, so many on average; each penalty comes with its
    chance.
  - The day shifts every mark of the performance by the same amount.

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
