Seven judges of a real final, whose marks are published: with so many looked at, nobody is named, for chance would do. And a demo
panel with one judge missing, which marks too few aspects to say anything of those.

=== copy examples/springboard-2000.sheet
=== copy examples/harbour-lights.sheet
=== run landdrill judges springboard-2000.sheet
=== output
Semi-final and final, 2000-09-26: Springboard, 3 m
  Springboard final, 2000

Awards: 11 elements, 7 judges
  - No judge marks clearly higher or lower than the others: what lies between
    them may be chance.
  - The judges rank the elements more alike than chance would; how much more is
    open.
  - Look at these again together, where the marks lie furthest apart: 2
    Semi-final, dive 2 (7.00 to 8.50); 11 Final, dive 6 (7.50 to 9.00).

Judge by judge
                    above or below the others             dropped
judge  marks  mean     by  may be                         high  low
1         11  8.27  +0.02  -0.42 to +0.45  may be chance     0    1
2         11  8.32  +0.07  -0.45 to +0.59  may be chance     2    0
3         11  8.05  -0.25  -0.58 to +0.08  may be chance     0    0
4         11  8.59  +0.39  -0.25 to +1.03  may be chance     6    0
5         11  8.36  +0.12  -0.31 to +0.55  may be chance     2    0
6         11  8.14  -0.14  -0.39 to +0.10  may be chance     0    0
7         11  8.09  -0.20  -0.59 to +0.20  may be chance     0    0

How to read it
  - above or below the others: how far her marks lie above (+) or below (-) the
    mean of the other judges, and between what that may really lie. Where 0 lies
    between, it may be chance, and she is not named. Who is named is left out of
    the others from then on.
  - What may be is wide enough for all judges and kinds of element that are
    looked at: of 20 meets whose judges mark alike, about one at most has
    somebody named.
  - dropped: how often her mark lay above or below all that counted.
=== exit 0
=== run sed 's/^  element 3: 7.25/  element 3: -/' harbour-lights.sheet | landdrill judges - --colour never
=== output
Tarn Open, 2026-05-09: Duet, free routine
  Harbour Lights

Execution: 7 elements, 5 judges
  - No judge marks clearly higher or lower than the others: what lies between
    them may be chance.
  - The judges rank the elements fairly alike.
  - Look at these again together, where the marks lie furthest apart: 1 Lantern
    (7.00 to 7.75); 6 Beacon (6.25 to 7.00).

With care
  - 1 missing mark counts for nothing here, whatever the set fills in for the
    score.

Judge by judge
                     above or below the others             dropped
judge   marks  mean     by  may be                         high  low
1      6 of 7  7.21  -0.04  -0.34 to +0.26  may be chance     0    0
2           7  7.32  +0.05  -0.37 to +0.48  may be chance     0    0
3           7  7.29  +0.01  -0.61 to +0.63  may be chance     2    1
4           7  7.18  -0.13  -0.91 to +0.65  may be chance     1    4
5           7  7.36  +0.10  -0.48 to +0.68  may be chance     2    0

The whole routine: 3 aspects, 5 judges

With care
  - Only 3 aspects were marked: nothing is said about the judges before 5, since
    a single mark would decide it.

Judge by judge
                    above or below the others             dropped
judge  marks  mean     by  may be                         high  low
1          3  7.42  -0.08  -1.60 to +1.43  too few marks     0    0
2          3  7.67  +0.23  -1.29 to +1.75  too few marks     2    0
3          3  7.42  -0.08  -2.20 to +2.03  too few marks     0    1
4          3  7.50  +0.02  -3.60 to +3.64  too few marks     1    1
5          3  7.42  -0.08  -1.60 to +1.43  too few marks     0    0

How to read it
  - above or below the others: how far her marks lie above (+) or below (-) the
    mean of the other judges, and between what that may really lie. Where 0 lies
    between, it may be chance, and she is not named. Who is named is left out of
    the others from then on.
  - What may be is wide enough for all judges and kinds of element that are
    looked at: of 20 meets whose judges mark alike, about one at most has
    somebody named.
  - dropped: how often her mark lay above or below all that counted.
=== exit 0
=== run landdrill judges harbour-lights.sheet --full
=== output
Tarn Open, 2026-05-09: Duet, free routine
  Harbour Lights

Execution: 7 elements, 5 judges
  - No judge marks clearly higher or lower than the others: what lies between
    them may be chance.
  - The judges rank the elements fairly alike.
  - Look at these again together, where the marks lie furthest apart: 1 Lantern
    (7.00 to 7.75); 6 Beacon (6.25 to 7.00).

Judge by judge
                    above or below the others             dropped
