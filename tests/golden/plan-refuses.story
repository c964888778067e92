What a plan cannot understand, and what it lacks.

=== copy examples/harbour-lights.sheet
=== file bare.sheet
routine "Bare"
event   solo-free
values  kingfisher-2026
element 1 hybrid "Eddy"
  parts  thrust-mid, spin-180, split-hold
=== run landdrill plan bare.sheet
=== errors
landdrill plan: something is missing in "Bare":
  - element 1 "Eddy" has no expected mark: add `expect`, or a run
  - no mark is expected for choreography, performance, transitions: add
    `impression`, or a run that has one
=== exit 1
=== run landdrill plan harbour-lights.sheet --aim high
=== errors
landdrill plan: found --aim "high"; expected the word expected, or a share such as 25%: the total that is missed no more often
=== exit 2
=== run landdrill plan harbour-lights.sheet --aim 120%
=== errors
landdrill plan: found --aim "120%"; expected the word expected, or a share such as 25%: the total that is missed no more often
=== exit 2
=== run landdrill plan harbour-lights.sheet --aim 25% --target 190
=== errors
landdrill plan: found --aim and --target; expected one of them
=== exit 2
=== run landdrill plan harbour-lights.sheet --target x
=== errors
landdrill plan: found --target "x"; expected points, such as 190
=== exit 2
=== run landdrill plan harbour-lights.sheet --limit "trow most 2"
=== errors
landdrill plan: found --limit "trow most 2": the limit of "trow"; expected elements, seconds, under, breath, or a kind, a family or a part of kingfisher-2026
  hint: the nearest is throw
=== exit 2
=== run landdrill plan harbour-lights.sheet --limit "throw most"
=== errors
landdrill plan: found --limit "throw most": the end of the line; expected a number (like 2)
  hint: for example: limit hybrid least 2 most 5
=== exit 2
=== run landdrill plan harbour-lights.sheet --limit "throw least 3 most 2"
=== errors
landdrill plan: found --limit "throw least 3 most 2": most 2; expected at least 3, the least of the same limit
=== exit 2
=== run landdrill plan harbour-lights.sheet --keep Undertow
=== errors
landdrill plan: found --keep Undertow; expected NUMBER or NUMBER=TITLE, such as 2=safer
=== exit 2
=== run landdrill plan harbour-lights.sheet --keep 2=braver
=== errors
landdrill plan: found --keep 2=braver; element 2 has no option of that title
=== exit 2
=== run landdrill plan harbour-lights.sheet --keep 12
=== errors
landdrill plan: found --keep 12; the routine has no element 12
=== exit 2
=== run landdrill plan harbour-lights.sheet --keep 5 --optional 5
=== errors
landdrill plan: found --optional 5; but element 5 is to stay
=== exit 2
=== run landdrill plan harbour-lights.sheet --seconds 0
=== errors
landdrill plan: found --seconds 0; expected seconds, from 0.01 to a day
=== exit 2
=== run landdrill plan harbour-lights.sheet --limit "$(printf 'throw most 2\nlimit lift most 1')"
=== errors
landdrill plan: found --limit with several lines; expected one limit, such as "throw most 2"
=== exit 2
=== run landdrill plan harbour-lights.sheet --aim 25% --day 50
=== errors
landdrill plan: found --day 50; expected a standard deviation from 0 to 10 marks, the width of the scale
=== exit 2
