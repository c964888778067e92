Seven judges of a real final, whose marks are published: who marks high, who is dropped, who agrees with whom. And a demo panel
with one judge missing, which marks too few aspects to say anything of those.

=== copy examples/springboard-2000.sheet
=== copy examples/harbour-lights.sheet
=== run landdrill judges springboard-2000.sheet
=== output
Semi-final and final, 2000-09-26: Springboard, 3 m
  Springboard final, 2000

Awards: 11 elements, 7 judges
  - Judge 4 marks a step higher than the others.
  - Judge 3 marks half a step lower than the others.
  - Judge 6 marks half a step lower than the others.
  - Judges 3 and 4 are a step apart.
  - Judges 4 and 7 are a step apart.
  - Judges 4 and 6 are a step apart.
  - Judge 4 scatters most around the others (standard deviation 0.52).
  - Judge 4 is dropped most often: 6 of 11 marks, 6 too high and 0 too low.
  - The judges rank the elements fairly alike (W 0.54).
  - One judge's marks alone are a poor guide to the elements (ICC(2,1) 0.46),
    the mean of all 7 is a good one (ICC(2,7) 0.86).
  - Mark for mark the judges agree too little to rely on one alone (alpha 0.43).
  - Judges 3 and 7 rank the elements most alike (Spearman 0.82, Kendall 0.77),
    judges 1 and 2 least (Spearman -0.08, Kendall -0.08).
  - Judges 3 and 7 come closest to giving the same mark (weighted kappa 0.74),
    judges 2 and 4 least (0.00).
  - On one of the elements judges 4 and 7 can be 1.81 marks apart (limits of
    agreement -0.81 to 1.81).

With care
  - The intraclass correlation rests on 11 elements; 30 are wanted, for with
    these ICC(2,1) may be anything from 0.24 to 0.75.
  - The limits of agreement rest on 11 elements; 30 are wanted, for with these a
    limit can be off by 0.78 marks.

Judge by judge
                                                   dropped
judge  marks  mean   bias  95 % interval   spread  high  low  order
1         11  8.27  +0.02  -0.22 to +0.25    0.36     0    1   0.51
2         11  8.32  +0.07  -0.21 to +0.35    0.42     2    0   0.27
3         11  8.05  -0.25  -0.43 to -0.07    0.27     0    0   0.84
4         11  8.59  +0.39  +0.04 to +0.73    0.52     6    0   0.27
5         11  8.36  +0.12  -0.11 to +0.35    0.35     2    0   0.62
6         11  8.14  -0.14  -0.28 to -0.01    0.20     0    0   0.85
7         11  8.09  -0.20  -0.41 to +0.02    0.32     0    0   0.83

The pairs furthest apart
judges   apart  95 % interval   Spearman  Kendall  kappa
3 and 4  -0.55  -0.93 to -0.16      0.31     0.26   0.24
4 and 7  +0.50  +0.05 to +0.95      0.16     0.15   0.14
4 and 6  +0.45  +0.18 to +0.73      0.61     0.55   0.29

How far all of them agree
intraclass correlation      one judge  95 % interval  mean of 7  95 % interval
(1) other judges each time       0.45  0.23 to 0.75        0.85  0.67 to 0.95
(2) judges drawn from many       0.46  0.24 to 0.75        0.86  0.68 to 0.95
(3) just these judges            0.51  0.28 to 0.79        0.88  0.73 to 0.96

Kendall's W                 0.54  1: all rank alike; 0: no order in common
                      under 0.01  how often chance alone ranks that alike
Krippendorff's alpha        0.43  marks, by their distance; 1 is full agreement
                            0.40  by their order only
                            0.16  the very same mark only

How to read it
  - bias: her marks above (+) or below (-) the mean of the other judges; spread:
    how much she scatters around them; dropped: how often her mark lay above or
    below all that counted; order: 1 where she ranks as the others do, 0 where
    there is nothing in common.
  - apart: + where the first of the two judges marks higher. Spearman and
    Kendall: 1 where both rank alike. kappa: 1 where both give the same marks, 0
    what chance gives; the further apart two marks, the more they count.
  - intraclass correlation: how much of what marks scatter is the swimming and
    not the judge; 1 all of it, 0 nothing. These are the forms (1,1) to (3,k) of
    Shrout and Fleiss (1979); (2) is the one for a panel drawn from a list of
    judges.
