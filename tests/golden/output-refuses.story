A full disk is an error, a reader that has gone is not worth a word; both end with 3.

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
=== run landdrill score ada.sheet > /dev/full
=== errors
landdrill: cannot write the output: No space left on device
=== exit 3
=== run landdrill help > /dev/full
=== errors
landdrill: cannot write the output: No space left on device
=== exit 3
=== run landdrill score ada.sheet >&-
=== errors
landdrill: cannot write the output: Bad file descriptor
=== exit 3
=== run for i in $(seq 2000); do cat ada.sheet; done > many; set -o pipefail; landdrill score many 2>/dev/null | head -2
=== output
file              routine         difficulty    estimate       panel      change
many              Ada                 6.50       70.0000
=== exit 3
=== run set -o pipefail; landdrill score ada.sheet | true; [ $? = 3 -o $? = 0 ] && echo quiet
=== output
quiet
=== exit 0
