Where does training buy most?

=== copy examples/harbour-lights.sheet
=== run landdrill train harbour-lights.sheet
=== output
Harbour Lights
==============
Duet, free routine - by the values of Kingfisher club league, edition 2026
46 values behind it: all invented.

Expected total, as the routine is: 225.2903. What it would be more with one
thing a little better:

    line                    what to improve           from ... to         points
 1  2 Undertow              chance of the base mark,  21.5 % to 10.75 %  +2.6337
                            1 of 2 runs
 2  6 Beacon                chance of the base mark,  15 % to 7.5 %      +1.8225
                            0 of 2 runs
 3  4 Anchor chain          chance of the base mark,  6 % to 3 %         +0.6930
                            0 of 2 runs
 4  Choreography and music  impression mark           7.50 to 7.60       +0.4000
 5  3 Weathervane           chance of the base mark,  3.75 % to 1.88 %   +0.3937
                            0 of 2 runs
 6  4 Anchor chain          execution mark            7.00 to 7.10       +0.3602
 7  6 Beacon                execution mark            6.75 to 6.85       +0.3560
 8  2 Undertow              execution mark            7.00 to 7.10       +0.3247
 9  3 Weathervane           execution mark            7.50 to 7.60       +0.3195
10  Performance             impression mark           7.75 to 7.85       +0.3000
11  Transitions             impression mark           7.25 to 7.35       +0.3000
12  5 Slack Water           execution mark            7.75 to 7.85       +0.2667
13  Sync error: clear       how many to expect        0.5 to 0           +0.2500
14  1 Lantern               execution mark            7.50 to 7.60       +0.2300
15  7 Mooring               execution mark            8.00 to 8.10       +0.2138
16  5 Slack Water           chance of the base mark,  1.5 % to 0.75 %    +0.1278
                            0 of 2 runs
17  Sync error: small       how many to expect        3 to 2             +0.1000
18  Penalty: overtime       how many to expect        0.1 to 0           +0.1000
19  7 Mooring               chance of the base mark,  0.75 % to 0.38 %   +0.0465
                            0 of 2 runs
20  Penalty: deck-time      how many to expect        0.05 to 0          +0.0250

How to read it
  - a little better is: a tenth of a mark, half the chance of the base mark, one
    sync error or penalty less (or as many as are expected, when that is less
    than one).
  - Each is the expected total worked out again with that one change, less the
    expected total as it is. They do not simply add up when several are made at
    once.
  - Which of them is quickest to train, the coach knows best.

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
=== run landdrill train harbour-lights.sheet --top 3 --runs none --option 6=dimmed --format csv
=== output
rank,what,line,before,after,points
1,base chance,2 Undertow,12,6,1.5225
2,base chance,4 Anchor chain,8,4,0.9240
3,base chance,6 Beacon,9,4.5,0.8809
=== exit 0
=== run landdrill train harbour-lights.sheet --top 1 --format json | grep -A 8 '"gains"'
=== output
  "gains": [
    {
      "rank": 1,
      "line": "2 Undertow",
      "what": "base chance",
      "before": "21.5",
      "after": "10.75",
      "points": "2.6337"
    }
=== exit 0
=== run landdrill train harbour-lights.sheet --top 1 --full | grep -A 3 'How the'
=== output
How the estimate comes about
Total: 237.2000
  = 17.2500 + 28.0000 + 24.7500 + 26.6000 + 20.9250 + 27.6750 + 17.2000 +
    30.0000 + 23.2500 + 21.7500 - 0.2000
=== exit 0
=== run landdrill values copy kingfisher-2026 sets/other && landdrill train harbour-lights.sheet --values sets --set other --colour never | grep -v '^Values from' | cmp <(landdrill train harbour-lights.sheet | grep -v '^Values from') -
=== output
kingfisher-2026 is written into sets/other. In a sheet beside it, the line is
  values other
=== exit 0
=== run landdrill values import kingfisher-2026 --season club.season && landdrill train harbour-lights.sheet --season club.season | grep -v '^Values from' | cmp <(landdrill train harbour-lights.sheet | grep -v '^Values from') -
=== output
kingfisher-2026: 229 rows are in club.season
=== exit 0
