A file with a mistake is left alone: nothing that was typed may get lost. Neither is one that cannot be written.

=== file bad.sheet
routine "Ada"
event   figure-evening
values  kingfisher-2026
element 1 figure "Heron"
  parts  fig-heron
  expct 7
element 2 figure "Otter"
  parts  fig-otter
  expct 7
element 3 figure "Reed"
  parts  fig-reed
  expct 7
element 4 figure "Weir"
  parts  fig-weir
  expct 7
=== file good.sheet
routine "A"   # x
=== run cp bad.sheet before; landdrill tidy --write bad.sheet good.sheet; cmp before bad.sheet
=== output
good.sheet: tidied
=== errors
bad.sheet:6:3: error: found "expct"; expected a keyword such as routine, element, parts, run or panel [unknown-keyword]
    expct 7
    ^~~~~
  hint: the nearest keyword is expect
bad.sheet:9:3: error: found "expct"; expected a keyword such as routine, element, parts, run or panel [unknown-keyword]
    expct 7
    ^~~~~
  hint: the nearest keyword is expect
bad.sheet:12:3: error: found "expct"; expected a keyword such as routine, element, parts, run or panel [unknown-keyword]
    expct 7
    ^~~~~
  hint: the nearest keyword is expect
bad.sheet:15:3: error: found "expct"; expected a keyword such as routine, element, parts, run or panel [unknown-keyword]
    expct 7
    ^~~~~
  hint: the nearest keyword is expect
landdrill: bad.sheet is left as it is: mend it first
=== exit 0
=== run chmod 777 .; cp good.sheet mine.sheet; printf 'event   x\n' >> mine.sheet; chmod 444 mine.sheet; $ORDINARY landdrill tidy --write mine.sheet; cat mine.sheet
=== output
routine "A"  # x
event   x
=== errors
landdrill: mine.sheet: you are not allowed to change it
=== exit 0
=== run ln -s good.sheet link.sheet; printf 'event   x\n' >> good.sheet; landdrill tidy --write link.sheet; test -L link.sheet && cat good.sheet
=== output
link.sheet: tidied
routine "A"  # x
event    x
=== exit 0
