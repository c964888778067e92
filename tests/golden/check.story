Before the deadline: is everything in order? ok, a broken limit, mistakes, and a sheet without a value set, each with its
exit code.

=== file ada.sheet
routine "Ada"
event   figure-evening
values  kingfisher-2026
element 1 figure "Heron"
  parts  fig-heron
  expect 7
element 2 figure "Otter"
  parts  fig-otter
  expect 7
element 3 figure "Reed"
  parts  fig-reed
  expect 7
element 4 figure "Weir"
  parts  fig-weir
  expect 7
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
=== file bad.sheet
routine "Ada"
event   figure-morning
values  kingfisher-2026
element 1 figure "Heron"
  parts  fig-heron
  expect 7
element 2 figure "Otter"
  parts  fig-oter
  expect 7
element 3 figure "Reed"
  parts  fig-reed
  expect 7
element 4 figure "Weir"
  parts  fig-weir
  expect 7
=== run landdrill check ada.sheet
=== output
ada.sheet: Ada: ok
=== exit 0
=== run landdrill check duet.sheet
=== output
duet.sheet: Harbour Lights: 3 broken limits
=== errors
duet.sheet:2:10: warning: found 1 hybrid element; expected from 4 to 5 in duet-free [quota]
  event    duet-free
           ^~~~~~~~~
duet.sheet:2:10: warning: found 2 elements; expected from 6 to 7 in duet-free [quota]
  event    duet-free
           ^~~~~~~~~
duet.sheet:4:10: warning: found 22.5 s of counts at 128 beats a minute; expected 150 s, with a tolerance of 10 s [under-time]
  tempo    128
           ^~~
=== exit 1
=== run landdrill check ada.sheet bad.sheet
=== output
ada.sheet: Ada: ok
bad.sheet: Ada: 2 errors
=== errors
bad.sheet:2:9: error: found the event "figure-morning"; expected an event of kingfisher-2026 [unknown-event]
  event   figure-morning
          ^~~~~~~~~~~~~~
  hint: the nearest is figure-evening
bad.sheet:8:10: error: found the part "fig-oter"; expected a part of kingfisher-2026 [unknown-part]
    parts  fig-oter
           ^~~~~~~~
  hint: the nearest is fig-otter
=== exit 1
