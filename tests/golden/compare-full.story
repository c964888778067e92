Part by part: what each part adds, and what dropping or exchanging it does; and how the lines come about.

=== file solo.sheet
routine "Ripple"
event   solo-free
values  kingfisher-2026
element 1 hybrid "Eddy"
  parts  thrust-mid, spin-180, split-hold
  expect 7.5
  slip   4%
  option "with a full spin"
    parts  thrust-mid, spin-360, split-hold
    expect 7
    slip   15%
impression choreography 7, performance 7, transitions 7
=== run landdrill compare solo.sheet --full
=== output
Ripple
======
Solo, free routine - by the values of Kingfisher club league, edition 2026
14 values behind it: all invented.

1 Eddy, Hybrid
"with a full spin" gives 0.2550 points more than as written.

                        as declared          base mark       to expect
option            mark  difficulty   points  chance  points   points  scatter
as written        7.50        2.00  15.0000     4 %  3.7500  14.5500     2.26
with a full spin  7.00        2.40  16.8000    15 %  3.5000  14.8050     4.79

On the base mark the difficulty credited is 0.50.

why "with a full spin" gives more   change    total
expected with as written                    84.5500
without spin-180                   -4.3200
with spin-360                      +7.2000
mark 7.50 -> 7.00                  -1.1620
base chance 4 % -> 15 %            -1.4630
expected with "with a full spin"   +0.2550  84.8050

"with a full spin", the harder one, stays the better one down to a mark of 7.00
(7.00 is expected), or up to a chance of 16.91 % for its base mark (15 % is
expected), with all else as it is.

Points that "with a full spin" gives more, by its mark and the chance of its
base mark:
  mark    0 %    5 %   10 %  >15 %   20 %   30 %   50 %
  7.75  +4.05  +3.31  +2.58  +1.84  +1.11  -0.37  -3.31
  7.50  +3.45  +2.74  +2.03  +1.31  +0.60  -0.83  -3.68
  7.25  +2.85  +2.16  +1.47  +0.78  +0.10  -1.28  -4.04
> 7.00  +2.25  +1.59  +0.92  +0.26  -0.41  -1.74  -4.40
  6.75  +1.65  +1.01  +0.37  -0.27  -0.92  -2.20  -4.76
  6.50  +1.05  +0.43  -0.19  -0.80  -1.42  -2.66  -5.13
  6.25  +0.45  -0.14  -0.74  -1.33  -1.93  -3.11  -5.49
> as expected now; where it says -, as written gives more.

Part by part: as written
part        adds  without it  next easier      points  next harder    points
thrust-mid  0.60     -4.3200  thrust-one-leg  -0.7200  thrust-flick  +1.4400
spin-180    0.60     -4.3200  -                        spin-up-180   +1.4400
split-hold  0.50     -3.6000  arch-hold       -0.7200  split-open    +0.7200

chance of the base mark 4 %, from `slip` in the sheet; (100 - 4) % x 15.0000 + 4
% x 3.7500 = 14.5500.
element 1 Eddy: 15.0000
  = (22.5 / 3) x 2.00 x 1, rounded half-up to 4 places
  from panels.csv solo-free execution, line 2 [1]
  declared difficulty: 2.00
    = base + sum(parts) + 0.1 * max(0, families - 2) = 0.5 + 1.4 + 0.1 * max(0,
      3 - 2)
    from kinds.csv hybrid, line 2 [1]
    part thrust-mid: 0.50 (Thrust, water at mid-thigh)
      from parts.csv line 4 [1]
    part spin-180: 0.50 (Spin down through 180 degrees)
      from parts.csv line 10 [1]
    part split-hold: 0.40 (Split, held)
      from parts.csv line 33 [1]
  mark: 7.50 (expected on the sheet)
    from panels.csv solo-free execution, line 2 [1]
  weight: 1
    from panels.csv solo-free execution, line 2 [1]

Where the values of Kingfisher club league are from
  [1] invented: invented for the Kingfisher demo league

Part by part: with a full spin
part        adds  without it  next easier      points  next harder    points
thrust-mid  0.60     -3.5700  thrust-one-leg  -0.5950  thrust-flick  +1.1900
spin-360    1.00     -5.9500  spin-bent       -0.5950  spin-open     +1.1900
split-hold  0.50     -2.9750  arch-hold       -0.5950  split-open    +0.5950

chance of the base mark 15 %, from `slip` in the sheet; (100 - 15) % x 16.8000 +
15 % x 3.5000 = 14.8050.
element 1 Eddy: 16.8000
  = (21 / 3) x 2.40 x 1, rounded half-up to 4 places
  from panels.csv solo-free execution, line 2 [1]
  declared difficulty: 2.40
    = base + sum(parts) + 0.1 * max(0, families - 2) = 0.5 + 1.8 + 0.1 * max(0,
      3 - 2)
    from kinds.csv hybrid, line 2 [1]
    part thrust-mid: 0.50 (Thrust, water at mid-thigh)
      from parts.csv line 4 [1]
    part spin-360: 0.90 (Spin down through 360 degrees)
      from parts.csv line 11 [1]
    part split-hold: 0.40 (Split, held)
      from parts.csv line 33 [1]
  mark: 7.00 (expected on the sheet)
    from panels.csv solo-free execution, line 2 [1]
  weight: 1
    from panels.csv solo-free execution, line 2 [1]

Where the values of Kingfisher club league are from
  [1] invented: invented for the Kingfisher demo league

adds: to the declared difficulty. Points, without it or with the next part of
its family instead: what the expected total changes by, at the same mark and the
same chance of the base mark.

How to read it
  - to expect: what the element brings on average, as declared and on the base
    mark by their chances, at the mark expected.
  - scatter: how far from that it usually lies (standard deviation), judges, day
    and base mark together.
  - total: the whole routine, its other elements as they are.

What the rules would object to
  - line 2: found 1 hybrid element; expected from 5 to 6 in solo-free
  - line 2: found 1 element; expected from 5 to 6 in solo-free

Values that are from no rule book
  - 14 invented: spreads judges, judges choreography, judges performance, judges
    transitions, day; panels solo-free execution, solo-free choreography,
    solo-free performance, solo-free transitions; kinds hybrid; parts
    thrust-mid, spin-180, split-hold, spin-360

Values from <repository>/tables/data/kingfisher-2026
=== exit 0
