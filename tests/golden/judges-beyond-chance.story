Who is named: a judge who is always four steps above the others is, though her difference has no scatter, and nobody is low
for it. Two of five who are away count for nothing, though the set fills their marks in for the score.

=== file heron.sheet
routine  "Heron"
event    duet-free
values   kingfisher-2026

element 1 lift "Heron"
  parts  stand-feet, rise-high, half-turn
element 2 hybrid "Otter"
  parts  thrust-high, spin-360
element 3 hybrid "Reed"
  parts  spin-360, split-hold
element 4 hybrid "Eel"
  parts  thrust-high, split-hold
element 5 lift "Gull"
  parts  stand-feet, rise-high

panel 2026-05-09 "Tarn Open"
  element 1: 7.00 7.25 6.75 7.00 8.00
  element 2: 6.50 6.25 6.75 6.50 7.50
  element 3: 7.50 7.50 7.50 7.50 8.50
  element 4: 8.00 8.50 7.50 8.00 9.00
  element 5: 7.25 7.25 7.25 7.25 8.25
=== run landdrill judges heron.sheet | sed '/^How to read/,$d'
=== output
Tarn Open, 2026-05-09: Duet, free routine
  Heron

Execution: 5 elements, 5 judges
  - Judge 5 marks 4 steps higher than the others, just as much on all 5
    elements.
  - The judges rank the elements much alike.
  - Look at these again together, where the marks lie furthest apart: 4 Eel
    (7.50 to 9.00).

Judge by judge
                    above or below the others             dropped
judge  marks  mean     by  may be                         high  low
1          5  7.25   0.00                  may be chance     0    0
2          5  7.35  +0.13  -0.96 to +1.23  may be chance     0    1
3          5  7.15  -0.13  -1.23 to +0.96  may be chance     0    2
4          5  7.25   0.00                  may be chance     0    0
5          5  8.25  +1.00  always so       higher            5    0

=== exit 0
=== run sed -E 's/^(  element .: .*) [0-9.]+ ([0-9.]+) [0-9.]+$/\1 - \2 -/' heron.sheet | landdrill judges - --full | sed -n '/^Execution/,/^Bias/p; /^How far/,/^How to read/p'
=== output
Execution: 5 elements, 5 judges
  - No judge marks clearly higher or lower than the others: what lies between
    them may be chance.
  - The judges rank the elements much alike.
  - Look at these again together, where the marks lie furthest apart: 4 Eel
    (8.00 to 8.50).

With care
  - Judge 3 marked nothing.
  - Judge 5 marked nothing.
  - 10 missing marks count for nothing here, whatever the set fills in for the
    score.

Judge by judge
                     above or below the others             dropped
judge   marks  mean     by  may be                         high  low
1           5  7.25  -0.05  -0.41 to +0.31  may be chance     0    0
2           5  7.35  +0.10  -0.61 to +0.81  may be chance     2    1
3      0 of 5                               too few marks     0    0
4           5  7.25  -0.05  -0.41 to +0.31  may be chance     0    0
5      0 of 5                               too few marks     0    0

Bias, spread and order of each judge
How far all of them agree
  - One judge's marks alone are a good to excellent guide to the elements
    (ICC(2,1) 0.94, from 0.76 to 0.99), the mean of all 3 is an excellent one
    (ICC(2,3) 0.98, from 0.91 to 1.00).

With care
  - W rests on 5 elements; 8 are wanted before its chance can be trusted, which
    is reckoned as if they were many.
  - The limits of agreement rest on 5 elements; 30 are wanted, for with these a
    limit can be off by 0.61 marks.

intraclass correlation      one judge  95 % interval  mean of 3  95 % interval
(1) other judges each time       0.94  0.77 to 0.99        0.98  0.91 to 1.00
(2) judges drawn from many       0.94  0.76 to 0.99        0.98  0.91 to 1.00
(3) just these judges            0.94  0.72 to 0.99        0.98  0.89 to 1.00

Kendall's W           0.99  1: all rank alike; 0: no order in common
                      0.02  how often chance alone ranks that alike
rank correlation      0.98  of two judges on average, 0.92 to 1.00
Krippendorff's alpha  0.93  marks, by their distance; 1 is full agreement
                      0.95  by their order only
                      0.55  the very same mark only

How to read it
=== exit 0
