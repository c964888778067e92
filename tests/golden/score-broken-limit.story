A routine that breaks a limit is priced all the same, and the report says which limit.

=== file duet.sheet
routine  "Harbour Lights"
event    duet-free
values   kingfisher-2026
tempo    128
element 1 lift "Lantern"
  parts  stand-feet, rise-high, half-turn
  counts 8 under, 3 up, 5 travel
  expect 7.50
element 2 hybrid "Undertow"
  parts  thrust-high, spin-720, split-hold x2, join-foot
  counts 24 under, 8 surface
  expect 7.25
  option "safer"
    parts  thrust-high, spin-360, split-hold
    expect 7.75
impression choreography 7.50, performance 7.75, transitions 7.25
=== run landdrill score duet.sheet
=== output
Harbour Lights
==============
Duet, free routine - by the values of Kingfisher club league, edition 2026
13 values behind it: all invented.

no.  element                 difficulty  mark    points     left
  1  Lantern, Lift                 2.30  7.50   17.2500   5.7500
> 2  Undertow, Hybrid              4.00  7.25   29.0000  11.0000
     Choreography and music         x 4  7.50   30.0000
     Performance                    x 3  7.75   23.2500
     Transitions                    x 3  7.25   21.7500
----------------------------------------------------------------
     Total                         6.30        121.2500

> Worst line: 2 Undertow, 11.0000 points short of a full mark.
left: the points that a full mark for what was declared would add.

What the rules would object to
  - line 2: found 1 hybrid element; expected from 4 to 5 in duet-free
  - line 2: found 2 elements; expected from 6 to 7 in duet-free
  - line 4: found 22.5 s of counts at 128 beats a minute; expected 150 s, with a
    tolerance of 10 s

Time: 22.5 s (48 counts); under water 15.0 s (32 counts), 66.7 %; longest in one
      go 11.3 s (24 counts), from 2 Undertow.

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
  - 13 invented: panels duet-free execution, duet-free choreography, duet-free
    performance, duet-free transitions; kinds lift, hybrid; parts stand-feet,
    rise-high, half-turn, thrust-high, spin-720, split-hold, and 1 more

Values from <repository>/tables/data/kingfisher-2026
=== exit 0
