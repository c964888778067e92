The main job: the coach scores her duet and sees the build-up beside what the panel gave, with the bridge from
her estimate to the result below.

=== copy examples/harbour-lights.sheet
=== run landdrill score harbour-lights.sheet
=== output
Harbour Lights
==============
Duet, free routine - by the values of Kingfisher club league, edition 2026
Panel of 2026-05-09 Tarn Open
48 values behind it: all invented.

                            estimate             panel
no. element                    DD mark   points      DD   mark   points   change
  1 Lantern, Lift            2.30 7.50  17.2500   2.30  7.3333  16.8667  -0.3833
> 2 Undertow, Hybrid, base   4.00 7.00  28.0000   0.50* 6.8333   3.4167 -24.5833
    mark* given
  3 Weathervane, Hybrid      3.30 7.50  24.7500   3.30  7.4167  24.4750  -0.2750
  4 Anchor chain, Hybrid     3.80 7.00  26.6000   3.80  6.9167  26.2833  -0.3167
  5 Slack Water, Hybrid      2.70 7.75  20.9250   2.70  7.8333  21.1500  +0.2250
  6 Beacon, Hybrid           4.10 6.75  27.6750   4.10  6.6667  27.3333  -0.3417
  7 Mooring, Lift            2.15 8.00  17.2000   2.15  7.8333  16.8417  -0.3583
    Choreography and music    x 4 7.50  30.0000     x 4 7.50    30.0000   0.0000
    Performance               x 3 7.75  23.2500     x 3 7.75    23.2500   0.0000
    Transitions               x 3 7.25  21.7500     x 3 7.1667  21.5000  -0.2500
    Sync errors                         -0.2000                 -0.9000  -0.7000
    Penalties                                                   -0.5000  -0.5000
--------------------------------------------------------------------------------
    Total                   22.35      237.2000  18.85         209.7167 -27.4833

> Worst line: 2 Undertow, -24.5833 points against the estimate.
* Base mark: 2 Undertow was declared at 4.00 and the panel credited 0.50.
Announced: 209.7167, the same as these marks give.
Estimate from the run of 2026-05-07: every mark.
Deductions are taken from 10, the highest mark: nobody wrote `best`.
With the risks counted in, expect 225.2903: the average over how likely each
base mark, sync error and penalty is. The estimate above takes each line as the
latest run or the sheet has it; `compare`, `train` and `plan` go by the average.

From estimate to result
line            what changed                        change     total
Estimate                                                    237.2000
1 Lantern       execution mark 7.5000 to 7.3333    -0.3833  236.8167
2 Undertow      base mark given, 4.00 to 0.50     -24.5000  212.3167
2 Undertow      execution mark 7.0000 to 6.8333    -0.0833  212.2334
3 Weathervane   execution mark 7.5000 to 7.4167    -0.2750  211.9584
4 Anchor chain  execution mark 7.0000 to 6.9167    -0.3167  211.6417
5 Slack Water   execution mark 7.7500 to 7.8333    +0.2250  211.8667
6 Beacon        execution mark 6.7500 to 6.6667    -0.3417  211.5250
7 Mooring       execution mark 8.0000 to 7.8333    -0.3583  211.1667
Transitions     impression mark 7.2500 to 7.1667   -0.2500  210.9167
Sync errors     points taken off -0.2 to -0.9      -0.7000  210.2167
Penalties       points taken off 0 to -0.5         -0.5000  209.7167
Panel                                                       209.7167

by cause               change
difficulty credited  -24.5000
execution mark        -1.5333
impression mark       -0.2500
sync errors           -0.7000
penalties             -0.5000
together             -27.4833

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
  - 48 invented: panels duet-free execution, duet-free choreography, duet-free
    performance, duet-free transitions; kinds lift, hybrid; parts stand-feet,
    rise-high, half-turn, thrust-high, spin-720, split-hold, and 36 more

Values from <repository>/tables/data/kingfisher-2026
=== exit 0
