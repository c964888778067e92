The best programme: which option of each element, within the event's limits and the coach's own; and with a target.

=== copy examples/harbour-lights.sheet
=== run landdrill plan harbour-lights.sheet
=== output
Harbour Lights
==============
Duet, free routine - by the values of Kingfisher club league, edition 2026
47 values behind it: all invented.

For the highest expected total
no.  element               swim it                         difficulty  expected
  1  Lantern, Lift         as written                            2.30   17.2500
  2  Undertow, Hybrid      as written                            4.00   22.7325
  3  Weathervane, Hybrid   as written                            3.30   23.9625
  4  Anchor chain, Hybrid  as written                            3.80   25.2140
  5  Slack Water, Hybrid   as written                            2.70   20.6693
> 6  Beacon, Hybrid        long way down (not as written)        4.20   26.8100
  7  Mooring, Lift         as written (stays)                    2.15   17.1070

                       expected total     time
this programme               228.0703  150.0 s
without these changes        225.2903  150.0 s

> changed. Together the changes bring +2.7800 points.
Proved: no other choice within the limits does better.

What each limit costs
limit                              by                  used  one more  one less
duet-free: 4 to 5 hybrid elements  quotas.csv line 9      5    0.0000    0.0000
duet-free: 1 to 2 lift elements    quotas.csv line 13     2    0.0000    0.0000
duet-free: 6 to 7 elements         quotas.csv line 14     7    0.0000    0.0000
at most 2 lift elements            you                    2    0.0000    -
The other 11 limits cost nothing: duet-free: at least 1 hybrid element with a
part of thrusts; duet-free: at least 1 hybrid element with a part of spins;
duet-free: 1 to 3 hybrid elements with a part of connections; duet-free: at most
0 throw elements; duet-free: at most 0 required elements; at most 12 parts of
connections in the routine; at most 5 parts of solo-set in the routine; at most
5 parts of duet-set in the routine; at most 5 parts of team-set in the routine;
duet-free: 140 to 160 s; at most 16 s under water in one go.
one more: what the best programme would gain if the most allowed were one more;
one less: if the least asked for were one less.

The next best
   what is different      behind, points
2  2 safer                        2.3190
3  6 as written                   2.7800
4  2 safer, 6 as written          5.0990
5  6 dimmed                       5.3718
6  2 safer, 6 dimmed              7.6908

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
  - 47 invented: panels duet-free execution, duet-free choreography, duet-free
    performance, duet-free transitions; kinds lift, hybrid; parts stand-feet,
    rise-high, half-turn, thrust-high, spin-720, split-hold, and 35 more

Values from <repository>/tables/data/kingfisher-2026
=== exit 0
=== run landdrill plan harbour-lights.sheet --target 225 | sed -n '/^For/,/^What/p'
=== output
For the best chance to reach 225 points
no.  element               swim it                         difficulty  expected
  1  Lantern, Lift         as written                            2.30   17.2500
> 2  Undertow, Hybrid      safer (not as written)                2.70   20.4135
  3  Weathervane, Hybrid   as written                            3.30   23.9625
  4  Anchor chain, Hybrid  as written                            3.80   25.2140
  5  Slack Water, Hybrid   as written                            2.70   20.6693
> 6  Beacon, Hybrid        long way down (not as written)        4.20   26.8100
  7  Mooring, Lift         as written (stays)                    2.15   17.1070

                       expected total  chance of 225     time
this programme               225.7513         65.3 %  150.0 s
without these changes        225.2903         57.8 %  150.0 s

> changed. Together the changes bring +7.48 per cent.
Proved: no other choice within the limits does better.

What each limit costs
=== exit 0
=== run landdrill plan harbour-lights.sheet --aim 25% --keep 6=dimmed | sed -n '/^For/,/^What/p'
=== output
For the highest total that is missed no more often than 25 % of the time
no.  element               swim it                 difficulty  expected
  1  Lantern, Lift         as written                    2.30   17.2500
> 2  Undertow, Hybrid      safer (not as written)        2.70   20.4135
  3  Weathervane, Hybrid   as written                    3.30   23.9625
  4  Anchor chain, Hybrid  as written                    3.80   25.2140
  5  Slack Water, Hybrid   as written                    2.70   20.6693
  6  Beacon, Hybrid        dimmed (stays)                3.20   21.4383
  7  Mooring, Lift         as written (stays)            2.15   17.1070

                       expected total  25 % are lower     time
this programme               220.3795        215.2167  150.0 s
without these changes        222.6985        211.4458  150.0 s

> changed. Together the changes bring +3.7708 points.
Proved: no other choice within the limits does better.

What each limit costs
=== exit 0
