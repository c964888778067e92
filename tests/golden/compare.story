The duet's second element can be swum the safer way. Which gives more, why, and how far may the harder one slip?

=== copy examples/harbour-lights.sheet
=== run landdrill compare harbour-lights.sheet 2
=== output
Harbour Lights
==============
Duet, free routine - by the values of Kingfisher club league, edition 2026
46 values behind it: all invented.

2 Undertow, Hybrid
As written gives 2.3190 points more than "safer".

                  as declared          base mark        to expect
option      mark  difficulty   points   chance  points   points  scatter
as written  7.00        4.00  28.0000   21.5 %  3.5000  22.7325    10.10
safer       7.75        2.70  20.9250  3 %      3.8750  20.4135     2.97

The mark of as written is from the run of 2026-05-07.
The chance of the base mark of as written is from 1 of 2 runs and `slip` 12 %; a
`slip` counts as 6 runs.
On the base mark the difficulty credited is 0.50.

why as written gives more    change     total
expected with "safer"                222.9713
without spin-360            -7.5175
with spin-720              +11.2762
with split-hold             +3.0070
with join-foot              +3.0070
mark 7.75 -> 7.00           -2.9212
base chance 3 % -> 21.5 %   -4.5325
expected with as written    +2.3190  225.2903

As written, the harder one, stays the better one down to a mark of 6.50 (7.00 is
expected), or up to a chance of 30.96 % for its base mark (21.5 % is expected),
with all else as it is.

Points that as written gives more, by its mark and the chance of its base mark:
  mark     0 %    5 %   10 %   15 %   20 %  >21.5 %   30 %   50 %
  7.75  +10.59  +9.23  +7.87  +6.52  +5.16    +4.75  +2.45  -2.98
  7.50   +9.59  +8.27  +6.96  +5.65  +4.34    +3.94  +1.71  -3.54
  7.25   +8.59  +7.32  +6.05  +4.78  +3.51    +3.13  +0.97  -4.10
> 7.00   +7.59  +6.36  +5.14  +3.91  +2.69    +2.32  +0.24  -4.66
  6.75   +6.59  +5.41  +4.22  +3.04  +1.86    +1.51  -0.50  -5.23
  6.50   +5.59  +4.45  +3.31  +2.17  +1.04    +0.70  -1.24  -5.79
  6.25   +4.59  +3.49  +2.40  +1.31  +0.21    -0.12  -1.98  -6.35
> as expected now; where it says -, "safer" gives more.

How to read it
  - to expect: what the element brings on average, as declared and on the base
    mark by their chances, at the mark expected.
  - scatter: how far from that it usually lies (standard deviation), judges, day
    and base mark together.
  - total: the whole routine, its other elements as they are.

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
=== run landdrill compare harbour-lights.sheet undertow --runs none --spread 0.5 --day 0 --option 6=dimmed | head -18
=== output
Harbour Lights
==============
Duet, free routine - by the values of Kingfisher club league, edition 2026
29 values behind it: all invented.

2 Undertow, Hybrid
As written gives 5.5415 points more than "safer".

                  as declared          base mark       to expect
option      mark  difficulty   points  chance  points   points  scatter
as written  7.25        4.00  29.0000    12 %  3.6250  25.9550     8.30
safer       7.75        2.70  20.9250     3 %  3.8750  20.4135     2.98

On the base mark the difficulty credited is 0.50.

why as written gives more    change     total
expected with "safer"                219.0051
without spin-360            -7.5175
=== exit 0
