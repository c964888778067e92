No forecast where nothing says how far marks scatter or marks are missing; and what cannot be understood.

=== copy examples/free-1996.sheet
=== copy examples/harbour-lights.sheet
=== file bare.sheet
routine "Bare"
event   solo-free
values  kingfisher-2026
element 1 hybrid "Eddy"
  parts  thrust-mid, spin-180, split-hold
=== run landdrill forecast free-1996.sheet
=== errors
landdrill forecast: something is missing in "Heron Lake":
  - nothing says how far judges' marks scatter: write `spread 0.4` into the
    sheet, give --spread, or add a row to the set's table spreads
=== exit 1
=== run landdrill forecast bare.sheet
=== errors
landdrill forecast: something is missing in "Bare":
  - nothing is expected yet: add `expect` to the elements and a line
    `impression`, or a run
=== exit 1
=== run landdrill forecast harbour-lights.sheet --against bare.sheet
=== errors
landdrill forecast: something is missing in "Bare":
  - nothing is expected yet: add `expect` to the elements and a line
    `impression`, or a run
=== exit 1
=== run landdrill forecast harbour-lights.sheet --against nowhere.sheet
=== errors
landdrill: nowhere.sheet: there is no such file
  hint: check the spelling and the folder
=== exit 3
=== run landdrill forecast harbour-lights.sheet --target high
=== errors
landdrill forecast: found --target "high"; expected points, such as 190
=== exit 2
=== run landdrill forecast harbour-lights.sheet --spread -0.4
=== errors
landdrill forecast: found --spread -0.4; expected a standard deviation in marks, from 0 to 100, such as 0.4
=== exit 2
=== run landdrill forecast harbour-lights.sheet --within 0
=== errors
landdrill forecast: found --within 0; expected points, from 0.0001 to 1000: how far a total may lie from where it truly is
=== exit 2
=== run landdrill forecast harbour-lights.sheet --spreads guess
=== errors
landdrill forecast: found --spreads "guess"; expected sheet, panels or set
=== exit 2
=== run landdrill forecast harbour-lights.sheet --spread 50
=== errors
landdrill forecast: found --spread 50; expected a standard deviation from 0 to 10 marks, the width of the scale
=== exit 2
=== run landdrill forecast - --against - < harbour-lights.sheet
=== errors
landdrill forecast: found - for both sheets; expected standard input for one of them at most
=== exit 2
