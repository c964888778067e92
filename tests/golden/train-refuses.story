No ranking without the marks to rank; and a number of lines that is none.

=== copy examples/harbour-lights.sheet
=== file bare.sheet
routine "Bare"
event   solo-free
values  kingfisher-2026
element 1 hybrid "Eddy"
  parts  thrust-mid, spin-180, split-hold
=== run landdrill train bare.sheet
=== errors
landdrill train: something is missing in "Bare":
  - element 1 has no expected mark: add `expect`, or a run
  - choreography has no expected mark: add it to a line `impression`
  - performance has no expected mark: add it to a line `impression`
  - transitions has no expected mark: add it to a line `impression`
=== exit 1
=== run landdrill train harbour-lights.sheet --top 0
=== errors
landdrill train: found --top 0; expected how many lines, a whole number from 1 on
=== exit 2
=== run landdrill train harbour-lights.sheet --top 2.5
=== errors
landdrill train: found --top 2.5; expected a whole number of lines
=== exit 2
=== run landdrill train harbour-lights.sheet --top few
=== errors
landdrill train: found --top "few"; expected how many lines, a whole number from 1 on
=== exit 2
