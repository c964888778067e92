Is the set in order? ok, with gaps, with warnings, with mistakes.

=== run landdrill values check kingfisher-2026 declared-2024
=== output
kingfisher-2026: ok
declared-2024: ok; 74 values still to fill in
=== exit 0
=== run landdrill values copy kingfisher-2026 ours >/dev/null; sed -i 's/^spin-720,spins,/spin-720,spinns,/; s/,1.2,/,1.2x,/' ours/parts.csv; landdrill values check ours
=== output
ours: 6 errors
=== errors
ours/parts.csv:8:45: error: found "1.2x"; expected a number in the column "value" [bad-number]
  thrust-turn,thrusts,Thrust with a half turn,1.2x,invented for the Kingfisher demo league,invented
                                              ^~~~
  hint: write the number alone: 1.2
ours/parts.csv:12:10: error: found "spinns"; expected a code of families.csv [unknown-name]
  spin-720,spinns,Spin down through 720 degrees,1.4,invented for the Kingfisher demo league,invented
           ^~~~~~
  hint: the nearest is spins
ours/parts.csv:15:47: error: found "1.2x"; expected a number in the column "value" [bad-number]
  spin-up-360,spins,Spin up through 360 degrees,1.2x,invented for the Kingfisher demo league,invented
                                                ^~~~
  hint: write the number alone: 1.2
ours/parts.csv:22:37: error: found "1.2x"; expected a number in the column "value" [bad-number]
  twist-double,twists,Two full twists,1.2x,invented for the Kingfisher demo league,invented
                                      ^~~~
  hint: write the number alone: 1.2
ours/parts.csv:73:47: error: found "1.2x"; expected a number in the column "value" [bad-number]
  flight-twist,flights,Flight with a full twist,1.2x,invented for the Kingfisher demo league,invented
                                                ^~~~
  hint: write the number alone: 1.2
ours/parts.csv:80:58: error: found "1.2x"; expected a number in the column "value" [bad-number]
  fig-otter,figures,Otter: tuck turn backwards and lay out,1.2x,invented for the Kingfisher demo league,invented
                                                           ^~~~
  hint: write the number alone: 1.2
=== exit 1
=== run landdrill values check ours --values . >/dev/null 2>&1
=== exit 1
=== run landdrill values import kingfisher-2026 --season club.season >/dev/null; landdrill values check kingfisher-2026 --season club.season
=== output
kingfisher-2026: ok
=== exit 0
=== run landdrill values check nowhere/set
=== errors
landdrill: nowhere/set: there is no such folder
=== exit 3
