Limits told on the command line, elements that stay or may go, and limits that contradict each other.

=== copy examples/harbour-lights.sheet
=== file ladder.sheet
routine "Ladder"
event   solo-free
values  kingfisher-2026
element 1 hybrid "Rungs"
  parts  thrust-mid, spin-180, split-hold
  expect 7.50
  option "five at once"  # the league allows four thrusts in one element
    parts  thrust-mid x2, thrust-high, thrust-top, thrust-low, spin-360
    expect 7.50
  option "high"
    parts  thrust-high, spin-180, split-hold
    expect 7.25
impression choreography 7.50, performance 7.75, transitions 7.25
=== run landdrill plan harbour-lights.sheet --limit "breath most 14.5" --optional 5 --seconds 60 | sed -n '/^For/,/^Take/p'
=== output
For the highest expected total
no.  element               swim it                         difficulty  expected
  1  Lantern, Lift         as written                            2.30   17.2500
  2  Undertow, Hybrid      as written                            4.00   22.7325
  3  Weathervane, Hybrid   as written                            3.30   23.9625
> 4  Anchor chain, Hybrid  short chain (not as written)          2.30   16.9800
  5  Slack Water, Hybrid   as written                            2.70   20.6693
> 6  Beacon, Hybrid        long way down (not as written)        4.20   26.8100
  7  Mooring, Lift         as written (stays)                    2.15   17.1070

                                             expected  25 % are lower     time
this programme                               219.8363           208.1  150.0 s
without these changes, which breaks a limit  225.2903           213.4  150.0 s

> changed. Without the changes a limit is broken; they bring -5.4540 points.
Proved: no other choice within the limits does better.

What each limit costs
limit                                 by   used  one more  one less
at most 14.5 s under water in one go  you  14.1   +8.2340         -
The other 14 limits cost nothing (--full lists them).
one more: what the best programme would gain if the most allowed were one more;
one less: if the least asked for were one less.

The next best
   what differs           25 % are lower  behind, points
2  2 safer                         213.4          2.3190
3  6 as written                    205.1          2.7800
4  2 safer, 6 as written           209.1          5.0990
5  6 dimmed                        203.7          5.3718
6  2 safer, 6 dimmed               207.9          7.6908

How sure that is, among these
  - With every base mark a quarter likelier or rarer it would still be best.
  - 2 Undertow, as written: another of these is better from a mark of 6.25 or
    less (7.00 expected), or a base mark in 31 % or more of performances (21.5 %
    expected).
  - 6 Beacon, long way down: another of these is better from a mark of 6.25 or
    less (7.00 expected), or a base mark in 21 % or more of performances (10 %
    expected).
  - Base marks and expected marks drawn from what they rest on: it is the best
    of these in 125 of 200 draws, number 2 (2 safer) in 34.

Take care
=== exit 0
=== run landdrill plan harbour-lights.sheet --limit "hybrid most 3" | tail -n +6
=== output
No programme keeps all limits
This cannot be met by any choice:
  - at most 3 hybrid elements (yours)
Loosen one of them, give an element another option, let one be left out
(--optional NUMBER), or plan without the event's limits (--ignore-limits).

Values from <repository>/tables/data/kingfisher-2026
=== exit 0
=== run landdrill plan harbour-lights.sheet --limit "elements most 5" --optional 3 --optional 4 --keep 1; echo "exit code $?"
=== output
Harbour Lights
==============
Duet, free routine - by the values of Kingfisher club league, edition 2026
46 values behind it: all invented.

No programme keeps all limits
These cannot be met together:
  - duet-free: at least 140 s (events.csv line 4)
  - at most 5 elements (yours)
Loosen one of them, give an element another option, let one be left out
(--optional NUMBER), or plan without the event's limits (--ignore-limits).

Values from <repository>/tables/data/kingfisher-2026
exit code 1
=== exit 0
=== run landdrill plan harbour-lights.sheet --limit "elements most 5" --optional 3 --optional 4 --ignore-limits | sed -n '/^For/,/^What/p'
=== output
For the highest expected total
no.  element               swim it                         difficulty  expected
  1  Lantern, Lift         as written                            2.30   17.2500
  2  Undertow, Hybrid      as written                            4.00   22.7325
> 3  Weathervane, Hybrid   leave out
  4  Anchor chain, Hybrid  as written                            3.80   25.2140
> 5  Slack Water, Hybrid   leave out
> 6  Beacon, Hybrid        long way down (not as written)        4.20   26.8100
  7  Mooring, Lift         as written (stays)                    2.15   17.1070

                                             expected  25 % are lower     time
this programme                               183.4385           170.8  120.0 s
without these changes, which breaks a limit  225.2903           213.4  150.0 s

> changed. Without the changes a limit is broken; they bring -41.8518 points.
Proved: no other choice within the limits does better.

What each limit costs
=== exit 0
=== run landdrill plan ladder.sheet | tail -n +6
=== output
No programme keeps all limits
This cannot be met by any choice:
  - solo-free: at least 5 elements (quotas.csv line 5)
Note: "five at once" of element 1 "Rungs" is left out of the plan: 5 parts of
      thrusts in one element, but at most 4 (families.csv line 2).
Note: the sheet has no tempo: the plan does not look at the time of solo-free.
Loosen one of them, give an element another option, let one be left out
(--optional NUMBER), or plan without the event's limits (--ignore-limits).

Values from <repository>/tables/data/kingfisher-2026
=== exit 0
=== run landdrill plan ladder.sheet --ignore-limits | sed -n '/^For/,/^Take/p'
=== output
For the highest expected total
no.  element        swim it                        difficulty  expected
> 1  Rungs, Hybrid  five at once (not as written)        4.60   34.5000

                       expected  25 % are lower  time
this programme         109.5000           107.4
without these changes   90.0000            88.3

> changed. Together the changes bring +19.5000 points.
Proved: no other choice within the limits does better.

The next best
   what differs  25 % are lower  behind, points
2  1 high                  89.9         17.8250
3  1 as written            88.3         19.5000

How sure that is, among these
  - 1 Rungs, five at once: another of these is better from a mark of 3.50 or
    less (7.50 expected), or a base mark in 58 % or more of performances (0 %
    expected).
  - Base marks and expected marks drawn from what they rest on: it is the best
    of these in 200 of 200 draws.

What the rules would object to
  - line 2: found 1 hybrid element; expected from 5 to 6 in solo-free
  - line 2: found 1 element; expected from 5 to 6 in solo-free
  - line 7: found 5 parts of thrusts in one element; expected at most 4

Values that are from no rule book
  - 12 invented: panels solo-free execution, solo-free choreography, solo-free
    performance, solo-free transitions; kinds hybrid; parts thrust-mid,
    spin-180, split-hold, thrust-high, thrust-top, thrust-low, spin-360

Values from <repository>/tables/data/kingfisher-2026
=== exit 0