judge  marks  mean     by  may be                         high  low
1          7  7.21  -0.07  -0.35 to +0.20  may be chance     0    0
2          7  7.32  +0.06  -0.36 to +0.49  may be chance     0    0
3          7  7.29  +0.02  -0.60 to +0.64  may be chance     2    1
4          7  7.18  -0.12  -0.88 to +0.65  may be chance     1    3
5          7  7.36  +0.11  -0.49 to +0.70  may be chance     2    0

Bias, spread and order of each judge
judge   bias  95 % interval   spread  order
1      -0.07  -0.19 to +0.05    0.13   0.99
2      +0.06  -0.13 to +0.25    0.20   0.89
3      +0.02  -0.26 to +0.29    0.30   0.91
4      -0.12  -0.46 to +0.22    0.37   0.90
5      +0.11  -0.16 to +0.37    0.29   0.85

Bias by kind of element
judge  kind    marks   bias  95 % interval
1      Lift        2   0.00  -1.59 to +1.59
1      Hybrid      5  -0.10  -0.25 to +0.05
2      Lift        2   0.00  -2.38 to +2.38
2      Hybrid      5  +0.09  -0.17 to +0.34
3      Lift        2  -0.16  -0.55 to +0.24
3      Hybrid      5  +0.09  -0.33 to +0.50
4      Lift        2   0.00  -5.56 to +5.56
4      Hybrid      5  -0.16  -0.55 to +0.22
5      Lift        2  +0.16  -4.21 to +4.52
5      Hybrid      5  +0.09  -0.22 to +0.40

Pairs, furthest apart first
judges   apart  95 % interval   Spearman  Kendall  kappa
4 and 5  -0.18  -0.64 to +0.28      0.76     0.67   0.32
1 and 5  -0.14  -0.44 to +0.15      0.86     0.75   0.53
2 and 4  +0.14  -0.23 to +0.52      0.87     0.76   0.41
1 and 2  -0.11  -0.33 to +0.12      0.90     0.77   0.55
3 and 4  +0.11  -0.31 to +0.53      0.89     0.81   0.31
1 and 3  -0.07  -0.33 to +0.19      0.93     0.82   0.59
3 and 5  -0.07  -0.39 to +0.25      0.84     0.77   0.49
1 and 4  +0.04  -0.17 to +0.24      0.93     0.90   0.70
2 and 3  +0.04  -0.28 to +0.35      0.81     0.68   0.51
2 and 5  -0.04  -0.20 to +0.12      0.94     0.89   0.81

Limits of agreement of two judges (Bland-Altman)
judges   lower  95 % interval   upper  95 % interval
4 and 5  -1.15  -1.94 to -0.36  +0.79  0.00 to +1.58
1 and 5  -0.77  -1.28 to -0.26  +0.48  -0.03 to +0.99
2 and 4  -0.65  -1.30 to 0.00   +0.94  +0.29 to +1.58
1 and 2  -0.59  -0.98 to -0.19  +0.37  -0.02 to +0.76
3 and 4  -0.78  -1.51 to -0.06  +1.00  +0.27 to +1.72
1 and 3  -0.62  -1.06 to -0.17  +0.47  +0.03 to +0.92
3 and 5  -0.75  -1.30 to -0.19  +0.60  +0.05 to +1.16
1 and 4  -0.41  -0.77 to -0.04  +0.48  +0.12 to +0.84
2 and 3  -0.62  -1.16 to -0.08  +0.69  +0.16 to +1.23
2 and 5  -0.37  -0.65 to -0.10  +0.30  +0.03 to +0.58

How far all of them agree
  - One judge's marks alone are a moderate to excellent guide to the elements
    (ICC(2,1) 0.80, from 0.56 to 0.96), the mean of all 5 is a good to excellent
    one (ICC(2,5) 0.95, from 0.86 to 0.99).

With care
  - W rests on 7 elements; 8 are wanted before its chance can be trusted, which
    is reckoned as if they were many.
  - The limits of agreement rest on 7 elements; 30 are wanted, for with these a
    limit can be off by 0.79 marks.

intraclass correlation      one judge  95 % interval  mean of 5  95 % interval
(1) other judges each time       0.80  0.56 to 0.96        0.95  0.86 to 0.99
(2) judges drawn from many       0.80  0.56 to 0.96        0.95  0.86 to 0.99
(3) just these judges            0.80  0.54 to 0.95        0.95  0.85 to 0.99

Kendall's W                 0.90  1: all rank alike; 0: no order in common
                      under 0.01  how often chance alone ranks that alike
rank correlation            0.87  of two judges on average, 0.68 to 0.97
Krippendorff's alpha        0.78  marks, by their distance; 1 is full agreement
                            0.80  by their order only
                            0.08  the very same mark only

The whole routine: 3 aspects, 5 judges

With care
  - Only 3 aspects were marked: nothing is said about the judges before 5, since
    a single mark would decide it.

Judge by judge
                    above or below the others             dropped
