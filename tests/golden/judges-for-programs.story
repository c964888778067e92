The same for a spreadsheet and for another program. Sheets of one meet are taken together, for the same judges sat there.

=== copy examples/harbour-lights.sheet
=== file neighbour.sheet
routine "Neighbour"
event   duet-free
values  kingfisher-2026
element 1 lift "Heron"
  parts stand-feet, rise-high, half-turn
panel 2026-05-09 "Tarn Open"
  element 1: 7.00 7.25 7.25 7.50 7.25
=== file later.sheet
routine "Neighbour"
event   duet-free
values  kingfisher-2026
element 1 lift "Heron"
  parts stand-feet, rise-high, half-turn
panel 2026-06-13 "Osier Shield"
  element 1: 7.25 7.25 7.25 7.50 -
=== run landdrill judges harbour-lights.sheet neighbour.sheet --format csv | grep -e '^date' -e ',Execution,,' -e ',Execution,4,5*,'
=== output
date,meet,event,marked,judge,other,kind,number,value,low,high,rests_on,why_not
2026-05-09,Tarn Open,duet-free,Execution,,,,"icc(1,1)",0.786702,0.552005,0.943536,8,
2026-05-09,Tarn Open,duet-free,Execution,,,,"icc(2,1)",0.786235,0.548849,0.943558,8,
2026-05-09,Tarn Open,duet-free,Execution,,,,"icc(3,1)",0.777728,0.530436,0.94115,8,
2026-05-09,Tarn Open,duet-free,Execution,,,,"icc(1,k)",0.948563,0.860351,0.988173,8,
2026-05-09,Tarn Open,duet-free,Execution,,,,"icc(2,k)",0.948428,0.858812,0.988178,8,
2026-05-09,Tarn Open,duet-free,Execution,,,,"icc(3,k)",0.945931,0.849583,0.987648,8,
2026-05-09,Tarn Open,duet-free,Execution,,,,alpha_interval,0.767981,,,8,
2026-05-09,Tarn Open,duet-free,Execution,,,,alpha_ordinal,0.795938,,,8,
2026-05-09,Tarn Open,duet-free,Execution,,,,alpha_nominal,0.0837,,,8,
2026-05-09,Tarn Open,duet-free,Execution,,,,w,0.872864,,,8,
2026-05-09,Tarn Open,duet-free,Execution,,,,w_by_chance,0.000075,,,8,
2026-05-09,Tarn Open,duet-free,Execution,,,,rank_correlation,0.84108,0.639552,0.959748,8,
2026-05-09,Tarn Open,duet-free,Execution,4,,,marks,8,,,8,
2026-05-09,Tarn Open,duet-free,Execution,4,,,missing,0,,,8,
2026-05-09,Tarn Open,duet-free,Execution,4,,,mean,7.21875,,,8,
2026-05-09,Tarn Open,duet-free,Execution,4,,,bias,-0.0625,-0.37351,0.24851,8,
2026-05-09,Tarn Open,duet-free,Execution,4,,Lift,bias,0.104167,-1.071433,1.279766,3,
2026-05-09,Tarn Open,duet-free,Execution,4,,Hybrid,bias,-0.1625,-0.548965,0.223965,5,
2026-05-09,Tarn Open,duet-free,Execution,4,,,level,-0.0625,-0.725116,0.600116,8,
2026-05-09,Tarn Open,duet-free,Execution,4,,,spread,0.372012,,,8,
2026-05-09,Tarn Open,duet-free,Execution,4,,,dropped_high,2,,,8,
2026-05-09,Tarn Open,duet-free,Execution,4,,,dropped_low,3,,,8,
2026-05-09,Tarn Open,duet-free,Execution,4,,,dropped_by_chance,2.2,,,8,
2026-05-09,Tarn Open,duet-free,Execution,4,,,order,0.790364,0.193412,0.960236,8,
2026-05-09,Tarn Open,duet-free,Execution,4,5,,apart,-0.125,-0.527805,0.277805,8,
2026-05-09,Tarn Open,duet-free,Execution,4,5,Lift,apart,0,-1.643103,1.643103,3,
2026-05-09,Tarn Open,duet-free,Execution,4,5,Hybrid,apart,-0.2,-0.710066,0.310066,5,
2026-05-09,Tarn Open,duet-free,Execution,4,5,,lower_limit,-1.069352,-1.76703,-0.371673,8,
2026-05-09,Tarn Open,duet-free,Execution,4,5,,upper_limit,0.819352,0.121673,1.51703,8,
2026-05-09,Tarn Open,duet-free,Execution,4,5,,spearman,0.671093,-0.063706,0.934052,8,
2026-05-09,Tarn Open,duet-free,Execution,4,5,,kendall,0.565752,,,8,
2026-05-09,Tarn Open,duet-free,Execution,4,5,,kappa,0.3,,,8,
=== exit 0
=== run landdrill judges neighbour.sheet later.sheet --same-judges --format json | head -62
=== output
{
  "format": 1,
  "report": "judges",
  "meets": [
    {
      "date": null,
      "meet": null,
      "event": null,
      "event_title": null,
      "routines": [
        "Neighbour"
      ],
      "panels": 2,
      "views": [
        {
          "title": "Execution",
          "sentences": [],
          "warnings": [
            "Only 2 elements were marked: nothing is said about the judges before 5, since a single mark would decide it.",
            "1 missing mark counts for nothing here, whatever the set fills in for the score."
          ],
          "judges": [
            {
              "judge": 1,
              "marks": 2,
              "missing": 0,
              "mean": "7.125",
              "bias": {
                "value": "-0.197917",
                "low": "-1.653836",
                "high": "1.258003",
                "rests_on": 2,
                "why_not": null
              },
              "spread": "0.162045",
              "dropped_high": 0,
              "dropped_low": 1,
              "order": {
                "value": "1",
                "low": null,
                "high": null,
                "rests_on": 2,
                "why_not": null
              },
              "kinds": [],
              "level": {
                "value": "-0.197917",
                "low": "-24.513075",
                "high": "24.117242",
                "rests_on": 2,
                "why_not": null
              },
              "high_or_low": false,
              "dropped_by_chance": "0.65"
            },
            {
              "judge": 2,
              "marks": 2,
              "missing": 0,
              "mean": "7.25",
              "bias": {
                "value": "-0.041667",
=== exit 0
=== run landdrill judges neighbour.sheet later.sheet --same-judges | head -5
=== output
2 panels, taken as one panel of the same judges
  Neighbour

Execution: 2 elements, 5 judges

=== exit 0
=== run landdrill judges harbour-lights.sheet neighbour.sheet later.sheet | grep -A 4 '^[A-Z].*2026'
=== output
Tarn Open, 2026-05-09: Duet, free routine
  Harbour Lights, Neighbour

Execution: 8 elements, 5 judges
  - No judge marks clearly higher or lower than the others: what lies between
--
Osier Shield, 2026-06-13: Duet, free routine
  Neighbour

Execution: 1 element, 5 judges

=== exit 0
=== run landdrill values copy kingfisher-2026 sets/other >/dev/null && landdrill judges neighbour.sheet --values sets --set other | cmp <(landdrill judges neighbour.sheet) -
=== exit 0
=== run landdrill values import kingfisher-2026 --season club.season && landdrill judges neighbour.sheet --season club.season | cmp <(landdrill judges neighbour.sheet) -
=== output
kingfisher-2026: 229 rows are in club.season
=== exit 0
=== run landdrill book add club.season harbour-lights.sheet neighbour.sheet later.sheet >/dev/null
=== errors
landdrill: 7 added, 0 new versions, 1 already there
=== exit 0
=== run landdrill book judges club.season --colour never | cmp <(landdrill judges harbour-lights.sheet neighbour.sheet later.sheet) -
=== exit 0
=== run landdrill book judges club.season neighbour --from 2026-06-01 --full
=== output
Osier Shield, 2026-06-13: Duet, free routine
  Neighbour

Execution: 1 element, 5 judges

With care
  - Only 1 element was marked: nothing is said about the judges before 5, since
    a single mark would decide it.
  - 1 missing mark counts for nothing here, whatever the set fills in for the
    score.

Judge by judge
                     above or below the others     dropped
judge   marks  mean     by  may be                 high  low
1           1  7.25  -0.08          too few marks     0    0
2           1  7.25  -0.08          too few marks     0    0
3           1  7.25  -0.08          too few marks     0    0
4           1  7.50  +0.25          too few marks     1    0
5      0 of 1                       too few marks     0    0

Bias, spread and order of each judge
judge   bias  95 % interval  spread  order
1      -0.08
2      -0.08
3      -0.08
4      +0.25
5

Pairs, furthest apart first
judges   apart  95 % interval  Spearman  Kendall  kappa
1 and 4  -0.25                                     0.00
2 and 4  -0.25                                     0.00
3 and 4  -0.25                                     0.00
1 and 2   0.00
1 and 3   0.00
2 and 3   0.00

How far all of them agree

With care
  - There is no intraclass correlation: only one row was marked by every judge.
  - There is no Kendall's W: one row has no order.

Kendall's W           none  one row has no order
rank correlation      none  only one row was marked by every judge
Krippendorff's alpha  0.00  marks, by their distance; 1 is full agreement
                      0.00  by their order only
                      0.00  the very same mark only

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
=== run landdrill book judges club.season neighbour --event duet-free --until 2026-05-31 --same-judges --format csv | head -3
=== output
date,meet,event,marked,judge,other,kind,number,value,low,high,rests_on,why_not
,,,Execution,,,,"icc(1,1)",,,,0,only one row was marked by every judge
,,,Execution,,,,"icc(2,1)",,,,0,only one row was marked by every judge
=== exit 0