=== exit 0
=== run sed 's/^  element 3: 7.25/  element 3: -/' harbour-lights.sheet | landdrill judges - --colour never
=== output
Tarn Open, 2026-05-09: Duet, free routine
  Harbour Lights

Execution: 7 elements, 5 judges
  - No judge marks clearly higher or lower than the others.
  - Judge 4 scatters most around the others (standard deviation 0.37).
  - Judge 4 is dropped most often: 5 of 7 marks, 1 too high and 4 too low.
  - The judges rank the elements much alike (W 0.90).
  - One judge's marks alone are a good guide to the elements (ICC(2,1) 0.81),
    the mean of all 5 is an excellent one (ICC(2,5) 0.96).
  - Mark for mark the judges agree well enough for a first idea (alpha 0.79).
  - Judges 2 and 5 rank the elements most alike (Spearman 0.94, Kendall 0.89),
    judges 4 and 5 least (Spearman 0.76, Kendall 0.67).
  - Judges 2 and 5 come closest to giving the same mark (weighted kappa 0.81),
    judges 3 and 4 least (0.31).
  - On one of the elements judges 4 and 5 can be 1.15 marks apart (limits of
    agreement -1.15 to 0.79).

With care
  - W rests on 7 elements; 8 are wanted before its chance can be trusted, which
    is reckoned as if they were many.
  - The intraclass correlation rests on 7 elements; 30 are wanted, for with
    these ICC(2,1) may be anything from 0.57 to 0.96.
  - The limits of agreement rest on 6 elements; 30 are wanted, for with these a
    limit can be off by 0.79 marks.
  - 1 missing mark counts as the mean of the others, as the set says: the
    intraclass correlation and W look a little better for it.

Judge by judge
                                                    dropped
judge   marks  mean   bias  95 % interval   spread  high  low  order
1      6 of 7  7.21  -0.04  -0.16 to +0.08    0.12     0    0   1.00
2           7  7.32  +0.05  -0.14 to +0.24    0.21     0    0   0.89
3           7  7.29  +0.01  -0.27 to +0.28    0.30     2    1   0.91
4           7  7.18  -0.13  -0.47 to +0.22    0.37     1    4   0.90
5           7  7.36  +0.10  -0.16 to +0.36    0.28     2    0   0.85

The pairs furthest apart
judges   apart  95 % interval   Spearman  Kendall  kappa
4 and 5  -0.18  -0.64 to +0.28      0.76     0.67   0.32
2 and 4  +0.14  -0.23 to +0.52      0.87     0.76   0.41
3 and 4  +0.11  -0.31 to +0.53      0.89     0.81   0.31

How far all of them agree
intraclass correlation      one judge  95 % interval  mean of 5  95 % interval
(1) other judges each time       0.81  0.57 to 0.96        0.96  0.87 to 0.99
(2) judges drawn from many       0.81  0.57 to 0.96        0.96  0.87 to 0.99
(3) just these judges            0.80  0.55 to 0.96        0.95  0.86 to 0.99

Kendall's W                 0.90  1: all rank alike; 0: no order in common
                      under 0.01  how often chance alone ranks that alike
Krippendorff's alpha        0.79  marks, by their distance; 1 is full agreement
                            0.80  by their order only
                            0.07  the very same mark only

The whole routine: 3 aspects, 5 judges

With care
  - Only 3 aspects were marked: nothing is said about the judges before 5, since
    a single mark would decide it.

Judge by judge
                                                   dropped
judge  marks  mean   bias  95 % interval   spread  high  low  order
1          3  7.42  -0.08  -0.44 to +0.28    0.14     0    0   1.00
2          3  7.67  +0.23  -0.13 to +0.59    0.14     2    0   1.00
3          3  7.42  -0.08  -0.58 to +0.42    0.20     0    1   0.87
4          3  7.50  +0.02  -0.83 to +0.88    0.34     1    1   0.50
5          3  7.42  -0.08  -0.44 to +0.28    0.14     0    0   1.00

How to read it
  - bias: her marks above (+) or below (-) the mean of the other judges; spread:
    how much she scatters around them; dropped: how often her mark lay above or
    below all that counted; order: 1 where she ranks as the others do, 0 where
    there is nothing in common.
  - apart: + where the first of the two judges marks higher. Spearman and
    Kendall: 1 where both rank alike. kappa: 1 where both give the same marks, 0
    what chance gives; the further apart two marks, the more they count.
  - intraclass correlation: how much of what marks scatter is the swimming and
    not the judge; 1 all of it, 0 nothing. These are the forms (1,1) to (3,k) of
    Shrout and Fleiss (1979); (2) is the one for a panel drawn from a list of
    judges.
