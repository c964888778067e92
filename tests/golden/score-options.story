What would the safer second element be worth? The estimate alone, with one option and then with two.

=== copy examples/harbour-lights.sheet
=== run landdrill score harbour-lights.sheet --panel none --option 2=safer
=== output
Harbour Lights
==============
Duet, free routine - by the values of Kingfisher club league, edition 2026
45 values behind it: all invented.

no.  element                         difficulty  mark    points     left
  1  Lantern, Lift                         2.30  7.50   17.2500   5.7500
  2  Undertow, Hybrid, option safer        2.70  7.75   20.9250   6.0750
  3  Weathervane, Hybrid                   3.30  7.50   24.7500   8.2500
  4  Anchor chain, Hybrid                  3.80  7.00   26.6000  11.4000
  5  Slack Water, Hybrid                   2.70  7.75   20.9250   6.0750
> 6  Beacon, Hybrid                        4.10  6.75   27.6750  13.3250
  7  Mooring, Lift                         2.15  8.00   17.2000   4.3000
     Choreography and music                 x 4  7.50   30.0000
     Performance                            x 3  7.75   23.2500
     Transitions                            x 3  7.25   21.7500
     Sync errors                                        -0.2000
------------------------------------------------------------------------
     Total                                21.05        230.1250

> Worst line: 6 Beacon, 13.3250 points short of a full mark.
Estimate from the run of 2026-05-07: 1, 3, 4, 5, 6, 7, Choreography and music,
Performance, Transitions.
Deductions are taken from 10, the highest mark: nobody wrote `best`.
left: the points that a full mark for what was declared would add.
With the risks counted in, expect 222.9713: the average over how likely each
base mark, sync error and penalty is. The estimate above takes each line as the
latest run or the sheet has it; `compare`, `train` and `plan` go by the average.

Time: 150.0 s (320 counts); under water 77.8 s (166 counts), 51.9 %; longest in
      one go 15.0 s (32 counts), from 4 Anchor chain.

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
  - 45 invented: panels duet-free execution, duet-free choreography, duet-free
    performance, duet-free transitions; kinds lift, hybrid; parts stand-feet,
    rise-high, half-turn, thrust-high, spin-360, split-hold, and 33 more

Values from <repository>/tables/data/kingfisher-2026
=== exit 0
=== run landdrill score harbour-lights.sheet --brief --option 2=safer --option '4=SHORT CHAIN'
=== output
file              routine         difficulty    estimate       panel      change
…ur-lights.sheet  Harbour Lights     19.55      220.7750    199.3417    -21.4333
=== exit 0
