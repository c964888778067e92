What cannot be compared: no options, an element that is not there, marks that are missing.

=== copy examples/harbour-lights.sheet
=== file bare.sheet
routine "Bare"
event   solo-free
values  kingfisher-2026
element 1 hybrid "Eddy"
  parts  thrust-mid, spin-180, split-hold
  option "with a full spin"
    parts  thrust-mid, spin-360, split-hold
=== file alone.sheet
routine "Alone"
event   solo-free
values  kingfisher-2026
element 1 hybrid "Eddy"
  parts  thrust-mid, spin-180, split-hold
=== run landdrill compare harbour-lights.sheet Lantern
=== errors
landdrill compare: something is missing in "Harbour Lights":
  - 1 Lantern has no option to compare with: add `option "title"` below the
    element, with its own lines: parts, expect, slip
=== exit 1
=== run landdrill compare harbour-lights.sheet Becon
=== errors
landdrill compare: found "Becon"; expected the number or the title of an element
  hint: the nearest is Beacon
=== exit 2
=== run landdrill compare harbour-lights.sheet 12
=== errors
landdrill compare: found "12"; expected the number or the title of an element
=== exit 2
=== run landdrill compare bare.sheet
=== errors
landdrill compare: something is missing in "Bare":
  - element 1 has no expected mark: add `expect`, or a run
  - the option "with a full spin" of element 1 has no expected mark: add
    `expect`
  - choreography has no expected mark: add it to a line `impression`
  - performance has no expected mark: add it to a line `impression`
  - transitions has no expected mark: add it to a line `impression`
=== exit 1
=== run landdrill compare alone.sheet
=== errors
landdrill compare: something is missing in "Alone":
  - no element has an option to compare with: add `option "title"` below the
    element, with its own lines: parts, expect, slip
=== exit 1
=== run landdrill compare harbour-lights.sheet 2 --day much
=== errors
landdrill compare: found --day "much"; expected a standard deviation in marks, from 0 to 100, such as 0.4
=== exit 2
=== run cat harbour-lights.sheet alone.sheet | landdrill compare -
=== errors
landdrill compare: standard input holds several routines; expected one
=== exit 2
=== run landdrill compare kingfisher-2026 kingfisher-2027
=== errors
landdrill: kingfisher-2026: there is no such file
  hint: check the spelling and the folder
=== exit 3
