Colour only where it is asked for or on a terminal: here standard output is none.

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
panel 2026-05-09 "Tarn Open"
  element 1: 7 7.25 7 7 7
  element 2: 7 7 7 7 7
  element 3: 6.5 6.75 7 7 7
  element 4: 8 7 7 7 7
=== run landdrill score ada.sheet | grep -c $'\x1b'
=== output
0
=== exit 1
=== run landdrill score ada.sheet --colour always | grep -c $'\x1b' | sed 's/^[1-9].*/some/'
=== output
some
=== exit 0
=== run landdrill score ada.sheet --color never | grep -c $'\x1b'
=== output
0
=== exit 1
=== run script -qec 'TERM=xterm landdrill score ada.sheet' /dev/null | grep -c $'\x1b' | sed 's/^[1-9].*/some/'
=== output
some
=== exit 0
=== run script -qec 'NO_COLOR=1 TERM=xterm landdrill score ada.sheet' /dev/null | grep -c $'\x1b'
=== output
0
=== exit 1
=== run script -qec 'TERM=dumb landdrill score ada.sheet' /dev/null | grep -c $'\x1b'
=== output
0
=== exit 1
=== run landdrill score ada.sheet --colour sometimes
=== errors
landdrill score: found --colour "sometimes"; expected auto, always or never
=== exit 2