judge  marks  mean     by  may be                         high  low
1          3  7.42  -0.08  -1.60 to +1.43  too few marks     0    0
2          3  7.67  +0.23  -1.29 to +1.75  too few marks     2    0
3          3  7.42  -0.08  -2.20 to +2.03  too few marks     0    1
4          3  7.50  +0.02  -3.60 to +3.64  too few marks     1    1
5          3  7.42  -0.08  -1.60 to +1.43  too few marks     0    0

Bias, spread and order of each judge
judge   bias  95 % interval   spread  order
1      -0.08  -0.44 to +0.28    0.14   1.00
2      +0.23  -0.13 to +0.59    0.14   1.00
3      -0.08  -0.58 to +0.42    0.20   0.87
4      +0.02  -0.83 to +0.88    0.34   0.50
5      -0.08  -0.44 to +0.28    0.14   1.00

Pairs, furthest apart first
judges   apart  95 % interval   Spearman  Kendall  kappa
1 and 2  -0.25                      1.00     1.00   0.40
2 and 3  +0.25  -0.37 to +0.87      0.87     0.82   0.31
2 and 5  +0.25                      1.00     1.00   0.40
2 and 4  +0.17  -0.78 to +1.12      0.50     0.33   0.00
1 and 4  -0.08  -1.03 to +0.87      0.50     0.33   0.18
3 and 4  -0.08  -0.80 to +0.63      0.00     0.00  -0.29
4 and 5  +0.08  -0.87 to +1.03      0.50     0.33   0.18
1 and 3   0.00  -0.62 to +0.62      0.87     0.82   0.40
1 and 5   0.00                      1.00     1.00   1.00
3 and 5   0.00  -0.62 to +0.62      0.87     0.82   0.40

Limits of agreement of two judges (Bland-Altman)
judges   lower  95 % interval   upper  95 % interval
1 and 2  -0.25                  -0.25
2 and 3  -0.24  -1.32 to +0.84  +0.74  -0.34 to +1.82
2 and 5  +0.25                  +0.25
2 and 4  -0.58  -2.22 to +1.06  +0.92  -0.73 to +2.56
1 and 4  -0.83  -2.47 to +0.81  +0.67  -0.98 to +2.31
3 and 4  -0.65  -1.89 to +0.59  +0.48  -0.76 to +1.72
4 and 5  -0.67  -2.31 to +0.98  +0.83  -0.81 to +2.47
1 and 3  -0.49  -1.57 to +0.59  +0.49  -0.59 to +1.57
1 and 5   0.00                   0.00
3 and 5  -0.49  -1.57 to +0.59  +0.49  -0.59 to +1.57

How far all of them agree

intraclass correlation      one judge  95 % interval  mean of 5  95 % interval
(1) other judges each time       0.66  0.18 to 0.99        0.91  0.52 to 1.00
(2) judges drawn from many       0.66  0.18 to 0.99        0.91  0.52 to 1.00
(3) just these judges            0.66  0.13 to 0.99        0.91  0.43 to 1.00

Kendall's W           0.77  1: all rank alike; 0: no order in common
                      0.02  how often chance alone ranks that alike
rank correlation      0.71  of two judges on average, 0.19 to 0.99
Krippendorff's alpha  0.58  marks, by their distance; 1 is full agreement
                      0.60  by their order only
                      0.09  the very same mark only

How to read it
  - above or below the others: how far her marks lie above (+) or below (-) the
    mean of the other judges, and between what that may really lie. Where 0 lies
    between, it may be chance, and she is not named. Who is named is left out of
    the others from then on.
  - What may be is wide enough for all judges and kinds of element that are
    looked at: of 20 meets whose judges mark alike, about one at most has
    somebody named.
  - dropped: how often her mark lay above or below all that counted.
  - bias: her marks against the mean of all other judges, with an interval for
    one judge looked at by herself: one in 20 misses the truth. spread: how much
    she scatters around them. order: 1 where she ranks as the others do, 0 where
    there is nothing in common.
  - apart: + where the first of the two judges marks higher; the interval is for
    one pair looked at by itself, so of many pairs some are off 0 by chance.
    Spearman and Kendall: 1 where both rank alike. kappa: 1 where both give the
    same marks, 0 what chance gives; the further apart two marks, the more they
    count.
  - limits of agreement: of this one pair; where there are many lines, about 19
    of 20 differences of the two judges lie between them and one in 20 outside.
  - intraclass correlation: how much of what marks scatter is the swimming and
    not the judge; 1 all of it, 0 nothing. These are the forms (1,1) to (3,k) of
    Shrout and Fleiss (1979); (2) is the one for a panel drawn from a list of
    judges. Poor is below 0.5, moderate to 0.75, good to 0.9 (Koo and Li 2016).
=== exit 0