=== exit 0
=== run landdrill judges harbour-lights.sheet --full
=== output
Tarn Open, 2026-05-09: Duet, free routine
  Harbour Lights

Execution: 7 elements, 5 judges
  - No judge marks clearly higher or lower than the others.
  - Judge 4 scatters most around the others (standard deviation 0.37).
  - Judge 4 is dropped most often: 4 of 7 marks, 1 too high and 3 too low.
  - The judges rank the elements much alike (W 0.90).
  - One judge's marks alone are a good guide to the elements (ICC(2,1) 0.80),
    the mean of all 5 is an excellent one (ICC(2,5) 0.95).
  - Mark for mark the judges agree well enough for a first idea (alpha 0.78).
  - Judges 2 and 5 rank the elements most alike (Spearman 0.94, Kendall 0.89),
    judges 4 and 5 least (Spearman 0.76, Kendall 0.67).
  - Judges 2 and 5 come closest to giving the same mark (weighted kappa 0.81),
    judges 3 and 4 least (0.31).
  - On one of the elements judges 4 and 5 can be 1.15 marks apart (limits of
    agreement -1.15 to 0.79).

With care
  - W rests on 7 elements; 8 are wanted before its chance can be trusted, which
    is reckoned as if they were many.
  - The intraclass correlation rests on 7 elements; 30 are wanted, for with
    these ICC(2,1) may be anything from 0.56 to 0.96.
  - The limits of agreement rest on 7 elements; 30 are wanted, for with these a
    limit can be off by 0.79 marks.

Judge by judge
                                                   dropped
judge  marks  mean   bias  95 % interval   spread  high  low  order
1          7  7.21  -0.07  -0.19 to +0.05    0.13     0    0   0.99
2          7  7.32  +0.06  -0.13 to +0.25    0.20     0    0   0.89
3          7  7.29  +0.02  -0.26 to +0.29    0.30     2    1   0.91
4          7  7.18  -0.12  -0.46 to +0.22    0.37     1    3   0.90
5          7  7.36  +0.11  -0.16 to +0.37    0.29     2    0   0.85

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
intraclass correlation      one judge  95 % interval  mean of 5  95 % interval
(1) other judges each time       0.80  0.56 to 0.96        0.95  0.86 to 0.99
(2) judges drawn from many       0.80  0.56 to 0.96        0.95  0.86 to 0.99
(3) just these judges            0.80  0.54 to 0.95        0.95  0.85 to 0.99

Kendall's W                 0.90  1: all rank alike; 0: no order in common
                      under 0.01  how often chance alone ranks that alike
Krippendorff's alpha        0.78  marks, by their distance; 1 is full agreement
                            0.80  by their order only
                            0.08  the very same mark only

The whole routine: 3 aspects, 5 judges

With care
  - Only 3 aspects were marked: nothing is said about the judges before 5, since
    a single mark would decide it.

Judge by judge
                                                   dropped
judge  marks  mean   bias  95 % interval   spread  high  low  order
1          3  7.42  -0.08  -0.44 to +0.28    0.14     0    0   1.00
2          3  7.67  +0.23  -0.13 to +0.59    0.14     2    0   1.00
3          3  7.42  -0.08  -0.58 to +0.42    0.20     0    1   0.87
4          3  7.50  +0.02  -0.83 to +0.88    0.34     1    1   0.50
5          3  7.42  -0.08  -0.44 to +0.28    0.14     0    0   1.00

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
Krippendorff's alpha  0.58  marks, by their distance; 1 is full agreement
                      0.60  by their order only
                      0.09  the very same mark only

How to read it
  - bias: her marks above (+) or below (-) the mean of the other judges; spread:
    how much she scatters around them; dropped: how often her mark lay above or
    below all that counted; order: 1 where she ranks as the others do, 0 where
    there is nothing in common.
  - apart: + where the first of the two judges marks higher. Spearman and
    Kendall: 1 where both rank alike. kappa: 1 where both give the same marks, 0
    what chance gives; the further apart two marks, the more they count.
  - intraclass correlation: how much of what marks scatter is the swimming and
    not the judge; 1 all of it, 0 nothing. These are the forms (1,1) to (3,k) of
    Shrout and Fleiss (1979); (2) is the one for a panel drawn from a list of
    judges.
  - limits of agreement: about 95 of 100 differences of the two judges lie
    between them.
=== exit 0
