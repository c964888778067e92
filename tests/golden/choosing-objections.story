Who chooses sees what the rules object to, in the words of `score`, unless the choice repairs it; and an option that breaks a limit is marked where options are compared.

=== file ladder.sheet
routine "Ladder"
event   duet-free
values  kingfisher-2026
swimmers 3
element 1 hybrid "Rungs"
  parts  thrust-mid, spin-180, split-hold
  expect 7.50
  option "five at once"  # the league allows four thrusts in one element
    parts  thrust-mid x2, thrust-high, thrust-top, thrust-low, spin-360
    expect 7.50
  option "no spin"
    parts  thrust-mid, thrust-low, split-hold
    expect 7.75
impression choreography 7.50, performance 7.75, transitions 7.25
=== run landdrill score ladder.sheet | sed -n '/^What the rules/,/^$/p'
=== output
What the rules would object to
  - line 2: found 1 hybrid element; expected from 4 to 5 in duet-free
  - line 2: found 0 hybrid elements with a part of connections; expected from 1
    to 3 in duet-free
  - line 2: found 0 lift elements; expected from 1 to 2 in duet-free
  - line 2: found 1 element; expected from 6 to 7 in duet-free
  - line 4: found 3 swimmers; expected exactly 2 in duet-free
  - line 8: found 5 parts of thrusts in one element; expected at most 4

=== exit 0
=== run landdrill train ladder.sheet | sed -n '/^What the rules/,/^$/p'
=== output
What the rules would object to
  - line 2: found 1 hybrid element; expected from 4 to 5 in duet-free
  - line 2: found 0 hybrid elements with a part of connections; expected from 1
    to 3 in duet-free
  - line 2: found 0 lift elements; expected from 1 to 2 in duet-free
  - line 2: found 1 element; expected from 6 to 7 in duet-free
  - line 4: found 3 swimmers; expected exactly 2 in duet-free

=== exit 0
=== run landdrill train ladder.sheet --option "1=no spin" | sed -n '/^What the rules/,/^$/p'
=== output
What the rules would object to
  - line 2: found 1 hybrid element; expected from 4 to 5 in duet-free
  - line 2: found 0 hybrid elements with a part of connections; expected from 1
    to 3 in duet-free
  - line 2: found 0 lift elements; expected from 1 to 2 in duet-free
  - line 2: found 1 element; expected from 6 to 7 in duet-free
  - line 4: found 3 swimmers; expected exactly 2 in duet-free
  - found 0 hybrid elements with a part of spins; expected at least 1 in
    duet-free

=== exit 0
=== run landdrill forecast ladder.sheet --format json | sed -n '/"objections"/,/"code"/p'
=== output
  "objections": {
    "errors": 0,
    "warnings": 5,
    "doubts": 0,
    "messages": [
      {
        "severity": "warning",
        "code": "quota",
=== exit 0
=== run landdrill plan ladder.sheet --ignore-limits | sed -n '/^no./,/^$/p; /^What the rules/,/^$/p'
=== output
no.  element        swim it                        difficulty  expected
> 1  Rungs, Hybrid  five at once (not as written)        4.60   34.5000

What the rules would object to
  - line 2: found 1 hybrid element; expected from 4 to 5 in duet-free
  - line 2: found 0 hybrid elements with a part of connections; expected from 1
    to 3 in duet-free
  - line 2: found 0 lift elements; expected from 1 to 2 in duet-free
  - line 2: found 1 element; expected from 6 to 7 in duet-free
  - line 4: found 3 swimmers; expected exactly 2 in duet-free
  - line 8: found 5 parts of thrusts in one element; expected at most 4

=== exit 0
=== run landdrill compare ladder.sheet 1 | sed -n '/^"five/,/^why/p; /^What the rules/,/^$/p'
=== output
"five at once" gives 19.5000 points more than as written.
As written gives 1.8250 points more than "no spin".

                      as declared          base mark       to expect
option          mark  difficulty   points  chance  points   points  scatter
as written      7.50        2.00  15.0000     0 %  3.7500  15.0000     0.53
! five at once  7.50        4.60  34.5000     0 %  3.7500  34.5000     1.21
no spin         7.75        1.70  13.1750     0 %  3.8750  13.1750     0.45

! "five at once" breaks a limit, so a plan leaves it out: 5 parts of thrusts in
  one element, but at most 4 (families.csv line 2).
On the base mark the difficulty credited is 0.50.

why "five at once" gives more    change     total
"five at once", the harder one, stays the better one down to a mark of 3.50
(7.50 is expected), or up to a chance of 63.41 % for its base mark (0 % is
expected), with all else as it is.

Points that "five at once" gives more, by its mark and the chance of its base
mark:
  mark    >0 %     5 %    10 %    15 %    20 %    30 %   50 %
  8.25  +22.95  +21.26  +19.57  +17.88  +16.19  +12.80  +6.04
  8.00  +21.80  +20.16  +18.52  +16.88  +15.24  +11.96  +5.40
  7.75  +20.65  +19.06  +17.47  +15.88  +14.30  +11.12  +4.76
> 7.50  +19.50  +17.96  +16.43  +14.89  +13.35  +10.28  +4.13
  7.25  +18.35  +16.86  +15.38  +13.89  +12.41   +9.43  +3.49
  7.00  +17.20  +15.77  +14.33  +12.90  +11.46   +8.59  +2.85
  6.75  +16.05  +14.67  +13.28  +11.90  +10.52   +7.75  +2.21
> as expected now; where it says -, as written gives more.

why as written gives more   change    total
What the rules would object to
  - line 2: found 1 hybrid element; expected from 4 to 5 in duet-free
  - line 2: found 0 hybrid elements with a part of connections; expected from 1
    to 3 in duet-free
  - line 2: found 0 lift elements; expected from 1 to 2 in duet-free
  - line 2: found 1 element; expected from 6 to 7 in duet-free
  - line 4: found 3 swimmers; expected exactly 2 in duet-free

=== exit 0
=== run landdrill compare ladder.sheet 1 --format csv | grep -E '^element|,option,' | cut -d, -f 1-3,23
=== output
element,what,option,breaks
1 Rungs,option,as written,
1 Rungs,option,five at once,"5 parts of thrusts in one element
1 Rungs,option,no spin,
=== exit 0
=== run landdrill compare ladder.sheet 1 --format json | grep -A 2 '"breaks"'
=== output
          "breaks": [],
          "parts": [
            {
--
          "breaks": [
            "5 parts of thrusts in one element, but at most 4 (families.csv line 2)"
          ],
--
          "breaks": [],
          "parts": [
            {
=== exit 0
