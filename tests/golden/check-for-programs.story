What is wrong with a sheet, for programs: each message has its place and, where a hint leaves one word only, what goes
there; several sheets are one line each, also those with mistakes; and one line of a score with all below it.

=== copy examples/harbour-lights.sheet
=== file heron.sheet
routine "Heron"
event  solo-free
values kingfisher-2026
element 1 hybrid "Heron"
  parts thrust-mid, spin-18O, split-hold
  expect 7.00
=== run landdrill check heron.sheet --format json
=== run landdrill check heron.sheet harbour-lights.sheet --format json
=== run landdrill score heron.sheet harbour-lights.sheet --format json | cut -c1-160
=== run landdrill explain harbour-lights.sheet element 2 difficulty --format json | head -24
